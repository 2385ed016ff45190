package stafette.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.time.BeatUnit;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

/** Standard MIDI Files, read back with the JDK's reader. */
class MidiTest {
  /** A note as it was read. */
  private record Read(int channel, int key, int velocity, double from, double to) {}

  @Property(tries = 60)
  void every_note_of_the_plan_is_in_the_file_at_its_time_and_no_other(
      @ForAll @IntRange(min = 20, max = 300) int perMinute,
      @ForAll @IntRange(min = 1, max = 12) int perBeat,
      @ForAll @IntRange(min = 2, max = 15) int players,
      @ForAll @IntRange(min = 1, max = 3) int shared,
      @ForAll @IntRange(min = 30, max = 200) int later)
      throws Exception {
    Line even = Invented.line(100, perBeat, perMinute, InventedRelay::scale);
    TempoMap tempi =
        TempoMap.of(
            Map.of(
                Position.START, quarters(perMinute), Position.ofQuarters(7, 3), quarters(later)));
    Plan plan = InventedRelay.of(even.at(tempi), players, 7, shared);
    List<Read> read = notes(InventedRelay.whole(plan, Timing.WRITTEN).midi());
    List<Integer> channels = new ArrayList<>(List.of(0, 1, 2, 3, 4, 5, 6, 7, 8));
    channels.addAll(List.of(10, 11, 12, 13, 14, 15));
    int count = 0;
    for (Segment segment : plan.segments()) {
      Played played = plan.played(segment);
      for (int j = played.first(); j <= played.last(); j++) {
        double from = played.line().onsetMicros(j);
        double written = played.line().endMicros(j) - from;
        int key = ((Pitch) played.line().stroke(j).tones().get(0)).midi();
        int channel = channels.get(segment.player());
        assertTrue(
            read.stream()
                .anyMatch(
                    note ->
                        note.channel == channel
                            && note.key == key
                            && note.velocity == 80
                            && Math.abs(note.from - from) < 2_000
                            && Math.abs(note.to - from - 0.88 * written) < 5_000),
            segment + " stroke " + j);
        count++;
      }
    }
    assertEquals(count, read.size());
  }

  @Test
  void a_player_has_a_channel_a_program_and_a_place() throws Exception {
    Plan plan = InventedRelay.of(64, 3, 16, 1, InventedRelay::scale);
    Sequence sequence = read(InventedRelay.whole(plan, Timing.ENSEMBLE).midi());
    Map<Integer, Integer> pans = new TreeMap<>();
    Map<Integer, Integer> programs = new TreeMap<>();
    for (MidiEvent event : events(sequence)) {
      if (event.getMessage() instanceof ShortMessage message) {
        if (message.getCommand() == ShortMessage.PROGRAM_CHANGE) {
          programs.put(message.getChannel(), message.getData1());
        }
        if (message.getCommand() == ShortMessage.CONTROL_CHANGE && message.getData1() == 10) {
          pans.put(message.getChannel(), message.getData2());
        }
      }
    }
    assertEquals(Map.of(0, 20, 1, 64, 2, 108), pans);
    assertEquals(Map.of(0, 73, 1, 73, 2, 73), programs);
  }

  @Test
  void the_file_has_the_tempo_marks_and_the_metre_of_the_score() throws Exception {
    Line line =
        Invented.line(2, 4, 120)
            .at(
                TempoMap.of(
                    Map.of(
                        Position.START, quarters(120), Position.ofQuarters(4, 1), quarters(60))));
    Sequence sequence =
        read(InventedRelay.whole(InventedRelay.of(line, 2, 16, 1), Timing.WRITTEN).midi());
    assertEquals(960, sequence.getResolution());
    assertEquals(Map.of(0L, 500_000, 3840L, 1_000_000), tempi(sequence));
    MetaMessage metre =
        events(sequence).stream()
            .filter(
                event -> event.getMessage() instanceof MetaMessage meta && meta.getType() == 0x58)
            .map(event -> (MetaMessage) event.getMessage())
            .findFirst()
            .orElseThrow();
    assertArrayEquals(new byte[] {4, 2, 24, 8}, metre.getData());
    assertEquals(6_000_000, sequence.getMicrosecondLength());
  }

