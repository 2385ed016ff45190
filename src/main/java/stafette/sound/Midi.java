package stafette.sound;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;

/**
 * A performance as a Standard MIDI File of type 1: a track for the tempi and one for each chair,
 * each with a channel of its own as long as there are channels; those beyond share, percussion has
 * channel 10 (General MIDI System Level 1).
 */
public final class Midi {
  private static final int TICKS_A_QUARTER = 1920;
  private static final int PERCUSSION = 9;
  private static final int CHANNELS = 16;
  private static final int WOODBLOCK = 76;
  private static final int VOLUME = 7;
  private static final int PAN = 10;
  private static final int REVERBERATION = 91;
  private static final int CHORUS = 93;
  private static final int UNBENT = 8192;
  private static final double CENTS_OF_FULL_BEND = 200;
  private static final int SET_TEMPO = 0x51;
  private static final int TRACK_NAME = 0x03;
  private static final int MARKER = 0x06;

  private final Performance performance;
  private final Ticks ticks;

  private Midi(Performance performance) {
    this.performance = performance;
    this.ticks = new Ticks(performance.tempi(), TICKS_A_QUARTER);
  }

  /** As a sequence, for a player or a file. */
  public static Sequence sequence(Performance performance) {
    try {
      return new Midi(performance).sequence();
    } catch (InvalidMidiDataException e) {
      throw new IllegalStateException("a performance that MIDI can't hold: " + performance, e);
    }
  }

  /** As the bytes of a file. */
  public static byte[] file(Performance performance) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      MidiSystem.write(sequence(performance), 1, out);
    } catch (IOException e) {
      throw new IllegalStateException("memory can't be written to", e);
    }
    return out.toByteArray();
  }

  /** The channel of a chair, 0 to 15: its own while there are some, and never that of drums. */
  static int channel(int chair) {
    int melodic = chair % (CHANNELS - 1);
    return melodic < PERCUSSION ? melodic : melodic + 1;
  }

  private Sequence sequence() throws InvalidMidiDataException {
    Sequence sequence = new Sequence(Sequence.PPQ, TICKS_A_QUARTER);
    Track tempi = sequence.createTrack();
    for (Performance.Tempo tempo : performance.tempi()) {
      add(tempi, tempo.fromMicros(), meta(SET_TEMPO, threeBytes(tempo.quarterMicros())));
    }
    for (int chair = 0; chair < performance.chairs().size(); chair++) {
      addChair(sequence.createTrack(), chair);
    }
    add(tempi, performance.lengthMicros(), meta(MARKER, "end".getBytes(StandardCharsets.UTF_8)));
    return sequence;
  }

  private void addChair(Track track, int number) throws InvalidMidiDataException {
    Chair chair = performance.chairs().get(number);
    int channel = channel(number);
    int bend = UNBENT + (int) Math.round(UNBENT * chair.cents() / CENTS_OF_FULL_BEND);
    List<MidiMessage> setting =
        List.of(
            meta(TRACK_NAME, chair.name().getBytes(StandardCharsets.UTF_8)),
            new ShortMessage(ShortMessage.PROGRAM_CHANGE, channel, chair.program() - 1, 0),
            new ShortMessage(ShortMessage.CONTROL_CHANGE, channel, VOLUME, chair.volume()),
            new ShortMessage(ShortMessage.CONTROL_CHANGE, channel, PAN, chair.pan()),
            new ShortMessage(ShortMessage.CONTROL_CHANGE, channel, REVERBERATION, 0),
            new ShortMessage(ShortMessage.CONTROL_CHANGE, channel, CHORUS, 0),
            new ShortMessage(ShortMessage.PITCH_BEND, channel, bend & 0x7F, bend >> 7));
    for (MidiMessage message : setting) {
      add(track, 0, message);
    }
    for (Note note : performance.notes()) {
      if (note.chair() == number) {
        int sounding = note.key() < 0 ? PERCUSSION : channel;
        int key = note.key() < 0 ? WOODBLOCK : note.key();
        add(
            track,
            note.startMicros(),
            new ShortMessage(ShortMessage.NOTE_ON, sounding, key, note.velocity()));
        add(track, note.endMicros(), new ShortMessage(ShortMessage.NOTE_OFF, sounding, key, 0));
      }
    }
  }

  private void add(Track track, long micros, MidiMessage message) {
    track.add(new MidiEvent(message, ticks.at(micros)));
  }

  private static MetaMessage meta(int type, byte[] bytes) throws InvalidMidiDataException {
    return new MetaMessage(type, bytes, bytes.length);
  }

  private static byte[] threeBytes(long number) {
    return new byte[] {(byte) (number >> 16), (byte) (number >> 8), (byte) number};
  }
}
