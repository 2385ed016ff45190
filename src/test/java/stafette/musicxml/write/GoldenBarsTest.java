package stafette.musicxml.write;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.plan.Brief;
import stafette.plan.Joins;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.Line;

/**
 * Bars as they are written for two players, in each kind of metre, held against {@code
 * golden/bars.txt}; {@code -Dgolden=write} writes the program's own anew. How they should look is
 * common practice, no source.
 */
class GoldenBarsTest {
  private static final Path GOLDEN = Path.of("src/test/resources/stafette/golden/bars.txt");

  private final List<String> all = new ArrayList<>();

  @Test
  void each_metre_is_written_as_a_copyist_would() throws Exception {
    twice("2/4", new Metre(2, 4, 1), 4, 4, 4);
    twice("3/8", new Metre(3, 8, 1), 4, 6);
    twice("3/4", new Metre(3, 4, 1), 4, 4, 4, 4);
    twice("4/4", new Metre(4, 4, 1), 4, 4, 4, 4, 4);
    twice("4/4, triplets", new Metre(4, 4, 1), 3, 3, 3, 3, 3);
    twice("5/4", new Metre(5, 4, 1), 4, 4, 4, 4, 4, 4);
    twice("6/8", new Metre(6, 8, 1), 4, 6, 6);
    twice("7/8 as 2+2+3", new Metre(7, 8, 1), 4, 4, 4, 6);
    twice("7/8 as 3+2+2", new Metre(7, 8, 1), 4, 6, 4, 4);
    twice("9/8", new Metre(9, 8, 1), 4, 6, 6, 6);
    twice("12/8", new Metre(12, 8, 1), 4, 6, 6, 6, 6);
    Metre four = new Metre(4, 4, 1);
    Filled full = new Filled(four, 4, List.of(4, 4, 4, 4));
    write("4/4, with a pickup", new Filled(four, 4, List.of(4)), full, full);
    Filled three = new Filled(new Metre(3, 4, 1), 4, List.of(4, 4, 4));
    write("3/4, then 6/8", three, new Filled(new Metre(6, 8, 1), 4, List.of(6, 6)));
    write("3/4, then 2/4 with flats", three, new Filled(new Metre(2, 4, -2), 4, List.of(4, 4)));
    write(
        "7/8, then 4/4 with sharps",
        new Filled(new Metre(7, 8, 0), 4, List.of(4, 4, 6)),
        new Filled(new Metre(4, 4, 5), 4, List.of(4, 4, 4, 4)));
    String golden = String.join("\n", all) + "\n";
    if ("write".equals(System.getProperty("golden"))) {
      Files.writeString(GOLDEN, golden);
    }
    assertEquals(Files.readString(GOLDEN), golden);
  }

  /** A metre with the fifths of a key. */
  private record Metre(int beats, int beatType, int fifths) {
    int length() {
      return beats * 48 / beatType;
    }

    String attributes() {
      return "<attributes><divisions>12</divisions><key><fifths>"
          + fifths
          + "</fifths></key><time><beats>"
          + beats
          + "</beats><beat-type>"
          + beatType
          + "</beat-type></time></attributes>";
    }
  }

  /**
   * A bar of short notes.
   *
   * @param parts of a quarter
   * @param beams how many notes stand under each beam
   */
  private record Filled(Metre metre, int parts, List<Integer> beams) {
    String notes() {
      StringBuilder notes = new StringBuilder();
      for (int count : beams) {
        for (int i = 0; i < count; i++) {
          notes.append(note(i, count, parts));
        }
      }
      return notes.toString();
    }

    int count() {
      return beams.stream().mapToInt(i -> i).sum();
    }

    boolean isPickup() {
      return count() * 12 / parts < metre.length();
    }
  }

  private void twice(String name, Metre metre, int parts, Integer... beams) throws Exception {
    Filled bar = new Filled(metre, parts, List.of(beams));
    write(name, bar, bar);
  }

  /** Bars of which two flutes have the last and what comes before, and meet on its downbeat. */
  private void write(String name, Filled... bars) throws Exception {
    String begins =
        direction("<words>sempre stacc.</words>")
            + direction("<dynamics><p/></dynamics>")
            + direction("<wedge type=\"crescendo\"/>");
    String ends = direction("<wedge type=\"stop\"/>") + direction("<dynamics><f/></dynamics>");
    StringBuilder piano = new StringBuilder();
    int number = bars[0].isPickup() ? 0 : 1;
    for (int i = 0; i < bars.length; i++) {
      boolean changes = i == 0 || !bars[i].metre().equals(bars[i - 1].metre());
      piano
          .append("<measure number=\"")
          .append(number + i)
          .append(bars[i].isPickup() ? "\" implicit=\"yes\">" : "\">")
          .append(changes ? bars[i].metre().attributes() : "")
          .append(i == 0 ? begins : "")
          .append(bars[i].notes())
          .append(i == bars.length - 1 ? ends : "")
          .append("</measure>");
    }
    piano
        .append("<measure number=\"")
        .append(number + bars.length)
        .append("\"><note><rest measure=\"yes\"/><duration>")
        .append(bars[bars.length - 1].metre().length())
        .append("</duration></note></measure>");
    String text =
        "<score-partwise version=\"4.0\"><part-list><score-part id=\"P1\"><part-name>Piano"
            + "</part-name></score-part></part-list><part id=\"P1\">"
            + piano
            + "</part></score-partwise>";
    Document document = MusicXmlReader.read(text.getBytes(StandardCharsets.UTF_8));
    Line line = ByHand.line(document.score(), "P1", number + "-" + (number + bars.length - 1));
    List<Player> players =
        List.of(
            ByHand.player("Flute 1", "flute", document.score()),
            ByHand.player("Flute 2", "flute", document.score()));
    int middle = line.count() - bars[bars.length - 1].count();
    Plan plan =
        new Plan(
            new Brief(line, players, Invented.rules()),
            List.of(new Segment(0, 0, 0, middle), new Segment(1, 0, middle, line.count() - 1)));
    for (Joins joins : Joins.values()) {
      if (joins == Joins.AS_WRITTEN || name.equals("4/4")) {
        byte[] written =
            ScoreWriter.write(
                    document,
                    Optional.of(plan),
                    List.of(),
                    new WrittenAs(SourceTreatment.REMOVE, joins, false, true),
                    player -> Optional.empty())
                .bytes();
        assertEquals(List.of(), OfficialSchema.errors(written));
        all.add("== " + name + (joins == Joins.AS_WRITTEN ? "" : ", " + joins.text()));
        for (String part : List.of("Piano", "Flute 1", "Flute 2")) {
          all.add(part);
          BarsAsText.of(written, part).forEach(each -> all.add("  " + each));
        }
      }
    }
  }

  private static String direction(String sign) {
    return "<direction><direction-type>" + sign + "</direction-type></direction>";
  }

  private static String note(int index, int count, int parts) {
    String beam = index == 0 ? "begin" : index == count - 1 ? "end" : "continue";
    boolean triplet = parts == 3;
    return "<note><pitch><step>"
        + (index == 0 ? "B" : "G")
        + "</step><octave>4</octave></pitch><duration>"
        + 12 / parts
        + "</duration><type>"
        + (triplet ? "eighth" : "16th")
        + "</type>"
        + (triplet
            ? "<time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes>"
                + "</time-modification>"
            : "")
        + "<beam number=\"1\">"
        + beam
        + "</beam>"
        + (index == 0 ? "<notations><articulations><accent/></articulations></notations>" : "")
        + "</note>";
  }
}
