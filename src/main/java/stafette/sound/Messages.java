package stafette.sound;

import java.nio.charset.StandardCharsets;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.ShortMessage;

/** Events of a Standard MIDI File, version 1.0 (MIDI Manufacturers Association 1996). */
final class Messages {
  private static final int TRACK_NAME = 0x03;
  private static final int END_OF_TRACK = 0x2F;
  private static final int TEMPO = 0x51;
  private static final int TIME_SIGNATURE = 0x58;
  private static final int CLOCKS_A_CLICK = 24;
  private static final int THIRTY_SECONDS_A_QUARTER = 8;

  private Messages() {}

  static MidiEvent tempo(long microsPerQuarter, long tick) {
    return meta(
        TEMPO,
        tick,
        (byte) (microsPerQuarter >> 16),
        (byte) (microsPerQuarter >> 8),
        (byte) microsPerQuarter);
  }

  /**
   * @param below a power of two
   */
  static MidiEvent timeSignature(int above, int below, long tick) {
    return meta(
        TIME_SIGNATURE,
        tick,
        (byte) above,
        (byte) Integer.numberOfTrailingZeros(below),
        (byte) CLOCKS_A_CLICK,
        (byte) THIRTY_SECONDS_A_QUARTER);
  }

  static MidiEvent name(String name) {
    return meta(TRACK_NAME, 0, name.getBytes(StandardCharsets.UTF_8));
  }

  static MidiEvent end(long tick) {
    return meta(END_OF_TRACK, tick);
  }

  static MidiEvent program(int channel, int program) {
    return channel(ShortMessage.PROGRAM_CHANGE, channel, program, 0, 0);
  }

  static MidiEvent control(int channel, int controller, int value) {
    return channel(ShortMessage.CONTROL_CHANGE, channel, controller, value, 0);
  }

  static MidiEvent on(int channel, int key, int velocity, long tick) {
    return channel(ShortMessage.NOTE_ON, channel, key, velocity, tick);
  }

  static MidiEvent off(int channel, int key, long tick) {
    return channel(ShortMessage.NOTE_OFF, channel, key, 0, tick);
  }

  private static MidiEvent channel(int command, int channel, int first, int second, long tick) {
    try {
      return new MidiEvent(new ShortMessage(command, channel, first, second), tick);
    } catch (InvalidMidiDataException e) {
      throw new IllegalArgumentException(
          "no message: " + command + " " + channel + " " + first + " " + second, e);
    }
  }

  private static MidiEvent meta(int type, long tick, byte... data) {
    try {
      return new MidiEvent(new MetaMessage(type, data, data.length), tick);
    } catch (InvalidMidiDataException e) {
      throw new IllegalArgumentException("no meta message: " + type, e);
    }
  }
}
