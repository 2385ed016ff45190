package stafette.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.alone.Ease;
import stafette.check.alone.LineTrial;
import stafette.limits.Assurance;
import stafette.limits.Capability;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;

/** What is true of every verdict. */
class JudgeTest {
  private static final Instrument PIPE = Invented.instrument("pipe");

  /**
   * Without given passages: one that is impossible in itself is excused, and no longer so when
   * looser limits make it possible.
   */
  @Property(tries = 300)
  void many_plans_are_judged_as_one_is(@ForAll long seed) {
    Plan plan = RandomPlans.any(seed);
    assertEquals(Judge.judge(plan).holds(), new ManyPlans(plan.brief()).hold(plan));
  }

  @Property(tries = 300)
  void looser_limits_never_add_findings(
      @ForAll long seed, @ForAll @DoubleRange(min = 1, max = 2) double factor) {
    Plan plan = withPlayers(RandomPlans.any(seed), 1);
    Plan looser = withPlayers(plan, factor);
    assertTrue(rulesBroken(plan).containsAll(rulesBroken(looser)), rulesBroken(looser).toString());
  }

  private static Set<String> rulesBroken(Plan plan) {
    return Judge.judge(plan).findings().stream()
        .map(finding -> finding.kind() + " " + finding.place().part())
        .collect(Collectors.toSet());
  }

  private static Plan withPlayers(Plan plan, double factor) {
    List<Player> players =
        plan.brief().players().stream()
            .map(
                player ->
                    new Player(
                        player.name(),
                        player.instrument(),
                        player.part(),
                        player.skills().stream().map(skill -> looser(skill, factor)).toList(),
                        List.of()))
            .toList();
    return new Plan(new Brief(plan.line(), players, plan.brief().rules()), plan.segments());
  }

  private static Skill looser(Skill skill, double factor) {
    Capability before = skill.capability();
    return new Skill(
        skill.technique(),
        new Capability(
            (int) Math.ceil(before.peakMilli() * factor),
            (int) Math.ceil(before.sustainedMilli() * factor),
            (int) Math.ceil(before.staminaMilli() * factor),
            (int) Math.floor(before.recoveryMillis() / factor),
            before.movingMilli()));
  }

  @Property(tries = 100)
  void without_winds_a_faster_tempo_never_makes_a_line_easier(
      @ForAll long seed, @ForAll @DoubleRange(min = 1.01, max = 3) double factor) {
    Line line = RandomPlans.any(seed).line();
    Line faster = line.at(line.tempo().times(Wording.exactly(factor)));
    assertTrue(ease(faster).compareTo(ease(line)) >= 0);
  }

  private static Ease ease(Line line) {
    return LineTrial.of(line, PIPE, Assurance.DEFAULT, PIPE.techniques()).ease();
  }

  /** strokes a second = metronome mark × notes to a beat ÷ 60, by the meaning of the mark. */
  @Property
  void a_rate_is_the_mark_times_the_notes_to_a_beat_by_60(
      @ForAll @IntRange(min = 30, max = 200) int mark,
      @ForAll @IntRange(min = 1, max = 8) int perBeat) {
    Line line = Invented.line(2, perBeat, mark);
    Plan plan =
        new Plan(
            Invented.brief(line, Invented.player("One", PIPE, 99, 90, 9, 8)),
            List.of(new Segment(0, 0, 0, line.count() - 1)));
    double rate = Judge.judge(plan).segments().get(0).ratePerSecond();
    assertEquals(mark * perBeat / 60.0, rate, rate * 1e-4);
  }

  /** Sixteen gaps at 8 a second spend two of twenty strokes; two seconds rest 2/80 away. */
  @Test
  void reports_carry_tiredness_over_from_segment_to_segment() {
    Line line = Invented.line(4, 4, 120);
    Player one = Invented.player("One", PIPE, 10, 7, 20, 80);
    Player two = Invented.player("Two", PIPE, 10, 7, 20, 80);
    List<Segment> segments =
        List.of(
            new Segment(0, 0, 0, 16),
            new Segment(1, 0, 16, 32),
            new Segment(0, 0, 32, 48),
            new Segment(1, 0, 48, 63));
    List<SegmentReport> reports =
        Judge.judge(new Plan(Invented.brief(line, one, two), segments)).segments();
    assertEquals(segments, reports.stream().map(SegmentReport::segment).toList());
    assertEquals(0.1, reports.get(0).tiredness(), 1e-9);
    double restedTo = 0.1 - 2.0 / 80;
    assertEquals(restedTo + 0.1, reports.get(2).tiredness(), 1e-9);
    assertEquals(0.8, reports.get(2).use(), 1e-9);
    assertEquals(0.8, reports.get(2).strain(), 1e-9);
  }

  @Property(tries = 200)
  void the_more_manage_the_easier(@ForAll @DoubleRange(min = 0, max = 100) double share) {
    Ease ease = Ease.of(share);
    assertEquals(share >= 16, ease.plays());
    assertTrue(Ease.of(share + 0.1).compareTo(ease) <= 0);
  }
}
