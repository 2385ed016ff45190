package stafette.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.regex.Pattern;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import stafette.desktop.LeftBehind;
import stafette.plan.Hocket;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.score.ToneChoice;

/** A damaged file is refused in words, never with those of Java, and never by a fault. */
class DamagedFilesTest {
  private static final Pattern JAVA = Pattern.compile("Exception|java\\.|path \\$");
  private static final List<String> VALUES =
      List.of(
          ("null -1 0 0.5 3 1e9 1e300 1e999 2147483647 true \"\" \"x\" \"\\u0000\" \"1/0\" [] {}"
                  + " [[]] [0,0] \"segment\" \"odd\"")
              .split(" "));
  private static final Pattern VALUE =
      Pattern.compile("(?<=: |\\[|, )(-?[0-9][0-9.e+-]*|\"[^\"]*\"|true|false|null)(?=[,\\]}\\s])");

  private static final LimitsInForce LIMITS = LeftBehind.limits();

  private static Path folder = Path.of("");
  private static String plan = "";

  @BeforeContainer
  static void keepPlan() throws IOException, Refusal {
    folder = Files.createTempDirectory("stafette-damaged");
    Path score = BellScore.write(folder.resolve("bells.musicxml"), List.of("1", "2", "3"));
    LineChoice choice =
        new LineChoice(
            "Piano",
            Optional.of(new BarChoice("1-3")),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.of(new ToneChoice.FromTop(1)));
    SplitLine.Request request =
        SplitLine.Request.usual(LineRequest.whole(score).with(choice))
            .with(PlayerWish.parse("Flute 1, Flute 2, Flute 3, Flute 4"), List.of())
            .with(new Relaying(Hocket.NO, 2, false, List.of(LockWish.parse("Flute 2: 2.1-2.2"))));
    SplitLine.Outcome outcome = SplitLine.split(request, LIMITS);
    assertTrue(outcome.plan().isPresent());
    Reports.savePlan(outcome, folder.resolve("plan.json"), true);
    plan = Files.readString(folder.resolve("plan.json"));
    assertEquals("", said("plan.json", plan), "as it was kept it opens");
  }

  @AfterContainer
  static void remove() throws IOException {
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }

