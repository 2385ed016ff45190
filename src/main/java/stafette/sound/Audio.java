package stafette.sound;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;

/** Rendered sound: stereo, 16 bits, 44,100 frames a second. */
public final class Audio {
  static final int FRAMES_A_SECOND = 44_100;
  private static final int CHANNELS = 2;
  private static final int BYTES_A_FRAME = 2 * CHANNELS;
  static final AudioFormat FORMAT =
      new AudioFormat(FRAMES_A_SECOND, 8 * BYTES_A_FRAME / CHANNELS, CHANNELS, true, false);
  private static final double FULL_SCALE = 32_768;

  private final byte[] samples;

  Audio(byte[] samples) {
    this.samples = samples;
  }

  static int frame(long micros) {
    return Math.toIntExact(Math.round(micros / 1e6 * FRAMES_A_SECOND));
  }

  static int bytes(int frames) {
    return Math.multiplyExact(frames, BYTES_A_FRAME);
  }

  /** How long it is in seconds. */
  public double seconds() {
    return (double) samples.length / BYTES_A_FRAME / FRAMES_A_SECOND;
  }

  /** A WAV file. */
  public byte[] wav() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (AudioInputStream stream =
        new AudioInputStream(
            new ByteArrayInputStream(samples), FORMAT, samples.length / BYTES_A_FRAME)) {
      AudioSystem.write(stream, AudioFileFormat.Type.WAVE, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /**
   * The sum of the squares of all samples between two moments, left and right together, as a share
   * of full scale; what lies outside of the sound counts as silence.
   */
  public double energy(long fromMicros, long toMicros) {
    int from = Math.max(0, bytes(frame(Math.max(0, fromMicros))));
    int to = Math.min(samples.length, bytes(frame(Math.max(0, toMicros))));
    double sum = 0;
    for (int i = from; i + 1 < to; i += 2) {
      sum += sample(i) * sample(i);
    }
    return sum;
  }

  /** The largest sample, full scale being 1. */
  double peak() {
    double peak = 0;
    for (int i = 0; i + 1 < samples.length; i += 2) {
      peak = Math.max(peak, Math.abs(sample(i)));
    }
    return peak;
  }

  private double sample(int at) {
    return (short) ((samples[at] & 0xFF) | samples[at + 1] << 8) / FULL_SCALE;
  }
}
