package stafette.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Margin;
import stafette.plan.Plan;
import stafette.split.SmallBriefs;
import stafette.split.SplitResult;
import stafette.split.rotate.RotationOrCheapest;

/** No orchestra is a metronome: each sound and each silence of a plan gets a length of its own. */
class MarginByDrawingTest {
  private static final int DRAWINGS = 20;

  @Property(tries = 150)
  void a_plan_with_a_margin_holds_however_each_span_drifts_within_it(@ForAll long seed) {
    Random random = new Random(seed);
    Brief small = SmallBriefs.of(seed, 14, 4);
    Margin margin = new Margin(1 + random.nextInt(12));
    Brief brief =
        new Brief(
            small.line(),
            small.players().stream().map(player -> player.busyWith(List.of())).toList(),
            small.rules().with(margin));
    Optional<JsonObject> found = found(brief);
    Assume.that(found.isPresent());
    for (int i = 0; i < DRAWINGS; i++) {
      assertEquals(List.of(), brokenIn(drawn(found.get(), margin.percent() / 100, random)));
    }
  }

  /** Eleven strokes a second where eleven and a hair go. */
  @Test
  void a_plan_without_a_margin_breaks_when_spans_drift() {
    Instrument flute = Invented.instrument("flute");
    Brief brief =
        Invented.brief(
            Invented.line(4, 4, 165),
            Invented.player("Flute 1", flute, 11.05, 10, 20, 8),
            Invented.player("Flute 2", flute, 11.05, 10, 20, 8));
    JsonObject found = found(brief).orElseThrow();
    assertTrue(!brokenIn(drawn(found, 0.03, new Random(1))).isEmpty());
    Brief within = brief.with(brief.rules().with(Margin.DEFAULT));
    assertTrue(found(within).isEmpty());
  }

  private static Optional<JsonObject> found(Brief brief) {
    SplitResult result = RotationOrCheapest.of(brief, () -> false);
    Optional<Plan> plan = result.found();
    return plan.map(
        each -> JsonParser.parseString(PlanVerifierTest.text(each, result)).getAsJsonObject());
  }

  private static List<String> brokenIn(PlanTree tree) {
    List<String> broken = new ArrayList<>();
    tree.byPlayer()
        .forEach(
            (player, own) ->
                broken.addAll(new PlanPart(tree, player, own, true, 0, Leeway.NONE).broken()));
    return broken;
  }

  /** The same plan whose sounds and silences are by up to so much longer or shorter. */
  private static PlanTree drawn(JsonObject json, double margin, Random random) {
    PlanTree written = PlanTree.of(json);
    JsonObject copy = json.deepCopy();
    List<JsonObject> strokes =
        PlanTree.objects(copy.getAsJsonObject("line").getAsJsonArray("strokes"));
    double now = 0;
    for (int j = 0; j < strokes.size(); j++) {
      double next = j + 1 < strokes.size() ? written.onset[j + 1] : Double.POSITIVE_INFINITY;
      double sound = (Math.min(written.end[j], next) - written.onset[j]) * drift(margin, random);
      double silence = Math.max(0, next - written.end[j]) * drift(margin, random);
      boolean rests = j + 1 < strokes.size() && written.restsBefore(j + 1);
      strokes.get(j).addProperty("seconds", now);
      strokes.get(j).addProperty("sounds", sound);
      strokes.get(j).addProperty("beatSeconds", rests ? 0 : 1e9);
      now += sound + silence;
    }
    return PlanTree.of(copy);
  }

  private static double drift(double margin, Random random) {
    double most = random.nextInt(3) == 0 ? (random.nextBoolean() ? 1 : -1) : 0;
    return 1 + margin * (most != 0 ? most : 2 * random.nextDouble() - 1);
  }
}