  private static String said(String name, String text) throws IOException {
    return said(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /** What is said when such a file is opened; nothing if it opens. */
  private static String said(String name, byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve(name), bytes);
    try {
      if (name.startsWith("plan")) {
        OpenPlan.open(file, Map.of(), LIMITS);
      } else {
        MeasuredPlayers.load(Optional.of(file), LIMITS);
      }
      return "";
    } catch (Refusal e) {
      return String.valueOf(e.getMessage());
    }
  }

  private static void isTold(String says, String text) throws IOException {
    String said = said("plan.json", text);
    assertTrue(said.startsWith(folder.resolve("plan.json").toString()), said);
    assertTrue(said.contains(says), said);
    assertFalse(JAVA.matcher(said).find(), said);
  }

  private static String with(String before, String after) {
    assertTrue(plan.contains(before), before);
    return plan.replace(before, after);
  }

  @Example
  void what_is_wrong_with_a_plan_is_told_with_its_place_and_what_to_do()
      throws IOException {
    String remedy = "Take a copy of the plan from before, or split the line again.";
    isTold("is empty", "");
    isTold("is empty", " \n ");
    isTold(remedy, "{}");
    isTold("the file ends in the middle; it was cut off", plan.substring(0, plan.length() / 2));
    isTold(remedy, plan.substring(0, plan.length() / 2));
    isTold("line 1, column 3: this is no JSON", "{" + plan);
    isTold("more follows here", plan + "}");
    isTold(", in score.file: this is no JSON", with("\"file\": \"", "\"file\": x\""));
    isTold("this is no JSON", "[".repeat(100_000));
    isTold("relays needs one at least", plan.replaceFirst("(?s)\"relays\": \\[.*?\\n  ]", "\"relays\": []"));
    isTold("a relay has no segment", with("\"relay\": 1,", "\"relay\": 0,"));
    isTold("score: file must be the name of a file", with("bells.musicxml", "b\\u0000.musicxml"));
    isTold("lock 1: keep must be handoff, segment, in, out", with("\"keep\": \"in\"", "\"keep\": \"x\""));
    isTold("result must be optimal, stopped, none", with("\"result\": \"optimal\"", "\"result\": \"best\""));
  }

  @Example
  void what_is_wrong_everywhere_is_told_some_twenty_times() throws IOException {
    String said = said("plan.json", with("\"measured\": true", "\"measured\": 3").replace("{", "["));
    assertFalse(JAVA.matcher(said).find(), said);
    String many = said("plan.json", plan.replaceAll("\"(busy|techniques)\": \\[", "\"$1s\": ["));
    assertTrue(many.lines().count() <= 22, many);
  }

  @Example
  void a_plan_not_in_utf_8_says_so() throws IOException {
    byte[] bytes = plan.getBytes(StandardCharsets.UTF_8);
    bytes[plan.indexOf("Flute")] = (byte) 0xff;
    assertTrue(said("plan.json", bytes).contains("is not in UTF-8"));
  }

  @Property(tries = 100)
  void no_change_of_bytes_makes_a_plan_a_fault(@ForAll Random random) throws IOException {
    String said = said("plan.json", bytes(random, plan.getBytes(StandardCharsets.UTF_8)));
    assertFalse(JAVA.matcher(said).find(), said);
  }

  @Property(tries = 200)
  void no_change_of_values_makes_a_plan_a_fault(@ForAll Random random) throws IOException {
    String said = said("plan.json", values(random, plan));
    assertFalse(JAVA.matcher(said).find(), said);
  }

  @Property(tries = 100)
  void no_change_makes_a_players_file_a_fault(@ForAll Random random) throws IOException {
    String players =
        """
        {"format": "stafette-players", "version": 1, "players": [
          {"name": "Ada", "instrument": "flute", "seat": {"across": -3, "back": 4.5}, "level": 90,
           "techniques": [{"name": "double tonguing", "peak": 15, "sustained": 14, "stamina": 20,
                           "recovery": 5, "moving": 14}],
           "breath": {"capacity": 30, "catch": 0.4, "full": 1.1}}]}
        """;
    assertEquals("", said("players.json", players));
    byte[] damaged =
        random.nextInt(3) == 0
            ? bytes(random, players.getBytes(StandardCharsets.UTF_8))
            : values(random, players).getBytes(StandardCharsets.UTF_8);
    String said = said("players.json", damaged);
    assertFalse(JAVA.matcher(said).find(), said);
  }

  @Property(tries = 40)
  void no_change_makes_a_table_a_fault(@ForAll Random random) throws IOException {
    List<String> tables = List.of("instruments", "techniques", "factors", "weights", "blend");
    String table = tables.get(random.nextInt(tables.size())) + ".csv";
    Path own = Files.createDirectories(folder.resolveSibling(folder.getFileName() + "-tables"));
    byte[] bytes = Files.readAllBytes(Path.of("limits", table));
    Path file = Files.write(own.resolve(table), bytes(random, bytes));
    for (String problem : LimitsInForce.problemsIn(own)) {
      assertTrue(problem.contains(".csv"), problem);
      assertFalse(JAVA.matcher(problem).find(), problem);
    }
    Files.delete(file);
    Files.delete(own);
  }

  /** Cut off, a few bytes changed, or some taken out. */
  private static byte[] bytes(Random random, byte[] all) {
    int at = random.nextInt(all.length);
    int kind = random.nextInt(3);
    if (kind == 0) {
      return Arrays.copyOf(all, at);
    }
    byte[] other = all.clone();
    if (kind == 1) {
      other[at] = (byte) "{}[],:\"\\-0eé".charAt(random.nextInt(12));
      other[random.nextInt(all.length)] = (byte) random.nextInt(256);
      return other;
    }
    int length = Math.min(all.length - at, 1 + random.nextInt(40));
    System.arraycopy(all, at + length, other, at, all.length - at - length);
    return Arrays.copyOf(other, all.length - length);
  }

  private static String values(Random random, String text) {
    List<int[]> places =
        VALUE.matcher(text).results().map(found -> new int[] {found.start(), found.end()}).toList();
    int[] place = places.get(random.nextInt(places.size()));
    return text.substring(0, place[0])
        + VALUES.get(random.nextInt(VALUES.size()))
        + text.substring(place[1]);
  }

  @Example
  void a_folder_that_is_none_is_told() throws IOException {
    Path file = Files.writeString(folder.resolve("a-file"), "");
    assertTrue(LimitsInForce.problemsIn(file).get(0).contains("is no folder"));
    assertThrows(Refusal.class, () -> LimitsInForce.load(Optional.of(folder.resolve("none"))));
  }
}
