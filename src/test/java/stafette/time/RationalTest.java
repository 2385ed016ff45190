package stafette.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class RationalTest {
  @Property
  void adding_and_taking_away_gives_the_number_back(
      @ForAll int a,
      @ForAll @IntRange(min = 1) int b,
      @ForAll int c,
      @ForAll @IntRange(min = 1) int d) {
    Rational x = Rational.of(a, b);
    Rational y = Rational.of(c, d);
    assertEquals(x, x.plus(y).minus(y));
    assertEquals(x.plus(y), y.plus(x));
  }

  @Property
  void multiplying_and_dividing_gives_the_number_back(
      @ForAll int a, @ForAll @IntRange(min = 1) int b, @ForAll @IntRange(min = 1) int c) {
    Rational x = Rational.of(a, b);
    assertEquals(x, x.times(Rational.of(c, b)).dividedBy(Rational.of(c, b)));
  }

  @Property
  void sums_and_products_are_fractions_in_lowest_terms(
      @ForAll @IntRange(min = -99, max = 99) int a,
      @ForAll @IntRange(min = 1, max = 99) int b,
      @ForAll @IntRange(min = -99, max = 99) int c,
      @ForAll @IntRange(min = 1, max = 99) int d) {
    Rational x = Rational.of(a, b);
    Rational y = Rational.of(c, d);
    assertEquals(Rational.of((long) a * d + (long) c * b, (long) b * d), x.plus(y));
    assertEquals(Rational.of((long) a * c, (long) b * d), x.times(y));
    assertEquals(Rational.of((long) a * c, b), x.times(c));
  }

  @Property
  void what_is_written_is_read_back(@ForAll int a, @ForAll @IntRange(min = 1) int b) {
    assertEquals(Rational.of(a, b), Rational.parse(Rational.of(a, b).toString()));
  }

  @Property
  void the_floor_is_the_largest_whole_number_not_above(
      @ForAll int a, @ForAll @IntRange(min = 1) int b) {
    Rational rest = Rational.of(a, b).modulo(Rational.ONE);
    assertTrue(rest.signum() >= 0 && rest.compareTo(Rational.ONE) < 0);
    assertEquals(Math.floorDiv((long) a, (long) b), Rational.of(a, b).floor().longValueExact());
  }

  @Test
  void decimals_are_read_exactly() {
    assertEquals(Rational.of(185, 2), Rational.parse("92.5"));
    assertEquals(Rational.of(9200), Rational.of(new java.math.BigDecimal("9.2e3")));
  }

  @Test
  void halves_are_rounded_up() {
    assertEquals(2, Rational.of(3, 2).rounded().intValue());
    assertEquals(-1, Rational.of(-3, 2).rounded().intValue());
  }

  @Test
  void numbers_that_would_fill_the_memory_are_refused() {
    assertThrows(NumberFormatException.class, () -> Rational.parse("1e99999999"));
    assertThrows(NumberFormatException.class, () -> Rational.parse("9".repeat(41)));
    assertThrows(NumberFormatException.class, () -> Rational.parse("1/0"));
  }
}