  @Test
  void the_sequence_to_be_played_counts_microseconds() throws Exception {
    Plan plan = InventedRelay.of(64, 2, 16, 1, InventedRelay::scale);
    Sequence sequence = InventedRelay.whole(plan, Timing.WRITTEN).sequence();
    assertEquals(8_000_000, sequence.getTickLength());
    assertEquals(8_000_000, sequence.getMicrosecondLength());
  }

  @Test
  void the_same_plan_makes_the_same_bytes() {
    Plan plan = InventedRelay.of(64, 2, 16, 1, InventedRelay::scale);
    byte[] once = InventedRelay.whole(plan, Timing.ENSEMBLE).midi();
    assertArrayEquals(once, InventedRelay.whole(plan, Timing.ENSEMBLE).midi());
    assertTrue(!Arrays.equals(once, InventedRelay.whole(plan, Timing.WRITTEN).midi()));
  }

  private static TempoMark quarters(long perMinute) {
    return new TempoMark(BeatUnit.QUARTER, Rational.of(perMinute));
  }

  private static Sequence read(byte[] file) throws Exception {
    return MidiSystem.getSequence(new ByteArrayInputStream(file));
  }

  private static List<MidiEvent> events(Sequence sequence) {
    List<MidiEvent> events = new ArrayList<>();
    for (Track track : sequence.getTracks()) {
      for (int i = 0; i < track.size(); i++) {
        events.add(track.get(i));
      }
    }
    events.sort(Comparator.comparingLong(MidiEvent::getTick));
    return events;
  }

  private static Map<Long, Integer> tempi(Sequence sequence) {
    Map<Long, Integer> tempi = new TreeMap<>();
    for (MidiEvent event : events(sequence)) {
      if (event.getMessage() instanceof MetaMessage meta && meta.getType() == 0x51) {
        byte[] data = meta.getData();
        tempi.put(
            event.getTick(), (data[0] & 0xFF) << 16 | (data[1] & 0xFF) << 8 | (data[2] & 0xFF));
      }
    }
    return tempi;
  }

  /** The notes with their times in microseconds, by the file's own tempo marks. */
  private static List<Read> notes(byte[] file) throws Exception {
    Sequence sequence = read(file);
    Map<Long, Integer> tempi = tempi(sequence);
    Map<List<Integer>, double[]> open = new TreeMap<>(Comparator.comparing(List::toString));
    List<Read> notes = new ArrayList<>();
    for (MidiEvent event : events(sequence)) {
      if (event.getMessage() instanceof ShortMessage message) {
        List<Integer> key = List.of(message.getChannel(), message.getData1());
        double micros = micros(event.getTick(), tempi, sequence.getResolution());
        if (message.getCommand() == ShortMessage.NOTE_ON) {
          assertTrue(!open.containsKey(key), "struck while it sounds");
          open.put(key, new double[] {micros, message.getData2()});
        } else if (message.getCommand() == ShortMessage.NOTE_OFF) {
          double[] on = open.remove(key);
          notes.add(new Read(key.get(0), key.get(1), (int) on[1], on[0], micros));
        }
      }
    }
    assertTrue(open.isEmpty(), "notes that never end");
    return notes;
  }

  private static double micros(long tick, Map<Long, Integer> tempi, int resolution) {
    double micros = 0;
    long before = 0;
    int tempo = 500_000;
    for (Map.Entry<Long, Integer> mark : tempi.entrySet()) {
      if (mark.getKey() <= tick) {
        micros += (double) (mark.getKey() - before) * tempo / resolution;
        before = mark.getKey();
        tempo = mark.getValue();
      }
    }
    return micros + (double) (tick - before) * tempo / resolution;
  }
}
