package stafette.score;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import stafette.time.Position;

class KeysTest {
  private static final Keys TWO =
      new Keys(new TreeMap<>(Map.of(Position.ofQuarters(4, 1), 2, Position.ofQuarters(12, 1), -3)));

  @Test
  void a_key_holds_until_the_next_and_before_the_first_there_is_none() {
    assertEquals(0, TWO.at(Position.START));
    assertEquals(2, TWO.at(Position.ofQuarters(4, 1)));
    assertEquals(2, TWO.at(Position.ofQuarters(11, 1)));
    assertEquals(-3, TWO.at(Position.ofQuarters(12, 1)));
  }

  /** Any primer of theory (from memory): in B flat two sharps more, in F one. */
  @Test
  void a_transposing_part_has_its_keys_a_few_fifths_away() {
    Keys clarinet = TWO.writtenBy(new Transposition(-1, -2));
    assertEquals(4, clarinet.at(Position.ofQuarters(4, 1)));
    assertEquals(-1, clarinet.at(Position.ofQuarters(12, 1)));
    assertEquals(3, TWO.writtenBy(new Transposition(-4, -7)).at(Position.ofQuarters(4, 1)));
    assertEquals(TWO, TWO.writtenBy(Transposition.NONE));
  }
}
