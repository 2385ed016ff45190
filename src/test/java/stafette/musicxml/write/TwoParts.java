package stafette.musicxml.write;

import static stafette.musicxml.read.Xml.ATTRIBUTES;
import static stafette.musicxml.read.Xml.note;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import stafette.Invented;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.UnreadableScore;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.Line;
import stafette.score.NoSuchLine;
import stafette.score.Part;
import stafette.score.Stroke;
import stafette.score.Tone;

/**
 * Small scores of a Piano, four bars of which hold a line, and a Flute whose bars are given as
 * text; the flute takes some of the line.
 */
public final class TwoParts {
  /** Sixteen sixteenth notes on A4. */
  public static final String SIXTEENTHS = note("A", 4, 3, "").repeat(16);

  private static final String OPEN =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <score-partwise version="4.0">
        <part-list>
          <score-part id="P1"><part-name>Piano</part-name></score-part>
          <score-part id="P2"><part-name>Flute</part-name></score-part>
        </part-list>
      """;

  private TwoParts() {}

  /** The flute's measures as they stand between their tags, or whole if they bring those. */
  public static String score(String... flute) {
    String[] piano = new String[flute.length];
    for (int i = 0; i < piano.length; i++) {
      piano[i] = (i == 0 ? ATTRIBUTES : "") + SIXTEENTHS;
    }
    return of(List.of(piano), List.of(flute));
  }

  public static String of(List<String> piano, List<String> flute) {
    return OPEN + part("P1", piano) + part("P2", flute) + "</score-partwise>\n";
  }

  private static String part(String id, List<String> measures) {
    StringBuilder text = new StringBuilder("  <part id=\"" + id + "\">\n");
    int number = 1;
    for (String measure : measures) {
      text.append("    ")
          .append(
              measure.startsWith("<measure")
                  ? measure
                  : "<measure number=\"" + number + "\">\n      " + measure + "\n    </measure>")
          .append('\n');
      number++;
    }
    return text.append("  </part>\n").toString();
  }

  public static Document read(String text) throws UnreadableScore {
    return MusicXmlReader.read(text.getBytes(StandardCharsets.UTF_8));
  }

  /** The flute plays strokes of the piano's line, a player without a part all that is left. */
  public static Plan plan(Document document, int first, int last) throws NoSuchLine {
    return plan(document, "Flute", first, last);
  }

  public static Plan plan(Document document, String name, int first, int last) throws NoSuchLine {
    int bars = document.score().bars().count();
    return plan(document, ByHand.line(document.score(), "P1", "#1-#" + bars), name, first, last);
  }

  public static Plan plan(Document document, Line line, String name, int first, int last) {
    Player flute = ByHand.player(name, "flute", document.score());
    return new Plan(
        new Brief(line, List.of(flute), Invented.rules()), List.of(new Segment(0, 0, first, last)));
  }

  public static WrittenScore write(Document document, Plan plan) throws UnwritablePlan {
    return write(document, plan, SourceTreatment.KEEP);
  }

  public static WrittenScore write(Document document, Plan plan, SourceTreatment treatment)
      throws UnwritablePlan {
    return ScoreWriter.write(document, plan, treatment, player -> Optional.empty());
  }

  /** The score with strokes of the line in the flute's part. */
  static String written(String text, int first, int last)
      throws UnreadableScore, NoSuchLine, UnwritablePlan {
    Document document = read(text);
    return new String(
        write(document, plan(document, first, last)).bytes(), document.origin().charset());
  }

  /** Everything struck in a part, as "onset keys length". */
  public static List<String> strokes(Document document, String part) {
    return document.score().part(part).stream()
        .map(Part::voices)
        .flatMap(List::stream)
        .flatMap(voice -> voice.strokes().stream())
        .map(TwoParts::heard)
        .sorted()
        .toList();
  }

  static String heard(Stroke stroke) {
    return stroke.onset().quarters()
        + " "
        + stroke.tones().stream().map(Tone::key).toList()
        + " "
        + stroke.length().quarters();
  }
}
