package stafette.sound;

/**
 * One sound.
 *
 * @param chair who makes it, numbered within its performance
 * @param startMicros when, on the performance's clock
 * @param endMicros when it ends, later than it starts
 * @param key the MIDI number of its pitch; negative for a drum
 * @param velocity how loud, 1 to 127
 */
public record Note(int chair, long startMicros, long endMicros, int key, int velocity) {
  Note later(long micros) {
    return new Note(chair, startMicros + micros, endMicros + micros, key, velocity);
  }

  Note of(int other) {
    return new Note(other, startMicros, endMicros, key, velocity);
  }

  Note until(long micros) {
    return new Note(chair, startMicros, Math.max(startMicros + 1, micros), key, velocity);
  }
}
