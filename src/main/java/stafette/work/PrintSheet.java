package stafette.work;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stafette.check.JudgedPlan;
import stafette.keep.FileDoor;
import stafette.keep.Outputs;
import stafette.keep.Release;
import stafette.keep.RereadProof;
import stafette.picture.ink.Drawing;
import stafette.picture.ink.Paper;
import stafette.picture.ink.PdfInk;
import stafette.picture.sheet.Sheet;
import stafette.picture.sheet.SheetContent;
import stafette.picture.sheet.SheetLanguage;
import stafette.plan.WrittenAs;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.words.Settable;

/** Lays a plan out as a sheet for the rehearsal, in a file. */
public final class PrintSheet {
  private PrintSheet() {}

  /**
   * Where and how.
   *
   * @param file .pdf
   * @param paper "a4" or "letter"; empty for a4
   * @param date to be printed
   * @param replace whether it may replace a file that is there
   */
  public record SheetRequest(Path file, String paper, LocalDate date, boolean replace) {
    /**
     * Checks it before anything is reckoned.
     *
     * @param outputs where it is declared
     * @throws Refusal if it is no PDF, the paper has no pages, or the file can't be written
     */
    public void refuseWhatCannotBe(Outputs outputs) throws Refusal {
      if (!String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(".pdf")) {
        throw Refusal.wrongUse(Sentence.of("{0}: a sheet is printed as .pdf", file));
      }
      paperOf(paper);
      outputs.add(file, replace);
    }
  }

  /**
   * Prints the sheet in English.
   *
   * @param how what is marked for its players
   * @param title of the score, if it has one
   * @throws Refusal if the file can't be written
   */
  public static void print(
      JudgedPlan judged, WrittenAs how, Optional<String> title, SheetRequest request)
      throws Refusal {
    print(judged, how, title, request, SheetLanguage.ENGLISH);
  }

  /**
   * Prints the sheet in some language.
   *
   * @param how what is marked for its players
   * @param title of the score, if it has one
   * @throws Refusal if the file can't be written
   */
  static void print(
      JudgedPlan judged,
      WrittenAs how,
      Optional<String> title,
      SheetRequest request,
      SheetLanguage language)
      throws Refusal {
    SheetContent content =
        new SheetContent(
            judged.plan(), how, judged.verdict(), judged.window(), title, request.date(), language);
    List<Drawing> pages = Sheet.of(content, paperOf(request.paper()));
    FileDoor.write(
        request.file(),
        PdfInk.pdf(pages, pages.get(0).title(), Release.text()),
        request.replace(),
        RereadProof.PDF);
  }

  private static Paper paperOf(String name) throws Refusal {
    return switch (name.toLowerCase(Locale.ROOT)) {
      case "", "a4" -> Paper.A4;
      case "letter" -> Paper.LETTER;
      default ->
          throw Refusal.wrongUse(
              Sentence.of(
                  "the size of the paper{0} of a sheet is a4 or letter, not \"{1}\"",
                  Settable.PAPER, name));
    };
  }
}
