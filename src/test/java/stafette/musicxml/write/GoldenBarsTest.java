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
 * golden-bars.txt}; {@code -Dgolden=write} writes the program's own anew. How they should look is
 * common practice, no source.
 */
class GoldenBarsTest {
  private static final Path GOLDEN = Path.of("src/test/resources/stafette/golden/bars.txt");

  private final List<String> all = new ArrayList<>();

  @Test
  void each_metre_is_written_as_a_copyist_would() throws Exception {
    write("2/4", 2, 4, 4, "", 4, 4);
    write("3/8", 3, 8, 4, "", 6);
    write("3/4", 3, 4, 4, "", 4, 4, 4);
    write("4/4", 4, 4, 4, "", 4, 4, 4, 4);
    write("4/4, triplets", 4, 4, 3, "", 3, 3, 3, 3);
    write("5/4", 5, 4, 4, "", 4, 4, 4, 4, 4);
    write("6/8", 6, 8, 4, "", 6, 6);
    write("7/8 as 2+2+3", 7, 8, 4, "", 4, 4, 6);
    write("7/8 as 3+2+2", 7, 8, 4, "", 6, 4, 4);
    write("9/8", 9, 8, 4, "", 6, 6, 6);
    write("12/8", 12, 8, 4, "", 6, 6, 6, 6);
    String golden = String.join("\n", all) + "\n";
    if ("write".equals(System.getProperty("golden"))) {
      Files.writeString(GOLDEN, golden);
    }
    assertEquals(Files.readString(GOLDEN), golden);
  }

  /**
   * Two bars of short notes, of which two flutes have one each, and meet on the second downbeat.
   *
   * @param parts of a quarter
   * @param beams how many notes stand under each beam
   */
  private void write(String name, int beats, int beatType, int parts, String more, int... beams)
      throws Exception {
    StringBuilder bar = new StringBuilder();
    for (int count : beams) {
      for (int i = 0; i < count; i++) {
        bar.append(note(i, count, parts));
      }
    }
    int length = beats * 48 / beatType;
    String attributes =
        "<attributes><divisions>12</divisions><key><fifths>1</fifths></key><time><beats>"
            + beats
            + "</beats><beat-type>"
            + beatType
            + "</beat-type></time></attributes>";
    String begins =
        direction("<words>sempre stacc.</words>")
            + direction("<dynamics><p/></dynamics>")
            + direction("<wedge type=\"crescendo\"/>");
    String ends = direction("<wedge type=\"stop\"/>") + direction("<dynamics><f/></dynamics>");
    String rest = "<note><rest measure=\"yes\"/><duration>" + length + "</duration></note>";
    String piano =
        "<measure number=\"1\">"
            + attributes
            + begins
            + bar
            + "</measure>"
            + "<measure number=\"2\">"
            + bar
            + ends
            + "</measure>"
            + "<measure number=\"3\">"
            + more
            + rest
            + "</measure>";
    String text =
        "<score-partwise version=\"4.0\"><part-list><score-part id=\"P1\"><part-name>Piano"
            + "</part-name></score-part></part-list><part id=\"P1\">"
            + piano
            + "</part></score-partwise>";
    Document document = MusicXmlReader.read(text.getBytes(StandardCharsets.UTF_8));
    Line line = ByHand.line(document.score(), "P1", "1-2");
    List<Player> players =
        List.of(
            ByHand.player("Flute 1", "flute", document.score()),
            ByHand.player("Flute 2", "flute", document.score()));
    int middle = line.count() / 2;
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
