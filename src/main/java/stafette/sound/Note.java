package stafette.sound;

/**
 * One sounding note.
 *
 * @param voice the number of its voice in the performance
 * @param key MIDI key, 0 to 127
 * @param velocity MIDI velocity, 1 to 127
 * @param fromMicros when it begins, since the start of the performance
 * @param toMicros when it ends, later than it begins
 */
public record Note(int voice, int key, int velocity, long fromMicros, long toMicros) {
  /**
   * @throws IllegalArgumentException if a figure is none of MIDI's, or it ends before it begins
   */
  public Note {
    if (key < 0 || key > 127 || velocity < 1 || velocity > 127 || toMicros <= fromMicros) {
      throw new IllegalArgumentException(
          "no note: key " + key + ", velocity " + velocity + ", " + fromMicros + "-" + toMicros);
    }
  }

  Note later(long micros) {
    return new Note(voice, key, velocity, fromMicros + micros, toMicros + micros);
  }

  Note until(long micros) {
    return new Note(voice, key, velocity, fromMicros, micros);
  }

  Note softerBy(double factor) {
    return new Note(
        voice, key, Math.max(1, (int) Math.round(velocity * factor)), fromMicros, toMicros);
  }
}
