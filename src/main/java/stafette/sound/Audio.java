package stafette.sound;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;

/** Sampled sound: 44,100 frames a second, 16 bits, stereo. */
public final class Audio {
  /** Frames a second. */
  public static final int FRAMES_PER_SECOND = 44_100;

  static final AudioFormat FORMAT = new AudioFormat(FRAMES_PER_SECOND, 16, 2, true, false);
  private static final int FRAME_BYTES = 4;

  private final byte[] frames;

  private Audio(byte[] frames) {
    this.frames = frames;
  }

  /** So much of a stream as lasts that long; silence after it if the stream ends sooner. */
  static Audio read(AudioInputStream stream, long lengthMicros) throws IOException {
    byte[] frames = new byte[frame(lengthMicros) * FRAME_BYTES];
    stream.readNBytes(frames, 0, frames.length);
    return new Audio(frames);
  }

  private static int frame(long micros) {
    return Math.toIntExact(Math.round(micros * (FRAMES_PER_SECOND / 1e6)));
  }

  /** How long it lasts. */
  public double seconds() {
    return frames.length / (double) FRAME_BYTES / FRAMES_PER_SECOND;
  }

  /**
   * The energy in a stretch of time: the sum of the squares of all samples of both channels, full
   * scale being 1. Energies of sounds that are unrelated add up.
   */
  public double energy(long fromMicros, long toMicros) {
    double sum = 0;
    int to = Math.min(frame(toMicros) * FRAME_BYTES, frames.length);
    for (int i = Math.max(0, frame(fromMicros)) * FRAME_BYTES; i < to; i += 2) {
      sum += sample(i) * sample(i);
    }
    return sum;
  }

  /** The largest sample, full scale being 1. */
  double peak() {
    double peak = 0;
    for (int i = 0; i < frames.length; i += 2) {
      peak = Math.max(peak, Math.abs(sample(i)));
    }
    return peak;
  }

  private double sample(int at) {
    return (short) ((frames[at] & 0xFF) | (frames[at + 1] << 8)) / 32768.0;
  }

  /** As the bytes of a WAV file. */
  public byte[] wav() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (AudioInputStream stream =
        new AudioInputStream(
            new ByteArrayInputStream(frames), FORMAT, frames.length / FRAME_BYTES)) {
      AudioSystem.write(stream, AudioFileFormat.Type.WAVE, out);
    } catch (IOException e) {
      throw new IllegalStateException("memory can't be written to", e);
    }
    return out.toByteArray();
  }
}
