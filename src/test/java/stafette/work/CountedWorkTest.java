package stafette.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

/** Work dealt out to several searches, by how often they ask. */
class CountedWorkTest {
  @Test
  void each_search_may_ask_as_often_as_its_share_says_and_what_it_leaves_goes_to_the_others() {
    CountedWork work = new CountedWork(100, () -> false);
    assertEquals(50, asked(work.share(2)));
    BooleanSupplier second = work.share(2);
    for (int i = 0; i < 5; i++) {
      assertFalse(second.getAsBoolean());
    }
    assertEquals(45, asked(work.share(1)));
    assertTrue(work.isOver());
    assertTrue(work.share(1).getAsBoolean());
  }

  @Test
  void a_stop_ends_it_for_good_and_the_share_that_was_dealt_out() {
    AtomicBoolean stop = new AtomicBoolean();
    CountedWork work = new CountedWork(100, stop::get);
    BooleanSupplier share = work.share(2);
    assertFalse(share.getAsBoolean());
    assertFalse(work.isOver());
    stop.set(true);
    assertTrue(share.getAsBoolean());
    stop.set(false);
    assertTrue(work.isOver());
  }

  private static int asked(BooleanSupplier share) {
    int asked = 0;
    while (!share.getAsBoolean()) {
      asked++;
    }
    return asked;
  }
}
