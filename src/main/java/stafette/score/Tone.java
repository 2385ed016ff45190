package stafette.score;

import stafette.words.Sayable;

/** What a stroke makes sound: a pitch, or an instrument without one. */
public sealed interface Tone extends Sayable permits Pitch, Drum {
  /**
   * Equal keys are the same string, key, bar or drum: the MIDI number of a pitch, a negative number
   * for a drum.
   */
  int key();
}
