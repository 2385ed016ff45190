package stafette.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.limits.Instrument;
import stafette.tables.LimitTables;

/** The percussion keys of General MIDI, level 1 (from memory). */
class DrumsTest {
  @ParameterizedTest
  @CsvSource({
    "bass drum, 36",
    "tenor drum, 43",
    "cymbals, 49",
    "suspended cymbal, 51",
    "triangle, 81",
    "tambourine, 54",
    "castanets, 75",
    "wood blocks, 76",
    "temple blocks, 77",
    "tam-tam, 52",
  })
  void an_instrument_without_pitch_has_a_key(String instrument, int key) {
    assertEquals(key, Drums.key(instrument));
  }

  @Test
  void none_of_the_tables_but_the_snare_drum_sounds_like_one() {
    List<String> snares =
        LimitTables.builtIn().catalogue().instruments().stream()
            .filter(one -> one.range().isEmpty())
            .map(Instrument::name)
            .filter(name -> Drums.key(name) == Drums.key("snare drum"))
            .toList();
    assertEquals(List.of("snare drum"), snares);
  }
}
