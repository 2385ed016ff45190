package stafette.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import stafette.check.Finding;
import stafette.check.Judge;
import stafette.check.JudgedPlan;
import stafette.check.RandomPlans;
import stafette.check.Verdict;
import stafette.limits.Act;
import stafette.plan.Brief;
import stafette.plan.Margin;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Tremolo;
import stafette.split.SmallBriefs;
import stafette.split.SplitResult;
import stafette.split.rotate.RotationOrCheapest;

/** Plans verified from their text alone, by another program than the one that made them. */
class PlanVerifierTest {
  private static final ScoreFile SCORE =
      ScoreFile.of("invented.musicxml", "0".repeat(64), Tremolo.AS_WRITTEN, false);

  @Property(tries = 300)
  void whatever_is_found_holds_and_costs_what_is_told(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 14, 4);
    SplitResult result = RotationOrCheapest.of(brief, () -> false);
    Assume.that(result.found().isPresent());
    PlanVerifier verifier = PlanVerifier.of(text(result.found().get(), result));
    assertEquals(List.of(), verifier.wrong());
    assertTrue(verifier.isCheapestOrRotation());
  }

  @Property(tries = 500)
  void the_judge_lets_pass_what_the_text_lets_pass(@ForAll long seed) {
    compare(RandomPlans.any(seed));
  }

  @Property(tries = 700)
  void within_a_margin_the_judge_lets_pass_what_the_text_lets_pass(@ForAll long seed) {
    Random random = new Random(seed);
    Plan plan = random.nextBoolean() ? RandomPlans.any(seed) : anyPlan(seed, random);
    Margin margin = new Margin(random.nextInt(2500) / 100.0);
    compare(new Plan(plan.brief().with(plan.brief().rules().with(margin)), plan.segments()));
  }

  /** Stretches in shape but for overlaps of any length, by anybody. */
  private static Plan anyPlan(long seed, Random random) {
    Brief brief = SmallBriefs.of(seed, 12, 4);
    Assume.that(brief.players().stream().allMatch(player -> !player.ways().isEmpty()));
    List<Segment> segments = new ArrayList<>();
    int last = -1;
    int player = random.nextInt(brief.players().size());
    while (last < brief.line().count() - 1) {
      boolean silent = brief.line().restsBefore(last + 1);
      int first = last < 0 || silent ? last + 1 : last;
      last = Math.min(brief.line().count() - 1, last + 1 + random.nextInt(8));
      segments.add(new Segment(player, 0, first, last));
      player = (player + 1 + random.nextInt(brief.players().size() - 1)) % brief.players().size();
    }
    return new Plan(brief, segments);
  }

  private static void compare(Plan plan) {
    Assume.that(
        plan.brief().players().stream()
            .flatMap(player -> player.skills().stream())
            .noneMatch(skill -> skill.technique().act() == Act.STRING));
    Margin margin = plan.brief().rules().margin();
    Verdict verdict = Judge.judge(plan);
    PlanVerifier verifier = PlanVerifier.of(text(plan, new SplitResult.Best(plan, 0)));
    List<String> written = verifier.broken(Leeway.NONE, 0);
    assertEquals(verdict.holds(), written.isEmpty(), () -> verdict.findings() + " " + written);
    List<String> surely = verifier.broken(Leeway.FOR, margin.percent() / 100);
    List<String> perhaps = verifier.broken(Leeway.AGAINST, margin.percent() / 100);
    boolean keeps = Judge.holdsWithinMargin(plan);
    if (perhaps.isEmpty()) {
      assertTrue(keeps, () -> within(plan).toString());
    } else if (!surely.isEmpty()) {
      assertFalse(keeps, surely::toString);
    }
    assertEquals(verdict.holds() && keeps, verdict.keepsMargin());
  }

  private static List<Finding> within(Plan plan) {
    return Judge.judge(new Plan(plan.brief().withinMargin(), plan.segments())).findings();
  }

  static String text(Plan plan, SplitResult result) {
    return PlanJson.of(
            "Stafette 1",
            SCORE,
            Optional.empty(),
            plan.brief(),
            plan.brief(),
            result,
            Optional.of(new JudgedPlan(plan, Judge.judge(plan), Optional.empty())),
            0,
            Map.of(),
            Set.of(),
            List.of(),
            List.of(),
            Optional.empty())
        .text();
  }
}
