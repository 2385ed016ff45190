package stafette.picture.sheet;

import java.util.Map;
import stafette.limits.Instrument;
import stafette.score.Transposition;
import stafette.words.Sentence;

/** At what pitch the notes of a sheet are to be read. */
final class PitchWords {
  private static final Map<Transposition, Sentence> NAMES =
      Map.ofEntries(
          Map.entry(new Transposition(1, 1), Sentence.of("a minor second")),
          Map.entry(new Transposition(1, 2), Sentence.of("a major second")),
          Map.entry(new Transposition(2, 3), Sentence.of("a minor third")),
          Map.entry(new Transposition(2, 4), Sentence.of("a major third")),
          Map.entry(new Transposition(3, 5), Sentence.of("a perfect fourth")),
          Map.entry(new Transposition(4, 7), Sentence.of("a perfect fifth")),
          Map.entry(new Transposition(5, 8), Sentence.of("a minor sixth")),
          Map.entry(new Transposition(5, 9), Sentence.of("a major sixth")),
          Map.entry(new Transposition(6, 10), Sentence.of("a minor seventh")),
          Map.entry(new Transposition(6, 11), Sentence.of("a major seventh")));

  private PitchWords() {}

  /** "Notes as the clarinet in B-flat reads them: they sound a major second lower." */
  static Sentence of(Instrument instrument) {
    if (instrument.range().isEmpty()) {
      return Sentence.of("Notes stand where the score has them; the instrument has no pitch.");
    }
    Transposition sounding = instrument.transposition();
    if (sounding.equals(Transposition.NONE)) {
      return Sentence.of("Notes as they sound.");
    }
    return sounding.chromatic() < 0
        ? Sentence.of(
            "Notes as the {0} reads them: they sound {1} lower.", instrument, interval(sounding))
        : Sentence.of(
            "Notes as the {0} reads them: they sound {1} higher.", instrument, interval(sounding));
  }

  /** "a major second", "an octave", "an octave and a major second". */
  static Sentence interval(Transposition transposition) {
    int semitones = Math.abs(transposition.chromatic());
    int octaves = semitones / 12;
    Sentence octave = octaves == 1 ? Sentence.of("an octave") : Sentence.of("{0} octaves", octaves);
    if (semitones % 12 == 0 && octaves > 0) {
      return octave;
    }
    int letters = Math.abs(transposition.diatonic()) - 7 * octaves;
    Sentence step = withinOctave(letters, semitones % 12);
    return octaves == 0 ? step : Sentence.of("{0} and {1}", octave, step);
  }

  /** By its usual name if it has one. */
  private static Sentence withinOctave(int letters, int semitones) {
    return NAMES.getOrDefault(
        new Transposition(letters, semitones), Sentence.of("{0} semitones", semitones));
  }
}
