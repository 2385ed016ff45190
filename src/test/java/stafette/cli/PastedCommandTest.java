package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a check finds comes with a command that splits it. */
class PastedCommandTest {
  private static final String ALLEGRO = "<movement-title>Allegro</movement-title>";

  @TempDir private Path folder = Path.of("");

  @ParameterizedTest
  @ValueSource(strings = {"lantern-run", "signal-hill", "mill-stairs", "weir-gate"})
  void each_passage_of_a_sample_has_a_command_that_works(String sample) throws IOException {
    everyCommandWorks(Path.of("samples", sample + ".musicxml"));
  }

  @Test
  void where_bar_numbers_repeat_the_bars_are_counted_and_the_movement_is_told() throws IOException {
    Path score = write("two.musicxml", movements("", "Flute 1", "P1"));
    JsonArray passages = everyCommandWorks(score);
    assertEquals(List.of(1, 3), counted(passages.get(0)));
    assertEquals(List.of(4, 6), counted(passages.get(1)));
    assertEquals("movement 1", movement(passages.get(0)));
    assertEquals("movement 2", movement(passages.get(1)));
    String text = Ran.command("check", score.toString()).out();
    assertTrue(text.contains("Flute 1, staff 1, voice 1, bars 1-3 (#4-#6, movement 2): "), text);
    assertTrue(text.contains("\n  split "), text);
    assertTrue(text.contains(" --part P1 --staff 1 --voice 1 --bars \"#4-#6\"\n"), text);
  }

  @Test
  void a_movement_is_named_by_its_title_where_the_file_has_one() throws IOException {
    Path score = write("two.musicxml", movements(ALLEGRO, "Flute 1", "P1"));
    JsonArray passages = everyCommandWorks(score);
    assertEquals("Allegro", movement(passages.get(0)));
    assertEquals("movement 2", movement(passages.get(1)));
  }

