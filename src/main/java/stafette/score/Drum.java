package stafette.score;

import stafette.words.Sentence;

/**
 * An instrument without pitch, by its place on the staff.
 *
 * @param displayStep the letter at which it is written
 * @param displayOctave the octave at which it is written
 * @param instrument the id of the score's instrument, empty if the part has only one
 */
public record Drum(Step displayStep, int displayOctave, String instrument) implements Tone {
  @Override
  public int key() {
    return -1 - (7 * displayOctave + displayStep.ordinal());
  }

  @Override
  public Sentence inWords() {
    return Sentence.of("a drum");
  }
}
