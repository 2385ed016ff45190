package stafette.desktop.playing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Who is heard, given who is silenced and who is heard alone. */
class BalanceTest {
  private static final List<String> PLAYERS = List.of("Piper 1", "Piper 2", "Piper 3");

  @Test
  void everybody_is_heard_until_somebody_is_silenced() {
    assertEquals(PLAYERS, heard(Balance.EVERYBODY));
    assertEquals(List.of("Piper 1", "Piper 3"), heard(Balance.EVERYBODY.silencing("Piper 2")));
    assertEquals(PLAYERS, heard(Balance.EVERYBODY.silencing("Piper 2").silencing("Piper 2")));
  }

  @Test
  void several_can_be_heard_without_the_others() {
    Balance two = Balance.EVERYBODY.alone("Piper 1").alone("Piper 3");
    assertEquals(List.of("Piper 1", "Piper 3"), heard(two));
    assertEquals(List.of("Piper 3"), heard(two.alone("Piper 1")));
    assertEquals(PLAYERS, heard(two.alone("Piper 1").alone("Piper 3")));
  }

  @Test
  void of_two_wishes_for_one_player_the_later_holds() {
    Balance silenced = Balance.EVERYBODY.alone("Piper 1").silencing("Piper 1");
    assertEquals(List.of("Piper 2", "Piper 3"), heard(silenced));
    assertEquals(List.of("Piper 1"), heard(silenced.alone("Piper 1")));
  }

  @Test
  void who_was_alone_and_has_left_silences_nobody_and_is_alone_again_when_back() {
    Balance alone = Balance.EVERYBODY.alone("Piper 4").silencing("Piper 1");
    assertEquals(List.of("Piper 2", "Piper 3"), heard(alone.among(PLAYERS)));
    assertEquals(List.of(), heard(alone));
    assertTrue(alone.among(Set.of("Piper 4")).hears("Piper 4"));
  }

  @Property
  void nobody_is_both_silenced_and_alone(
      @ForAll List<@IntRange(min = 0, max = 5) Integer> presses) {
    Balance balance = Balance.EVERYBODY;
    for (int press : presses) {
      String player = PLAYERS.get(press % 3);
      balance = press < 3 ? balance.silencing(player) : balance.alone(player);
      assertFalse(balance.silenced().stream().anyMatch(balance.alone()::contains));
    }
  }

  private static List<String> heard(Balance balance) {
    return PLAYERS.stream().filter(balance::hears).toList();
  }
}
