package stafette.desktop.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Figures as people type them. */
class TypedTest {
  @Test
  void comma_and_point_both_part_the_decimals() {
    assertEquals(Optional.of(9.5), Typed.figure(" 9,5 "));
    assertEquals(Optional.of(-2.25), Typed.figure("-2.25"));
    assertEquals(Optional.empty(), Typed.figure("fast"));
    assertEquals(Optional.empty(), Typed.figure(""));
  }

  @Test
  void what_is_shown_can_be_typed_again_in_each_language() {
    for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
      assertEquals(Optional.of(1234.5), Typed.figure(Typed.text(1234.5, locale)));
    }
  }
}
