package stafette.musicxml.read;

import java.nio.charset.StandardCharsets;
import java.util.List;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Stroke;

/** Small scores for tests: one part "Flute", whose measures are given as text. */
public final class Xml {
  public static final String ATTRIBUTES =
      "<attributes><divisions>12</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>";

  private Xml() {}

  public static String score(String... measures) {
    return scoreOf("<part-name>Flute</part-name>", measures);
  }

  public static String scoreOf(String partNames, String... measures) {
    StringBuilder text =
        new StringBuilder(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<score-partwise version=\"4.0\">\n"
                + "<part-list><score-part id=\"P1\">"
                + partNames
                + "</score-part></part-list>\n<part id=\"P1\">\n");
    int number = 1;
    for (String measure : measures) {
      text.append(
          measure.startsWith("<measure")
              ? measure
              : "<measure number=\"" + number + "\">" + measure + "</measure>");
      text.append('\n');
      number++;
    }
    return text.append("</part>\n</score-partwise>\n").toString();
  }

  /** A note with this duration in twelfths of a quarter; {@code more} stands after the duration. */
  public static String note(String step, int octave, int duration, String more) {
    return "<note><pitch><step>"
        + step
        + "</step><octave>"
        + octave
        + "</octave></pitch><duration>"
        + duration
        + "</duration>"
        + more
        + "</note>";
  }

  public static String rest(int duration) {
    return "<note><rest/><duration>" + duration + "</duration></note>";
  }

  public static Document read(String text) throws UnreadableScore {
    return MusicXmlReader.read(text.getBytes(StandardCharsets.UTF_8));
  }

  /** The strokes of the first voice of the first part. */
  public static List<Stroke> strokes(String text) throws UnreadableScore {
    return read(text).score().parts().get(0).voices().get(0).strokes();
  }
}
