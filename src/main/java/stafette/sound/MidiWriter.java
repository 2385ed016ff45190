package stafette.sound;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.Track;

/** Writes a performance down as MIDI: a track for tempo and metre, then one for each voice. */
final class MidiWriter {
  private static final int VOLUME = 7;
  private static final int PAN = 10;
  private static final int REVERB = 91;
  private static final int CHORUS = 93;

  /** Drums of the background share a channel with drums of the line, so they are struck softer. */
  private static final double BACKGROUND_DRUM = 0.5;

  private static final int SEVERAL_TRACKS = 1;

  private final Performance performance;
  private final TickClock clock;
  private final int[] channels;

  private MidiWriter(Performance performance, TickClock clock) {
    this.performance = performance;
    this.clock = clock;
    channels = Channels.of(performance.voices());
  }

  static Sequence of(Performance performance, TickClock clock) {
    try {
      Sequence sequence = new Sequence(Sequence.PPQ, clock.resolution());
      new MidiWriter(performance, clock).write(sequence);
      return sequence;
    } catch (InvalidMidiDataException e) {
      throw new IllegalStateException("MIDI knows no such clock: " + clock.resolution(), e);
    }
  }

  /** A Standard MIDI File of format 1. */
  static byte[] file(Sequence sequence) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      MidiSystem.write(sequence, SEVERAL_TRACKS, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private void write(Sequence sequence) {
    Track marks = sequence.createTrack();
    clock.marks().forEach(marks::add);
    marks.add(Messages.end(clock.tick(performance.lengthMicros())));
    Map<Integer, List<Note>> sounding = sounding();
    for (int i = 0; i < performance.voices().size(); i++) {
      Track track = sequence.createTrack();
      setUp(track, performance.voices().get(i), channels[i]);
      for (Note note : sounding.getOrDefault(i, List.of())) {
        long from = clock.tick(note.fromMicros());
        long to = Math.max(from + 1, clock.tick(note.toMicros()));
        track.add(Messages.on(channels[i], note.key(), note.velocity(), from));
        track.add(Messages.off(channels[i], note.key(), to));
      }
    }
  }

  private static void setUp(Track track, SoundingVoice voice, int channel) {
    track.add(Messages.name(voice.name()));
    if (channel != Channels.PERCUSSION) {
      track.add(Messages.program(channel, voice.program()));
    }
    boolean percussion = channel == Channels.PERCUSSION;
    track.add(
        Messages.control(channel, VOLUME, percussion ? SoundingVoice.FULL_VOLUME : voice.volume()));
    track.add(Messages.control(channel, PAN, percussion ? SoundingVoice.MIDDLE : voice.pan()));
    track.add(Messages.control(channel, REVERB, 0));
    track.add(Messages.control(channel, CHORUS, 0));
  }

  /**
   * The notes of each voice as they can be told on its channel: a key that is struck while it
   * sounds ends before it sounds again, and of two that begin together one is left.
   */
  private Map<Integer, List<Note>> sounding() {
    Map<Integer, List<Note>> byKey = new TreeMap<>();
    for (Note note : performance.notes()) {
      byKey
          .computeIfAbsent(channels[note.voice()] * 128 + note.key(), key -> new ArrayList<>())
          .add(softened(note));
    }
    Map<Integer, List<Note>> byVoice = new TreeMap<>();
    for (List<Note> key : byKey.values()) {
      key.sort(Comparator.comparingLong(Note::fromMicros).thenComparing(Note::toMicros));
      for (int i = 0; i < key.size(); i++) {
        Note note = key.get(i);
        long next =
            i + 1 < key.size() ? key.get(i + 1).fromMicros() - Touch.GAP_MICROS : Long.MAX_VALUE;
        if (note.fromMicros() < next) {
          byVoice
              .computeIfAbsent(note.voice(), voice -> new ArrayList<>())
              .add(note.until(Math.min(note.toMicros(), next)));
        }
      }
    }
    byVoice.values().forEach(notes -> notes.sort(Comparator.comparingLong(Note::fromMicros)));
    return byVoice;
  }

  private Note softened(Note note) {
    SoundingVoice voice = performance.voices().get(note.voice());
    return voice.background() && voice.drum().isPresent() ? note.softerBy(BACKGROUND_DRUM) : note;
  }
}
