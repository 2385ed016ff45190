package stafette.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.score.Part;
import stafette.tables.LimitTables;

/** Who sings. */
class SingersTest {
  private static Part part(String name, String... others) {
    return new Part("P1", name, List.of(others), List.of());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Voice",
        "Soprano",
        "Soprano I",
        "Sopran 2",
        "Mezzo-soprano",
        "Alto",
        "Contralto",
        "Tenor",
        "Tenore",
        "Tenor Solo",
        "Baritone",
        "Bariton",
        "Bass",
        "Basso",
        "Choir",
        "Chor",
        "Coro I.",
        "Gesang",
        "Singstimme.",
        "Eine Singstimme",
        "Canto",
        "Chant",
        "Voix",
        "S.A.T.B. Choir",
        "Vocals"
      })
  void a_part_named_for_a_voice_is_sung_and_no_instrument(String name) throws IOException {
    assertTrue(Singers.sing(part(name)));
    assertEquals(
        Optional.empty(), LimitTables.builtIn().catalogue().of(part(name)).map(Instrument::name));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Violin",
        "Alto Flute",
        "Bass Clarinet",
        "Tenor Trombone",
        "Double Bass",
        "Corno",
        "Celesta",
        "Chorus Pedal",
        "Basset Horn",
        "S",
        "2",
        ""
      })
  void others_are_not(String name) {
    assertFalse(Singers.sing(part(name)));
  }

  @Test
  void the_sound_goes_before_the_name() {
    assertTrue(Singers.sing(part("Rosina", "voice.soprano")));
    assertTrue(Singers.sing(part("Rosina", "Mezzo-soprano")));
    assertFalse(Singers.sing(part("Bass", "pluck.bass.electric")));
  }
}
