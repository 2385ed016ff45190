package stafette.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.Judge;
import stafette.limits.Instrument;
import stafette.score.Line;

/** Changes to a plan by hand. */
class PlanEditTest {
  private static final Line LINE = Invented.line(8, 3, 120);

  @Test
  void a_handoff_moves_with_both_its_ends() {
    Plan moved = edited(plan(24, 48, 72), new PlanEdit.Move(1, 46, 50));
    assertEquals(50, moved.turns().get(1).last());
    assertEquals(46, moved.turns().get(2).first());
    assertEquals(24, moved.turns().get(1).first());
  }

  @Test
  void a_gap_is_no_error_but_a_finding() {
    Plan gap = edited(plan(24, 48, 72), new PlanEdit.Move(0, 30, 20));
    assertFalse(Judge.judge(gap).holds());
  }

  @Test
  void turns_never_overtake_one_another() {
    Plan plan = plan(24, 48, 72);
    assertTrue(plan.with(new PlanEdit.Move(0, 24, 48)).isEmpty());
    assertTrue(plan.with(new PlanEdit.Move(1, 24, 48)).isEmpty());
    assertTrue(plan.with(new PlanEdit.Move(0, 0, 24)).isEmpty());
    assertTrue(plan.with(new PlanEdit.Move(2, 60, 95)).isEmpty());
  }

  @Test
  void what_is_not_there_is_not_edited() {
    Plan plan = plan(24, 48, 72);
    assertTrue(plan.with(new PlanEdit.Move(3, 20, 20)).isEmpty());
    assertTrue(plan.with(new PlanEdit.Give(0, 9, 0)).isEmpty());
    assertTrue(plan.with(new PlanEdit.Give(0, 1, 1)).isEmpty());
    assertTrue(plan.with(new PlanEdit.Split(0, 0, 1, 0)).isEmpty());
    assertTrue(plan.with(new PlanEdit.Join(-1)).isEmpty());
    assertTrue(plan.with(new PlanEdit.Pair(0, 1, 0)).isEmpty(), "no hockets in these rules");
  }

  @Test
  void a_turn_given_away_keeps_its_ends() {
    Plan given = edited(plan(24, 48, 72), new PlanEdit.Give(1, 2, 0));
    assertEquals(2, given.segments().get(1).player());
    assertEquals(plan(24, 48, 72).turns().get(1).last(), given.turns().get(1).last());
  }

  @Test
  void a_turn_is_dealt_out_between_two_and_given_back() {
    Brief brief = brief();
    Plan plan = new Plan(brief.with(brief.rules().with(Hocket.BEAT)), plan(24, 48, 72).segments());
    Plan pair = edited(plan, new PlanEdit.Pair(1, 2, 0));
    assertTrue(pair.turns().get(1).isHocket());
    assertEquals(plan, edited(pair, new PlanEdit.Alone(1)));
    assertTrue(pair.with(new PlanEdit.Give(1, 2, 0)).isEmpty(), "nobody plays both shares");
    assertEquals(3, edited(pair, new PlanEdit.Give(2, 3, 0)).segments().get(2).player());
    assertEquals(30, edited(pair, new PlanEdit.Move(0, 28, 30)).turns().get(0).last());
  }

  @Property(tries = 300)
  void splitting_and_joining_again_gives_the_plan_back(@ForAll long seed) {
    Random random = new Random(seed);
    Plan plan = plan(20 + random.nextInt(8), 44 + random.nextInt(8), 70 + random.nextInt(8));
    int turn = random.nextInt(4);
    int stroke = random.nextInt(LINE.count());
    Optional<Plan> split = plan.with(new PlanEdit.Split(turn, stroke, random.nextInt(4), 0));
    boolean inside =
        stroke > plan.turns().get(turn).first() && stroke < plan.turns().get(turn).last();
    if (split.isPresent()) {
      assertTrue(inside);
      assertEquals(plan, edited(split.get(), new PlanEdit.Join(turn)));
    }
  }

  @Property(tries = 300)
  void a_handoff_moved_and_moved_back_gives_the_plan_back(@ForAll long seed) {
    Random random = new Random(seed);
    Plan plan = plan(24, 48, 72);
    int handoff = random.nextInt(3);
    int first = random.nextInt(LINE.count());
    int last = random.nextInt(LINE.count());
    Handoff was = plan.handoffs().get(handoff);
    plan.with(new PlanEdit.Move(handoff, first, last))
        .ifPresent(
            moved ->
                assertEquals(
                    plan,
                    edited(
                        moved,
                        new PlanEdit.Move(handoff, was.enters().first(), was.leaves().last()))));
  }

  @Property(tries = 300)
  void whatever_is_edited_turns_still_begin_and_end_one_after_the_other(@ForAll long seed) {
    Random random = new Random(seed);
    Brief brief = brief();
    Plan plan = new Plan(brief.with(brief.rules().with(Hocket.BEAT)), plan(24, 48, 72).segments());
    for (int i = 0; i < 12; i++) {
      plan = plan.with(anyEdit(random)).orElse(plan);
      List<Turn> turns = plan.turns();
      for (int k = 1; k < turns.size(); k++) {
        assertTrue(turns.get(k).first() > turns.get(k - 1).first());
        assertTrue(turns.get(k).last() > turns.get(k - 1).last());
      }
      Judge.judge(plan);
    }
  }

  private static PlanEdit anyEdit(Random random) {
    int number = random.nextInt(5);
    int stroke = random.nextInt(LINE.count());
    int player = random.nextInt(5);
    return switch (random.nextInt(6)) {
      case 0 -> new PlanEdit.Move(number, stroke - random.nextInt(4), stroke);
      case 1 -> new PlanEdit.Give(number, player, 0);
      case 2 -> new PlanEdit.Split(number, stroke, player, 0);
      case 3 -> new PlanEdit.Join(number);
      case 4 -> new PlanEdit.Pair(number, player, 0);
      default -> new PlanEdit.Alone(number);
    };
  }

  private static Plan edited(Plan plan, PlanEdit edit) {
    return plan.with(edit).orElseThrow(() -> new AssertionError("no place for " + edit));
  }

  /** Four players in turn, each entering on the landing note of the one before. */
  private static Plan plan(int... landings) {
    List<Segment> segments = new ArrayList<>();
    int first = 0;
    for (int i = 0; i <= landings.length; i++) {
      int last = i < landings.length ? landings[i] : LINE.count() - 1;
      segments.add(new Segment(i, 0, first, last));
      first = last;
    }
    return new Plan(brief(), segments);
  }

  private static Brief brief() {
    Instrument flute = Invented.instrument("flute");
    return Invented.brief(
        LINE,
        IntStream.range(0, 4)
            .mapToObj(i -> Invented.player("Flute " + i, flute, 13, 8, 20, 8))
            .toArray(Player[]::new));
  }
}
