package stafette.work;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

/** Time dealt out to several searches. */
class AllotmentTest {
  @Test
  void a_stop_ends_it_and_the_shares_that_were_dealt_out() {
    AtomicBoolean stop = new AtomicBoolean();
    Allotment hours = Allotment.ofSeconds(10_000, stop::get);
    BooleanSupplier share = hours.share(2);
    assertFalse(hours.isOver());
    assertFalse(share.getAsBoolean());
    stop.set(true);
    assertTrue(hours.isOver());
    assertTrue(share.getAsBoolean());
  }
}
