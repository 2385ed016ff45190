package stafette.work;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import stafette.check.JudgedPlan;
import stafette.keep.FileDoor;
import stafette.keep.FileEnding;
import stafette.keep.Outputs;
import stafette.keep.Release;
import stafette.keep.RereadProof;
import stafette.picture.ink.Drawing;
import stafette.picture.ink.Paper;
import stafette.picture.ink.PdfInk;
import stafette.picture.ink.PngInk;
import stafette.picture.ink.SvgInk;
import stafette.picture.ribbon.RelayContent;
import stafette.picture.ribbon.Timeline;
import stafette.words.Refusal;
import stafette.words.Sayable;
import stafette.words.Sentence;
import stafette.words.Settable;

/** Draws a plan into a file. */
public final class DrawPlan {
  private static final double PNG_DOTS_PER_POINT = 2;

  private DrawPlan() {}

  /** By the ending of the file's name. */
  private enum PictureFormat {
    SVG,
    PNG,
    PDF;

    RereadProof proof() {
      return switch (this) {
        case SVG -> RereadProof.frame("<?xml ", "</svg>\n");
        case PNG -> RereadProof.frame("\u0089PNG\r\n\u001a\n", "IEND\u00aeB`\u0082");
        case PDF -> RereadProof.PDF;
      };
    }
  }

  /**
   * Where and how to draw.
   *
   * @param file .svg, .png or .pdf
   * @param paper "a4", "letter", "sheet" or "wide"; empty for pages in PDF and one sheet elsewhere
   * @param notes whether each segment is written as music too
   * @param replace whether it may replace a file that is there
   */
  public record PictureRequest(Path file, String paper, boolean notes, boolean replace) {
    /**
     * Checks it before anything is reckoned.
     *
     * @param outputs where it is declared
     * @throws Refusal if the ending or the paper is none of those, or the file can't be written
     */
    public void refuseWhatCannotBe(Outputs outputs) throws Refusal {
      format(file);
      paperOf(this);
      outputs.add(file, replace);
    }
  }

  /**
   * Draws the timeline in English.
   *
   * @throws Refusal if the file can't be written
   */
  public static void timeline(JudgedPlan judged, PictureRequest request) throws Refusal {
    timeline(judged, request, what -> what.inWords().toString());
  }

  /**
   * Draws the timeline in some language.
   *
   * @param speech how anything is said
   * @throws Refusal if the file can't be written
   */
  static void timeline(JudgedPlan judged, PictureRequest request, Function<Sayable, String> speech)
      throws Refusal {
    RelayContent relay =
        RelayContent.of(judged.plan(), judged.verdict(), judged.window()).in(speech);
    List<Drawing> pages = Timeline.of(relay, paperOf(request), request.notes());
    PictureFormat format = format(request.file());
    FileDoor.write(request.file(), bytes(format, pages), request.replace(), format.proof());
  }

  private static byte[] bytes(PictureFormat format, List<Drawing> pages) {
    Drawing first = pages.get(0);
    return switch (format) {
      case SVG -> SvgInk.svg(first).getBytes(StandardCharsets.UTF_8);
      case PNG -> PngInk.png(first, PNG_DOTS_PER_POINT);
      case PDF -> PdfInk.pdf(pages, first.title(), Release.text());
    };
  }

  private static PictureFormat format(Path file) throws Refusal {
    return FileEnding.of(file, PictureFormat.class)
        .orElseThrow(
            () ->
                Refusal.wrongUse(
                    Sentence.of("{0}: a timeline is drawn as .svg, .png or .pdf", file)));
  }

  private static Paper paperOf(PictureRequest request) throws Refusal {
    boolean pdf = format(request.file()) == PictureFormat.PDF;
    if (request.paper().isEmpty()) {
      return pdf ? Paper.A4 : Paper.SHEET;
    }
    for (Paper paper : Paper.values()) {
      if (paper.name().equalsIgnoreCase(request.paper())) {
        if (paper.hasPages() && !pdf) {
          throw Refusal.wrongUse(
              Sentence.of(
                  "paper of the size {0}{1} may take several pages: name a .pdf file, or use sheet"
                      + " or wide",
                  request.paper(), Settable.PAPER));
        }
        return paper;
      }
    }
    throw Refusal.wrongUse(
        Sentence.of(
            "the size of the paper{0} is a4, letter, sheet or wide, not \"{1}\"",
            Settable.PAPER, request.paper()));
  }
}