  @Test
  void bars_that_are_numbered_once_belong_to_no_movement() throws IOException {
    Path score = write("one.musicxml", movements(1, ALLEGRO, "Flute 1", "P1"));
    assertTrue(everyCommandWorks(score).get(0).getAsJsonObject().get("movement").isJsonNull());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Flute 1, 2",
        "O'Brien's \"Flute\" $HOME `date` \\ !1",
        "Flute = Piccolo",
        "Flute;1",
        "Flöte &amp; Oboe",
        " Flute\n1 ",
        "#1 Flute"
      })
  void names_of_any_kind_are_quoted_so_that_the_command_works(String name) throws IOException {
    everyCommandWorks(write("it's a $core.musicxml", movements("", name, "P 1#")));
  }

  @Test
  void what_was_asked_of_the_check_is_asked_again() throws IOException {
    Path score = write("two.musicxml", movements("", "Flute 1", "P1"));
    JsonArray passages =
        everyCommandWorks(
            score, "--tempo", "quarter = 170", "--assurance", "90", "--tremolo", "measured");
    String command = passages.get(0).getAsJsonObject().get("command").getAsString();
    assertTrue(
        command.contains(" --tempo \"quarter = 170\" --tremolo measured --assurance 90"), command);
  }

  @Test
  void a_technique_is_allowed_again_and_need_not_be_of_use_to_the_crew_that_is_found()
      throws IOException {
    Path score = write("two.musicxml", movements("", "Flute 1", "P1"));
    String allowed = command(score, "--allow", "triple tonguing");
    assertTrue(allowed.endsWith(" --allow \"triple tonguing\""), allowed);
    String other = command(score, "--allow", "Tuba 1: triple tonguing");
    assertTrue(other.endsWith(" --allow \"Tuba 1: triple tonguing\""), other);
  }

  @Test
  void chords_within_the_same_bars_are_asked_for_with_all_their_tones() throws IOException {
    String chord =
        "<note><chord/><pitch><step>C</step><octave>6</octave></pitch><duration>1</duration>"
            + "<voice>1</voice></note></measure>";
    String text = movements(1, "", "Piano", "P1").replaceFirst("</measure>", chord);
    String command = command(write("chord.musicxml", text));
    assertTrue(command.contains(" --bars \"#1-#3\" --tone all"), command);
  }

  /** Nobody can say which of them is meant. */
  @Test
  void a_part_that_can_not_be_told_from_another_has_no_command() throws IOException {
    String one = movements("", "Flute 1", "P1");
    String part = one.substring(one.indexOf("<part "), one.indexOf("</score-partwise>"));
    String other = part.replace("<step>A</step>", "<step>B</step>");
    Path score = write("same.musicxml", one.replace(part, other + part));
    List<Boolean> without = new ArrayList<>();
    passages(score)
        .forEach(passage -> without.add(passage.getAsJsonObject().get("command").isJsonNull()));
    assertEquals(List.of(false, false, true, true), without.stream().sorted().toList());
  }

  @Test
  void each_crew_that_who_finds_has_a_command_that_works() throws IOException {
    String one = movements(1, "", "Flutes 1, 2", "P1");
    String second =
        "<score-part id=\"P2\"><part-name>Flutes 3, 4</part-name></score-part></part-list>";
    String two =
        one.replace("</part-list>", second)
            .replace(
                "</score-partwise>",
                "<part id=\"P2\"><measure/><measure/><measure/></part></score-partwise>");
    Path score = write("commas.musicxml", two.replace("\"210\"", "\"150\""));
    String found = Ran.command("who", score.toString(), "--part", "P1", "--json").out();
    JsonArray crews = JsonParser.parseString(found).getAsJsonObject().getAsJsonArray("crews");
    assertTrue(!crews.isEmpty(), found);
    for (JsonElement crew : crews) {
      JsonObject solved = crew.getAsJsonObject();
      assertWorks(solved.get("command").getAsString(), solved.get("turns").getAsString());
    }
  }

  /** A command that is typed ends well, and prints the turns that were told. */
  private static void assertWorks(String command, String turns) throws IOException {
    List<String> words = ShellWordsTest.readByShell(command);
    Ran ran = Ran.command(words.toArray(String[]::new));
    assertEquals(0, ran.exitCode(), command + ran.err());
    assertTrue(ran.out().contains("Turns      " + turns), turns + " is not in " + ran.out());
  }

  private String command(Path score, String... more) throws IOException {
    return everyCommandWorks(score, more).get(0).getAsJsonObject().get("command").getAsString();
  }

  private JsonArray everyCommandWorks(Path score, String... more) throws IOException {
    JsonArray passages = passages(score, more);
    assertTrue(passages.size() > 0);
    for (JsonElement passage : passages) {
      String command = passage.getAsJsonObject().get("command").getAsString();
      Path out = Files.createTempFile(folder, "split", ".musicxml");
      List<String> words = new ArrayList<>(ShellWordsTest.readByShell(command));
      words.addAll(List.of("--time", "2", "-o", out.toString(), "--force"));
      Ran ran = Ran.command(words.toArray(String[]::new));
      assertTrue(ran.exitCode() <= Commands.FINDINGS, () -> command + ": " + ran.err());
    }
    return passages;
  }

  private static JsonArray passages(Path score, String... more) {
    List<String> words = new ArrayList<>(List.of("check", score.toString(), "--json"));
    words.addAll(List.of(more));
    Ran ran = Ran.command(words.toArray(String[]::new));
    assertTrue(ran.exitCode() <= Commands.FINDINGS, ran.err());
    JsonObject json = JsonParser.parseString(ran.out()).getAsJsonObject();
    return json.getAsJsonArray("passages");
  }

  private static List<Integer> counted(JsonElement passage) {
    JsonArray ends = passage.getAsJsonObject().getAsJsonArray("counted");
    return List.of(ends.get(0).getAsInt(), ends.get(1).getAsInt());
  }

  private static String movement(JsonElement passage) {
    return passage.getAsJsonObject().get("movement").getAsString();
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private static String movements(String title, String name, String id) {
    return movements(2, title, name, id);
  }

  /** Movements of three bars each, all in one run of sixteenths. */
  private static String movements(int count, String title, String name, String id) {
    StringBuilder text =
        new StringBuilder("<score-partwise>" + title + "<part-list><score-part id=\"" + id + "\">")
            .append("<part-name>" + name + "</part-name></score-part></part-list>")
            .append("<part id=\"" + id + "\">");
    String note =
        "<note><pitch><step>A</step><octave>5</octave></pitch><duration>1</duration>"
            + "<voice>1</voice></note>";
    for (int movement = 1; movement <= count; movement++) {
      for (int bar = 1; bar <= 3; bar++) {
        text.append("<measure number=\"" + bar + "\">")
            .append(bar == 1 ? "<attributes><divisions>4</divisions></attributes>" : "")
            .append(bar == 1 ? "<sound tempo=\"210\"/>" : "")
            .append(note.repeat(16))
            .append("</measure>");
      }
    }
    return text.append("</part></score-partwise>").toString();
  }
}
