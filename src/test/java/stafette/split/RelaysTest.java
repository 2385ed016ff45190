package stafette.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.plan.Brief;
import stafette.plan.Hocket;
import stafette.score.Line;

/** Hockets, locks and several relays: the search finds what trying every plan finds. */
class RelaysTest {
  @Property(tries = 150, maxDiscardRatio = 100)
  void hockets_are_exact(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 6, 3);
    compare(brief.with(brief.rules().with(hocket(new Random(seed)))));
  }

  @Property(tries = 250, maxDiscardRatio = 100)
  void locks_are_exact(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 7, 3);
    compare(brief.with(brief.rules().with(SmallBriefs.locks(brief, new Random(seed)))));
  }

  @Property(tries = 60, maxDiscardRatio = 100)
  void always_two_on_is_exact(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 5, 4);
    compare(doubled(brief));
  }

  @Property(tries = 50, maxDiscardRatio = 100)
  void two_lines_at_once_are_exact(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 6, 4);
    Line line = brief.line();
    Random random = new Random(seed);
    List<Integer> kept =
        IntStream.range(0, line.count()).filter(j -> random.nextInt(3) > 0).boxed().toList();
    Assume.that(!kept.isEmpty());
    List<Line> lines = List.of(line, line.only(kept, false));
    compare(new Brief(lines, brief.players(), brief.rules()));
  }

  @Property(tries = 50, maxDiscardRatio = 100)
  void all_of_them_together_are_exact(@ForAll long seed) {
    Random random = new Random(seed);
    Brief brief = doubled(SmallBriefs.of(seed, 5, 4));
    brief = brief.with(brief.rules().with(hocket(random)));
    compare(brief.with(brief.rules().with(SmallBriefs.locks(brief, random))));
  }

  @Property(tries = 150, maxDiscardRatio = 100)
  void locks_never_make_a_plan_cheaper_or_possible(@ForAll long seed) {
    Brief brief = SmallBriefs.of(seed, 9, 4);
    Brief locked = brief.with(brief.rules().with(SmallBriefs.locks(brief, new Random(seed))));
    int free = cost(brief);
    int kept = cost(locked);
    assertTrue(kept < 0 || (free >= 0 && free <= kept), () -> brief + " " + locked.rules().locks());
  }

  private static Brief doubled(Brief brief) {
    return new Brief(List.of(brief.line(), brief.line()), brief.players(), brief.rules());
  }

  private static Hocket hocket(Random random) {
    return Hocket.values()[1 + random.nextInt(3)];
  }

  private static void compare(Brief brief) {
    OptionalInt expected = AllRelays.cheapest(brief);
    Assume.that(expected.isPresent());
    assertEquals(expected.getAsInt(), cost(brief), brief::toString);
  }

  private static int cost(Brief brief) {
    return Splitter.split(brief, () -> false)
        .match(
            best -> {
              Verdict verdict = Judge.judge(best.plan());
              assertTrue(verdict.holds(), () -> verdict.findings().toString());
              assertEquals(best.cost(), verdict.cost().total());
              return best.cost();
            },
            none -> -1,
            stopped -> -2);
  }
}
