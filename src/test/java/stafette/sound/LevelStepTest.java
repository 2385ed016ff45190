package stafette.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stafette.plan.Plan;

class LevelStepTest {
  @Test
  void probe() throws NoSound {
    for (Timing timing : Timing.values()) {
      for (int shared : new int[] {1, 4, 16}) {
        Plan plan = InventedRelay.of(1600, 2, 32, shared, InventedRelay::scale);
        Performance p = InventedRelay.whole(plan, timing);
        Audio audio = p.audio(Optional.empty());
        Audio alone =
            Comparison.withoutOverlaps(
                    plan, Excerpts.whole(plan), InventedRelay.hearing(plan, timing))
                .audio(Optional.empty());
        List<LevelStep> steps = LevelStep.measured(p, audio, alone);
        System.out.println(
            timing
                + " "
                + shared
                + " "
                + steps.size()
                + " over one "
                + LevelStep.meanDecibel(steps, LevelStep::overOne)
                + " over before "
                + LevelStep.meanDecibel(steps, LevelStep::overBefore));
      }
    }
    assertEquals(1, 1);
  }
}
