package stafette.sound;

import java.util.OptionalInt;
import stafette.limits.Instrument;
import stafette.score.Drum;
import stafette.score.Pitch;
import stafette.score.Tone;

/**
 * Who sounds: a player, or a part of the rest of the score.
 *
 * @param name of the player or part
 * @param program General MIDI program, 0 to 127
 * @param drum the percussion key, for an instrument without pitch
 * @param pan MIDI pan: 0 left, 64 the middle, 127 right
 * @param background whether it is heard softly behind the line
 */
public record SoundingVoice(
    String name, int program, OptionalInt drum, int pan, boolean background) {
  static final int MIDDLE = 64;
  static final int FULL_VOLUME = 110;
  private static final int BACKGROUND_VOLUME = 55;

  /** MIDI volume: the background is 12 dB softer, as level goes with the square of it. */
  int volume() {
    return background ? BACKGROUND_VOLUME : FULL_VOLUME;
  }

  static SoundingVoice of(String name, Instrument instrument, int pan, boolean background) {
    return new SoundingVoice(
        name,
        instrument.midiProgram() - 1,
        instrument.range().isPresent()
            ? OptionalInt.empty()
            : OptionalInt.of(Drums.key(instrument.name())),
        pan,
        background);
  }

  /** The MIDI key of a tone; empty if this voice has no such tone. */
  OptionalInt key(Tone tone) {
    if (tone instanceof Pitch pitch) {
      return drum.isPresent() || pitch.midi() < 0 || pitch.midi() > 127
          ? OptionalInt.empty()
          : OptionalInt.of(pitch.midi());
    }
    return tone instanceof Drum ? drum : OptionalInt.empty();
  }
}
