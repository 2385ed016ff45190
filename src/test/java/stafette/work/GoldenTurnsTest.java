package stafette.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stafette.ask.LineRequest;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.check.Costing;
import stafette.check.JudgedPlan;
import stafette.check.SegmentReport;
import stafette.check.TempoWindow;
import stafette.check.alone.Ease;
import stafette.check.alone.LineVerdict;
import stafette.keep.LimitsInForce;
import stafette.plan.Handoff;
import stafette.plan.Player;
import stafette.score.BarChoice;
import stafette.score.Line;
import stafette.score.LineChoice;
import stafette.time.Rank;
import stafette.words.Refusal;
import stafette.work.GoldenLines.GoldenLine;

/**
 * Lines as orchestrators meet them: the turns that an experienced one would write stand beside
 * those of the program in {@code golden-turns.txt}, and why they differ, where they do. With {@code
 * -Dgolden=write} the turns in the file are written anew.
 */
class GoldenTurnsTest {
  private static final Path FILE =
      Path.of("src", "test", "resources", "stafette", "golden-turns.txt");

  private static final double HOUR_SECONDS = 3600;
  private static final double RESERVE = 0.03;

  @TempDir private static Path folder = Path.of("");

  private static final Map<String, GoldenTurns> FOUND = new LinkedHashMap<>();

  /** What the program makes of a line. */
  private record GoldenTurns(
      GoldenLine line, SplitLine.SplitOutcome outcome, List<LineVerdict> alone) {
    JudgedPlan judged() {
      return outcome.plan().orElseThrow(() -> new AssertionError(line.title() + " has no plan"));
    }

    List<Player> silent() {
      return IntStream.range(0, players().size())
          .filter(i -> judged().plan().segments().stream().noneMatch(s -> s.player() == i))
          .mapToObj(players()::get)
          .toList();
    }

    List<Player> players() {
      return outcome.brief().players();
    }

    Ease ease(Player player) {
      return alone.stream()
          .filter(verdict -> verdict.instrument().name().equals(player.instrument().name()))
          .map(LineVerdict::ease)
          .findFirst()
          .orElseThrow();
    }

    /** The lines of the file that are reckoned. */
    Map<String, String> told() {
      Map<String, String> told = new LinkedHashMap<>();
      told.put("players", line.players());
      told.put("turns", TurnsOnALine.turns(judged().plan()));
      told.put("effort", TurnsOnALine.effort(judged()));
      String silent =
          String.join(
              ", ", silent().stream().map(who -> who.name() + ": " + ease(who).text()).toList());
      told.put("silent", silent.isEmpty() ? "nobody" : silent);
      return told;
    }
  }

  @BeforeAll
  static void split() throws Refusal, IOException {
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    for (GoldenLine line : GoldenLines.all()) {
      SplitRequest request = asked(line);
      SplitLine.SplitOutcome outcome = SplitLine.split(request, limits);
      FOUND.put(line.title(), new GoldenTurns(line, outcome, SplitLine.answers(outcome, request)));
    }
  }

  private static SplitRequest asked(GoldenLine line) throws Refusal, IOException {
    Path file = folder.resolve(line.title().replace(' ', '-') + ".musicxml");
    Files.writeString(file, line.score().text());
    LineChoice choice =
        new LineChoice(
            line.part(),
            Optional.of(new BarChoice("1-" + line.bars())),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.empty());
    return SplitRequest.usual(LineRequest.whole(file).with(choice))
        .with(PlayerWish.parse(line.players()), List.of())
        .within(HOUR_SECONDS);
  }

  static List<GoldenTurns> found() {
    return List.copyOf(FOUND.values());
  }

  @Test
  void the_file_tells_what_the_program_writes() throws IOException {
    List<String> before = Files.readAllLines(FILE);
    List<String> now = new ArrayList<>();
    Map<String, String> told = Map.of();
    List<String> titles = new ArrayList<>();
    for (String row : before) {
      String word = row.strip().split(" +", 2)[0];
      if (!row.isBlank() && !row.startsWith(" ") && !row.startsWith("#")) {
        titles.add(row);
        told = FOUND.containsKey(row) ? FOUND.get(row).told() : Map.of();
      }
      now.add(row.startsWith(" ") && told.containsKey(word) ? row(word, told.get(word)) : row);
    }
    if ("write".equals(System.getProperty("golden"))) {
      Files.write(FILE, now);
    }
    assertEquals(List.copyOf(FOUND.keySet()), titles);
    assertEquals(String.join("\n", before), String.join("\n", now));
  }

  private static String row(String word, String text) {
    return "  %-8s %s".formatted(word, text);
  }

  @ParameterizedTest
  @MethodSource("found")
  void nobody_is_driven_to_the_last_per_cent(GoldenTurns turns) {
    List<SegmentReport> reports = turns.judged().verdict().segments();
    assertTrue(reports.stream().allMatch(report -> report.breath() <= turns.line().mostBreath()));
    assertTrue(reports.stream().allMatch(report -> report.tiredness() <= turns.line().mostTired()));
  }

  @ParameterizedTest
  @MethodSource("found")
  void the_plan_holds_three_per_cent_faster_and_slower_and_for_the_share_asked_for(
      GoldenTurns turns) {
    TempoWindow window = turns.judged().window().orElseThrow();
    assertTrue(window.slowestFactor() <= 1 - RESERVE, window.slowestText().toString());
    assertTrue(window.fastestFactor() >= 1 + RESERVE, window.fastestText().toString());
    assertEquals(turns.outcome().asked().rules(), turns.outcome().brief().rules());
    assertTrue(turns.outcome().result().isBest());
  }

  @ParameterizedTest
  @MethodSource("found")
  void whoever_is_named_and_able_plays_and_of_all_others_it_is_told(GoldenTurns turns) {
    for (Player player : turns.silent()) {
      int index = turns.players().indexOf(player);
      assertEquals(0, Costing.idle(turns.outcome().brief(), index), player.name());
      assertTrue(turns.ease(player).compareTo(Ease.DEMANDING) > 0, player.name());
    }
  }

  @ParameterizedTest
  @MethodSource("found")
  void players_meet_on_a_landing_note_on_a_beat_and_no_slur_is_cut(GoldenTurns turns) {
    Line line = turns.judged().plan().line();
    for (Handoff handoff : turns.judged().plan().handoffs()) {
      int landing = handoff.leaves().last();
      assertEquals(1, handoff.shared());
      assertTrue(line.rank(landing).compareTo(Rank.BEAT) <= 0, line.placeOf(landing).toString());
      assertTrue(!Costing.cutsSlur(line, landing), line.placeOf(landing).toString());
    }
  }
}
