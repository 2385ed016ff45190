package stafette.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.keep.LimitsInForce;
import stafette.words.Refusal;

/** Several players in one name are never taken for one. */
class SeveralPlayersTest {
  private static List<String> in(String name) throws Refusal {
    return SeveralPlayers.in(name, LimitsInForce.load(Optional.empty()).catalogue());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '§',
      value = {
        "Flute 1 / Flute 2§Flute 1, Flute 2",
        "Flute 1+Flute 2§Flute 1, Flute 2",
        "Flute 1 & flute 2§Flute 1, flute 2",
        "Flute 1 and Flute 2§Flute 1, Flute 2",
        "Klarinette 1 und Klarinette 2§Klarinette 1, Klarinette 2",
        "Flute 1 Flute 2§Flute 1, Flute 2",
        "Horns 1/3§Horns 1, Horns 3",
      })
  void the_same_instrument_twice_is_two_players(String name, String players) throws Refusal {
    assertEquals(players, String.join(", ", in(name)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Flute 1",
        "Flute / Piccolo",
        "Clarinet 2 in B-flat",
        "Flute & Alto Flute",
        "Violin 1, desk 3",
        "Anna and Bert",
        "Bass drum",
        "/",
      })
  void one_player_is_one(String name) throws Refusal {
    assertEquals(List.of(), in(name));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Flute 1; Flute 2", "Flute 1 | Flute 2", "Flute 1\nFlute 2"})
  void what_stands_between_players_is_a_comma(String players) {
    Refusal refusal = assertThrows(Refusal.class, () -> PlayerWish.parse(players));
    assertTrue(String.valueOf(refusal.getMessage()).contains("write \"Flute 1, Flute 2\""));
    assertEquals(Refusal.Cause.WRONG_USE, refusal.cause());
  }

  @Test
  void commas_do_as_before() throws Refusal {
    assertEquals(2, PlayerWish.parse("Flute 1,Anna = bassoon,").size());
  }
}
