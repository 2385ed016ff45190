package stafette.score;

import stafette.words.Sentence;

/**
 * A pitch with its spelling.
 *
 * @param alter in semitones, 1 for a sharp
 * @param octave 4 begins with middle C
 */
public record Pitch(Step step, int alter, int octave) implements Tone, Comparable<Pitch> {
  private static final String[] ALTERS = {"bb", "b", "", "#", "x"};

  /** The MIDI number, 60 for middle C. */
  public int midi() {
    return 12 * (octave + 1) + step.semitones() + alter;
  }

  @Override
  public int key() {
    return midi();
  }

  /** Letters counted from C0: 28 for any C4. */
  public int diatonic() {
    return 7 * octave + step.ordinal();
  }

  /** The pitch so many letters and semitones higher. */
  public Pitch movedBy(Transposition interval) {
    int letters = diatonic() + interval.diatonic();
    Step newStep = Step.values()[Math.floorMod(letters, 7)];
    int newOctave = Math.floorDiv(letters, 7);
    int natural = 12 * (newOctave + 1) + newStep.semitones();
    return new Pitch(newStep, midi() + interval.chromatic() - natural, newOctave);
  }

  @Override
  public int compareTo(Pitch other) {
    int byMidi = Integer.compare(midi(), other.midi());
    return byMidi != 0 ? byMidi : Integer.compare(diatonic(), other.diatonic());
  }

  @Override
  public Sentence inWords() {
    String sign =
        Math.abs(alter) <= 2 ? ALTERS[alter + 2] : (alter > 0 ? "#" : "b").repeat(Math.abs(alter));
    return Sentence.of("{0}{1}", Sentence.name(step + sign), octave);
  }

  /** "F#5", "Bb3". */
  @Override
  public String toString() {
    return inWords().toString();
  }
}
