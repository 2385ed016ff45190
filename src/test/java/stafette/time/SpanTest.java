package stafette.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SpanTest {
  @Test
  void two_that_share_an_edge_do_not_overlap() {
    assertFalse(quarters(0, 2).overlaps(quarters(2, 3)));
    assertFalse(quarters(2, 3).overlaps(quarters(0, 2)));
    assertTrue(quarters(0, 2).overlaps(quarters(1, 3)));
  }

  @Test
  void its_end_does_not_belong_to_it() {
    assertTrue(quarters(0, 2).contains(Position.START));
    assertFalse(quarters(0, 2).contains(Position.ofQuarters(2, 1)));
  }

  @Property
  void two_overlap_if_one_of_them_contains_the_start_of_the_other(
      @ForAll @IntRange(max = 6) int from,
      @ForAll @IntRange(min = 1, max = 6) int length,
      @ForAll @IntRange(max = 6) int other,
      @ForAll @IntRange(min = 1, max = 6) int otherLength) {
    Span one = quarters(from, from + length);
    Span two = quarters(other, other + otherLength);
    assertEquals(one.contains(two.start()) || two.contains(one.start()), one.overlaps(two));
  }

  private static Span quarters(int from, int to) {
    return new Span(Position.ofQuarters(from, 1), Position.ofQuarters(to, 1));
  }
}
