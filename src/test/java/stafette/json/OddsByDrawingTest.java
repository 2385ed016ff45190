package stafette.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.Invented;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.limits.Assurance;
import stafette.limits.Breath;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.limits.Skill;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.split.SplitResult;

/**
 * Odds by drawing groups of players from the population: each player's figures lie the same number
 * of standard deviations from their means. How good a player must be for a part is found by
 * bisection with the rules as {@link PlanPart} simulates them, from the text of the plan: nothing
 * is the program's own but the figures of the 84 of 100, and these are checked against their means.
 */
class OddsByDrawingTest {
  private static final int GROUPS = 100_000;

  /** The normal quantile of 16 of 100. */
  private static final double Z84 = -0.994457883209753;

  private static final double MEAN = 12;
  private static final double DEVIATION = 1.5;
  private static final double BREATH_SPREAD = 0.15;

  /** What figures in thousandths may make. */
  private static final double ROUNDED = 5e-4;

  @ParameterizedTest
  @CsvSource({
    "150, 3, 12, 40",
    "160, 3, 12, 100",
    "160, 2, 24, 100",
    "165, 3, 16, 2.2",
    "170, 2, 8, 1.3",
    "156, 4, 48, 3.6"
  })
  void odds_are_those_of_groups_drawn_at_random(
      int tempo, int players, int strokes, double capacity) {
    Plan plan = plan(tempo, players, strokes, capacity);
    Verdict verdict = Judge.judge(plan);
    JsonObject json =
        JsonParser.parseString(PlanVerifierTest.text(plan, new SplitResult.Best(plan, 0)))
            .getAsJsonObject();
    double[] needed = needed(json);
    Random random = new Random(tempo);
    int all = 0;
    int allFaster = 0;
    int[] each = new int[needed.length];
    double[] faster = needed(atTempo(json, 1.05));
    for (int group = 0; group < GROUPS; group++) {
      boolean manage = true;
      boolean manageFaster = true;
      for (int player = 0; player < needed.length; player++) {
        double z = random.nextGaussian();
        each[player] += z >= needed[player] ? 1 : 0;
        manage &= z >= needed[player];
        manageFaster &= z >= faster[player];
      }
      all += manage ? 1 : 0;
      allFaster += manageFaster ? 1 : 0;
    }
    int hardest = IntStream.of(each).min().orElseThrow();
    close(hardest, verdict.hardest());
    close(all, verdict.odds());
    close(Math.min(all, allFaster), verdict.oddsAtHeadroom());
    assertTrue(verdict.odds() > 0.01 && verdict.odds() < 0.995, "a plan worth drawing for");
  }

  /** Within four standard errors. */
  private static void close(int drawn, double odds) {
    double error = Math.sqrt(odds * (1 - odds) / GROUPS);
    assertEquals(odds, (double) drawn / GROUPS, 4 * error + ROUNDED);
  }

  /** How good each player must be, in standard deviations from the mean. */
  private static double[] needed(JsonObject json) {
    PlanTree tree = PlanTree.of(json);
    List<Double> needed = new ArrayList<>();
    for (int player : tree.byPlayer().keySet()) {
      double fails = -6;
      double manages = 6;
      for (int step = 0; step < 40; step++) {
        double middle = (fails + manages) / 2;
        if (manages(json, player, middle)) {
          manages = middle;
        } else {
          fails = middle;
        }
      }
      needed.add(manages);
    }
    return needed.stream().mapToDouble(z -> z).toArray();
  }

  private static boolean manages(JsonObject json, int player, double z) {
    double rates = (MEAN + z * DEVIATION) / (MEAN + Z84 * DEVIATION);
    double air = (1 + BREATH_SPREAD * z) / (1 + BREATH_SPREAD * Z84);
    JsonObject copy = json.deepCopy();
    JsonObject somebody = copy.getAsJsonArray("players").get(player).getAsJsonObject();
    JsonObject figures = somebody.getAsJsonObject("ways").getAsJsonObject("plain");
    change(figures, "needs", seconds -> seconds / rates);
    change(figures, "sustained", rate -> rate * rates);
    change(figures, "stamina", strokes -> strokes * rates);
    JsonObject lungs = somebody.getAsJsonObject("breath");
    double capacity = lungs.get("capacity").getAsDouble();
    lungs.addProperty("capacity", capacity * air);
    PlanTree tree = PlanTree.of(copy);
    return new PlanPart(
            tree, player, tree.byPlayer().getOrDefault(player, List.of()), true, 0, Leeway.NONE)
        .broken().stream().allMatch("rest"::equals);
  }

  private static void change(JsonObject figures, String member, UnaryOperator<Double> how) {
    JsonArray changed = new JsonArray();
    for (JsonElement each : figures.getAsJsonArray(member)) {
      changed.add(
          each.isJsonNull() ? JsonNull.INSTANCE : new JsonPrimitive(how.apply(each.getAsDouble())));
    }
    figures.add(member, changed);
  }

  private static JsonObject atTempo(JsonObject json, double factor) {
    JsonObject copy = json.deepCopy();
    for (JsonObject stroke :
        PlanTree.objects(copy.getAsJsonObject("line").getAsJsonArray("strokes"))) {
      for (String member : List.of("seconds", "sounds", "beatSeconds")) {
        stroke.addProperty(member, stroke.get(member).getAsDouble() / factor);
      }
    }
    return copy;
  }

  /** Turns of so many strokes, round the players. */
  private static Plan plan(int tempo, int count, int strokes, double capacity) {
    Line line = Invented.line(8, 4, tempo);
    Instrument pipe =
        Invented.instrument(
            "pipe",
            new Range(60, 96),
            Optional.of(new Breath(capacity, 0.3, 1.5, BREATH_SPREAD, Map.of())));
    Skill skill =
        new Skill(pipe.techniques().get(0), pipe.techniques().get(0).limit().at(Assurance.DEFAULT));
    assertEquals(MEAN + Z84 * DEVIATION, skill.capability().peakPerSecond(), 1e-3);
    List<Player> players = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      players.add(new Player("Pipe " + i, pipe, Optional.empty(), List.of(skill), List.of()));
    }
    List<Segment> segments = new ArrayList<>();
    for (int first = 0; first < line.count() - 1; first += strokes) {
      int last = Math.min(line.count() - 1, first + strokes);
      segments.add(new Segment(segments.size() % count, 0, first, last));
    }
    return new Plan(new Brief(line, players, Invented.rules()), segments);
  }
}
