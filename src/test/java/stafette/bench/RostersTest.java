package stafette.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stafette.check.Judge;
import stafette.plan.Brief;
import stafette.split.Splitter;

class RostersTest {
  static Stream<Brief> small() {
    return Stream.of(
        Rosters.identical(4, 4),
        Rosters.mixed(4, 3),
        Rosters.breathing(4, 3),
        Rosters.atCapacity(4, 2, 0.8),
        Rosters.atCapacity(4, 4, 1.0));
  }

  @ParameterizedTest
  @MethodSource("small")
  void a_few_bars_have_a_plan_that_holds(Brief brief) {
    boolean holds =
        Splitter.split(brief, () -> false)
            .match(best -> Judge.judge(best.plan()).holds(), none -> false, stopped -> false);
    assertTrue(holds);
  }

  @ParameterizedTest
  @MethodSource("small")
  void a_bar_has_twelve_strokes_and_lasts_a_second(Brief brief) {
    assertEquals(48, brief.line().count());
    assertEquals(4_000_000, brief.line().endMicros(47));
  }
}
