package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Part;
import stafette.score.Score;

/** From a piano page that hands share to the winds of its score. */
class WhoCommandTest {
  private static final String PAGE = "samples/weir-gate.musicxml";

  @TempDir private Path folder = Path.of("");

  @Test
  void who_tells_players_and_crews() {
    Ran ran = Ran.command("who", PAGE, "--part", "Piano", "--bars", "3-14");
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    assertTrue(ran.out().contains("Piano, both hands, bars 3-14"), ran.out());
    assertTrue(ran.out().contains("plays in 9-10"), ran.out());
    assertTrue(ran.out().contains("Crews, the best first:\n  1  Flute"), ran.out());
    assertTrue(ran.out().contains(NumberText.CAUTION), ran.out());
  }

  @Test
  void where_no_crew_has_a_plan_it_says_so() {
    Ran ran = Ran.command("who", PAGE, "--part", "Piano", "--bars", "3-14", "--tempo", "400");
    assertEquals(Commands.FINDINGS, ran.exitCode(), ran.err());
    assertFalse(ran.out().contains("Crews, the best first"), ran.out());
  }

  @Test
  void its_json_names_them_too() {
    JsonObject who =
        json(Ran.command("who", PAGE, "--part", "Piano", "--bars", "3-14", "--json").out());
    assertEquals("stafette-who", who.get("format").getAsString());
    assertEquals("Flute 1", first(who, "players").get("name").getAsString());
    assertTrue(first(who, "crews").get("holds").getAsBoolean());
  }

  /**
   * One command makes a score for the winds of the page, and each of its notes is accounted for.
   */
  @Test
  void a_page_that_hands_share_becomes_a_score_for_its_winds_by_one_command()
      throws IOException, UnreadableScore {
    Path out = folder.resolve("out.musicxml");
    Ran ran =
        Ran.command(
            "split",
            PAGE,
            "--part",
            "Piano",
            "--bars",
            "3-14",
            "--source",
            "remove",
            "--json",
            "-o",
            out.toString());
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    assertTrue(ran.err().contains("Players    Flute 1, Flute 2: the best of"), ran.err());
    JsonObject plan = json(ran.out());
    Map<String, Integer> became = new TreeMap<>();
    for (JsonElement note : plan.getAsJsonObject("line").getAsJsonArray("source")) {
      became.merge(note.getAsJsonObject().get("became").getAsString(), 1, Integer::sum);
    }
    assertEquals(Map.of("taken", 192), became);
    assertTrue(plan.getAsJsonObject("line").getAsJsonArray("notHeld").size() > 0);
    Score before = MusicXmlReader.read(Files.readAllBytes(Path.of(PAGE))).score();
    Score after = MusicXmlReader.read(Files.readAllBytes(out)).score();
    assertEquals(names(before), names(after));
    String text = Files.readString(out);
    for (String label : List.of(">1.<", ">2.<", ">a 2<")) {
      assertTrue(text.contains(label), label);
    }
  }

  @Test
  void broken_chords_are_read_as_their_upper_notes() {
    Ran ran =
        Ran.command(
            "split",
            PAGE,
            "--part",
            "Piano",
            "--bars",
            "7-8",
            "--reading",
            "upper",
            "--players",
            "Flute 1, Clarinet 1",
            "--json");
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    JsonObject line = json(ran.out()).getAsJsonObject("line");
    assertEquals("upper", line.get("reading").getAsString());
    assertEquals(16, line.getAsJsonArray("strokes").size());
    assertEquals(32, line.getAsJsonArray("source").size());
  }

  /** The row "Source" and the document say the same, and with all bars told so do these. */
  @ParameterizedTest
  @ValueSource(strings = {"all", "upper", "lower"})
  void the_numbers_of_the_source_add_up(String reading) {
    String text = source(reading, "--explain").out();
    Matcher row =
        Pattern.compile("Source +(\\d+) notes(?:, all taken|: (\\d+) taken, (\\d+) left out)")
            .matcher(text);
    assertTrue(row.find(), text);
    int all = Integer.parseInt(row.group(1));
    int taken = row.group(2) == null ? all : Integer.parseInt(row.group(2));
    int left = row.group(3) == null ? 0 : Integer.parseInt(row.group(3));
    assertEquals(all, taken + left);
    Map<String, Integer> became = new TreeMap<>();
    Set<String> bars = new TreeSet<>();
    for (JsonElement each :
        json(source(reading, "--json").out()).getAsJsonObject("line").getAsJsonArray("source")) {
      JsonObject note = each.getAsJsonObject();
      became.merge(note.get("became").getAsString(), 1, Integer::sum);
      if (note.get("became").getAsString().equals("omitted")) {
        bars.add(note.get("bar").getAsString());
      }
    }
    assertEquals(taken, became.getOrDefault("taken", 0));
    assertEquals(left, became.getOrDefault("omitted", 0));
    long told = Pattern.compile("\n +bar (\\d+): .* left out").matcher(text).results().count();
    assertEquals(bars.size(), told, text);
  }

  private static Ran source(String reading, String how) {
    return Ran.command(
        "split",
        PAGE,
        "--part",
        "Piano",
        "--bars",
        "7-14",
        "--reading",
        reading,
        "--players",
        "Flute 1, Flute 2, Clarinet 1, Clarinet 2",
        how);
  }

  /** Those who colour the line in a staff that they share have a voice each there. */
  @Test
  void players_of_one_staff_colour_a_line_that_those_of_another_relay() throws IOException {
    Path once = folder.resolve("once.musicxml");
    Path twice = folder.resolve("twice.musicxml");
    Ran first = coloured(PAGE, once);
    assertEquals(Commands.FINE, first.exitCode(), first.err());
    assertTrue(first.out().contains("Clarinet 2: plays in"), first.out());
    Ran second = coloured(once.toString(), twice);
    assertTrue(second.out().contains("nothing changed"), second.out());
    assertEquals(Files.readString(once), Files.readString(twice));
  }

  private static Ran coloured(String score, Path out) {
    return Ran.command(
        "split",
        score,
        "--part",
        "Piano",
        "--bars",
        "3-14",
        "--players",
        "Flutes 1.2",
        "--colour",
        "Clarinets in B-flat 1.2",
        "-o",
        out.toString());
  }

  private static List<String> names(Score score) {
    return score.parts().stream().map(Part::name).toList();
  }

  private static JsonObject json(String text) {
    return JsonParser.parseString(text).getAsJsonObject();
  }

  private static JsonObject first(JsonObject of, String list) {
    return of.getAsJsonArray(list).get(0).getAsJsonObject();
  }
}
