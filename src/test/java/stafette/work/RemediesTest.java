package stafette.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import stafette.ask.Briefing;
import stafette.ask.LineRequest;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.keep.LimitsInForce;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.split.Workbench;
import stafette.words.Refusal;

/** What would help where there is no plan. */
class RemediesTest {
  private static final double HOUR_SECONDS = 3600;

  @Test
  void a_machine_that_is_held_up_now_and_then_finds_the_same() throws Refusal {
    int[] asked = new int[1];
    BooleanSupplier heldUp =
        () -> {
          if (++asked[0] % 2000 == 0) {
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(3));
          }
          return false;
        };
    List<String> once = found(() -> false);
    assertFalse(once.isEmpty());
    assertEquals(once, found(heldUp));
  }

  private static List<String> found(BooleanSupplier stop) throws Refusal {
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    Briefing briefing =
        Briefing.of(asked("lantern-run", "Piano", "5-8", "Clarinet 1, Clarinet 2"), limits);
    SplitLine.SplitOutcome outcome =
        SplitLine.split(briefing, limits, new Workbench(), stop, progress -> {});
    return outcome.remedies().stream()
        .map(remedy -> remedy.sentence() + " " + remedy.plan().plan().segments())
        .toList();
  }

  private static SplitRequest asked(String sample, String part, String bars, String players)
      throws Refusal {
    LineChoice choice =
        new LineChoice(
            part,
            Optional.of(new BarChoice(bars)),
            OptionalInt.of(1),
            Optional.empty(),
            Optional.empty());
    return SplitRequest.usual(
            LineRequest.whole(Path.of("samples", sample + ".musicxml")).with(choice))
        .with(PlayerWish.parse(players), List.of())
        .within(HOUR_SECONDS);
  }
}
