package stafette.picture.sheet;

import java.util.List;
import stafette.limits.Instrument;
import stafette.score.Transposition;

/** At what pitch the notes of a sheet are to be read. */
final class PitchWords {
  private static final List<String> STEPS =
      List.of("unison", "second", "third", "fourth", "fifth", "sixth", "seventh");

  /** Semitones of the major or perfect interval over so many letters. */
  private static final List<Integer> NATURAL = List.of(0, 2, 4, 5, 7, 9, 11);

  private PitchWords() {}

  /** "Notes as the clarinet in B-flat reads them: they sound a major second lower." */
  static String of(Instrument instrument) {
    if (instrument.range().isEmpty()) {
      return "Notes stand where the score has them; the instrument has no pitch.";
    }
    Transposition sounding = instrument.transposition();
    return sounding.equals(Transposition.NONE)
        ? "Notes as they sound."
        : "Notes as the "
            + instrument.name()
            + " reads them: they sound "
            + interval(sounding)
            + (sounding.chromatic() < 0 ? " lower." : " higher.");
  }

  /** "a major second", "an octave", "an octave and a major second". */
  static String interval(Transposition transposition) {
    int letters = Math.abs(transposition.diatonic());
    int semitones = Math.abs(transposition.chromatic());
    int octaves = letters / 7;
    String octave = octaves == 0 ? "" : octaves == 1 ? "an octave" : octaves + " octaves";
    if (letters % 7 == 0 && semitones == 12 * octaves) {
      return octave;
    }
    String step = "a" + quality(letters % 7, semitones - 12 * octaves) + STEPS.get(letters % 7);
    return octave.isEmpty() ? step : octave + " and " + step;
  }

  private static String quality(int letters, int semitones) {
    boolean perfect = letters == 0 || letters == 3 || letters == 4;
    int beside = semitones - NATURAL.get(letters);
    return switch (beside) {
      case 0 -> perfect ? " perfect " : " major ";
      case -1 -> perfect ? " diminished " : " minor ";
      case 1 -> "n augmented ";
      default -> " diminished ";
    };
  }
}
