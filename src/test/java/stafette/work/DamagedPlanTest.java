package stafette.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.ask.LineRequest;
import stafette.ask.LockWish;
import stafette.ask.PlayerWish;
import stafette.ask.Relaying;
import stafette.ask.SplitRequest;
import stafette.desktop.LeftBehind;
import stafette.keep.KeptPlan;
import stafette.keep.LimitsInForce;
import stafette.plan.Hocket;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.score.ToneChoice;
import stafette.words.Refusal;

/** A damaged plan is refused in words, with the place and what to do, and none of Java's. */
class DamagedPlanTest {
  private static final Pattern JAVA = Pattern.compile("Exception|java\\.|path \\$");
  private static final LimitsInForce LIMITS = LeftBehind.limits();

  @TempDir private static Path folder = Path.of("");
  private static String plan = "";

  @BeforeAll
  static void keepPlan() throws IOException, Refusal {
    Path score = BellScore.write(folder.resolve("bells.musicxml"), List.of("1", "2", "3"));
    LineChoice choice =
        new LineChoice(
            "Piano",
            Optional.of(new BarChoice("1-3")),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.of(new ToneChoice.FromTop(1)));
    SplitRequest request =
        SplitRequest.usual(LineRequest.whole(score).with(choice))
            .with(PlayerWish.parse("Flute 1, Flute 2, Flute 3, Flute 4"), List.of())
            .with(new Relaying(Hocket.NO, 2, false, List.of(LockWish.parse("Flute 2: 2.1-2.2"))));
    SplitLine.SplitOutcome outcome = SplitLine.split(request, LIMITS);
    assertTrue(outcome.plan().isPresent());
    Reports.savePlan(outcome, folder.resolve("plan.json"), true);
    plan = Files.readString(folder.resolve("plan.json"));
    assertEquals("", said(plan), "as it was kept it opens");
  }

  private static String said(String text) throws IOException {
    return said(text.getBytes(StandardCharsets.UTF_8));
  }

  /** What is said when such a file is opened; nothing if it opens. */
  private static String said(byte[] bytes) throws IOException {
    try {
      OpenPlan.open(Files.write(folder.resolve("plan.json"), bytes), Map.of(), LIMITS);
      return "";
    } catch (Refusal e) {
      return String.valueOf(e.getMessage());
    }
  }

  private static void isTold(String says, String text) throws IOException {
    String said = said(text);
    assertTrue(said.startsWith(folder.resolve("plan.json").toString()), said);
    assertTrue(said.contains(says), said);
    assertFalse(JAVA.matcher(said).find(), said);
  }

  private static String with(String before, String after) {
    assertTrue(plan.contains(before), before);
    return plan.replace(before, after);
  }

  @Test
  void what_is_wrong_with_a_plan_is_told_with_its_place_and_what_to_do() throws IOException {
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
    isTold(
        "relays needs one at least",
        plan.replaceFirst("(?s)\"relays\": \\[.*?\\n  ]", "\"relays\": []"));
    isTold("a relay has no segment", with("\"relay\": 1,", "\"relay\": 0,"));
    isTold("score: file must be the name of a file", with("bells.musicxml", "b\\u0000.musicxml"));
    isTold(
        "lock 1: keep must be handoff, segment, in, out",
        with("\"keep\": \"in\"", "\"keep\": \"x\""));
    isTold(
        "result must be optimal, nearest, stopped, none",
        with("\"result\": \"optimal\"", "\"result\": \"best\""));
  }

  @Test
  void what_is_wrong_everywhere_is_told_twenty_times_and_counted() throws IOException {
    String many = said(plan.replaceAll("\"(peak|sustained|stamina|recovery)\":", "\"a $1\":"));
    assertTrue(many.lines().anyMatch(line -> line.matches("and [0-9]+ more")), many);
    assertEquals(22, many.lines().count(), many);
  }

  @Test
  void a_plan_is_known_for_one_though_it_is_damaged() throws Exception {
    Path plain = Files.writeString(folder.resolve("kept"), "\uFEFF" + plan);
    assertTrue(KeptPlan.isPlan(plain));
    assertEquals("", said("\uFEFF" + plan));
    assertTrue(KeptPlan.isPlan(Files.writeString(folder.resolve("empty.JSON"), "")));
    assertFalse(KeptPlan.isPlan(folder.resolve("bells.musicxml")));
  }

  @Test
  void a_plan_not_in_utf_8_says_so() throws IOException {
    byte[] bytes = plan.getBytes(StandardCharsets.UTF_8);
    bytes[plan.indexOf("Flute")] = (byte) 0xff;
    assertTrue(said(bytes).contains("is not in UTF-8"));
  }

  @Test
  void a_folder_that_is_none_is_told() throws IOException {
    Path file = Files.writeString(folder.resolve("a-file"), "");
    assertTrue(LimitsInForce.problemsIn(file).get(0).contains("is no folder"));
    assertThrows(Refusal.class, () -> LimitsInForce.load(Optional.of(folder.resolve("none"))));
  }
}
