package stafette.sound;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * A SoundFont of one square wave, which any of the 128 programs plays; after "SoundFont Technical
 * Specification", version 2.01 (E-mu Systems 1998).
 */
public final class TinyBank {
  private static final int PERIOD = 100;
  private static final int PERIODS = 20;
  private static final int FRAMES = PERIOD * PERIODS;
  private static final int SILENCE = 46;
  private static final int SAMPLE_MODES = 54;
  private static final int INSTRUMENT = 41;
  private static final int SAMPLE_ID = 53;
  private static final int LOOPED = 1;

  /** A4 in this sample sounds 440 Hz at this rate. */
  private static final int RATE = 44_000;

  private TinyBank() {}

  public static byte[] sf2() {
    byte[] info =
        list(
            "INFO",
            chunk("ifil", shorts(2, 1)),
            chunk("isng", name("EMU8000", 8)),
            chunk("INAM", name("Tiny", 6)));
    byte[] sound = list("sdta", chunk("smpl", samples()));
    return chunk("RIFF", joined(ascii("sfbk"), info, sound, articulation()));
  }

  private static byte[] articulation() {
    ByteArrayOutputStream presets = new ByteArrayOutputStream();
    ByteArrayOutputStream zones = new ByteArrayOutputStream();
    ByteArrayOutputStream generators = new ByteArrayOutputStream();
    for (int program = 0; program < 128; program++) {
      presets.writeBytes(joined(name("Square", 20), shorts(program, 0, program), new byte[12]));
      zones.writeBytes(shorts(program, 0));
      generators.writeBytes(shorts(INSTRUMENT, 0));
    }
    presets.writeBytes(joined(name("EOP", 20), shorts(0, 0, 128), new byte[12]));
    zones.writeBytes(shorts(128, 0));
    generators.writeBytes(shorts(0, 0));
    byte[] sample =
        joined(
            name("Square", 20),
            ints(0, FRAMES, 0, FRAMES, RATE),
            new byte[] {69, 0},
            shorts(0, LOOPED));
    return list(
        "pdta",
        chunk("phdr", presets.toByteArray()),
        chunk("pbag", zones.toByteArray()),
        chunk("pmod", new byte[10]),
        chunk("pgen", generators.toByteArray()),
        chunk("inst", joined(name("Square", 20), shorts(0), name("EOI", 20), shorts(1))),
        chunk("ibag", shorts(0, 0, 2, 0)),
        chunk("imod", new byte[10]),
        chunk("igen", shorts(SAMPLE_MODES, LOOPED, SAMPLE_ID, 0, 0, 0)),
        chunk("shdr", joined(sample, name("EOS", 20), new byte[26])));
  }

  private static byte[] samples() {
    int[] wave = new int[FRAMES + SILENCE];
    for (int i = 0; i < FRAMES; i++) {
      wave[i] = i % PERIOD < PERIOD / 2 ? 8000 : -8000;
    }
    return shorts(wave);
  }

  private static byte[] list(String type, byte[]... chunks) {
    return chunk("LIST", joined(ascii(type), joined(chunks)));
  }

  private static byte[] chunk(String id, byte[] data) {
    return joined(ascii(id), ints(data.length), data);
  }

  private static byte[] shorts(int... values) {
    ByteBuffer buffer = ByteBuffer.allocate(2 * values.length).order(ByteOrder.LITTLE_ENDIAN);
    Arrays.stream(values).forEach(value -> buffer.putShort((short) value));
    return buffer.array();
  }

  private static byte[] ints(int... values) {
    ByteBuffer buffer = ByteBuffer.allocate(4 * values.length).order(ByteOrder.LITTLE_ENDIAN);
    Arrays.stream(values).forEach(buffer::putInt);
    return buffer.array();
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static byte[] name(String text, int length) {
    return Arrays.copyOf(ascii(text), length);
  }

  private static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      bytes.writeBytes(part);
    }
    return bytes.toByteArray();
  }
}
