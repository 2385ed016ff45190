package stafette.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;
import stafette.score.Articulation;
import stafette.score.Dynamic;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.BeatUnit;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

/** MIDI files, read back with the JDK's own reader. */
class MidiTest {
  private static final double MICROS_PER_MILLI = 1000;

  /** A sounding note as the file has it. */
  private record Sounding(int channel, int key, double startMicros, double endMicros) {}

  @Test
  void every_stroke_of_every_player_is_there_at_its_time_and_on_its_channel()
      throws InvalidMidiDataException, IOException {
    assertTheSame(Heard.two(Invented.line(4, 3, 173), 20, 18));
  }

  @Test
  void tempi_that_change_within_the_line_keep_the_clock()
      throws InvalidMidiDataException, IOException {
    Line line =
        Invented.line(8, 3, 120)
            .at(
                TempoMap.of(
                    Map.of(
                        Position.START,
                        mark(97),
                        Position.ofQuarters(9, 1),
                        mark(143),
                        Position.ofQuarters(20, 1),
                        mark(71))));
    assertTheSame(Heard.two(line, 50, 48));
  }

  @Test
  void the_same_plan_gives_the_same_bytes_though_people_stray() {
    Plan plan = Heard.two(Invented.line(4, 3, 173), 20, 18);
    byte[] one = Midi.file(new Performer(plan, Heard.HUMAN).asPlanned());
    assertArrayEquals(one, Midi.file(new Performer(plan, Heard.HUMAN).asPlanned()));
    byte[] machine = Midi.file(new Performer(plan, Heard.MACHINE).asPlanned());
    assertFalse(java.util.Arrays.equals(one, machine), "people do not play like machines");
  }

  @Test
  void staccato_is_short_a_slur_is_whole_and_an_accent_is_louder() {
    Position start = Position.START;
    Stroke plain = Invented.stroke(start, Length.ofQuarters(1, 1), Invented.A4);
    Stroke staccato = with(plain, java.util.Set.of(Articulation.STACCATO), false, Dynamic.MF);
    Stroke slurred = with(plain, java.util.Set.of(), true, Dynamic.MF);
    Stroke accented = with(plain, java.util.Set.of(Articulation.ACCENT), false, Dynamic.MF);
    Stroke loud = with(plain, java.util.Set.of(), false, Dynamic.FF);
    assertEquals(0.5, Articulated.share(staccato));
    assertEquals(1, Articulated.share(slurred));
    assertTrue(Articulated.share(plain) < 1);
    assertTrue(Loudness.velocity(accented) > Loudness.velocity(plain));
    assertTrue(Loudness.velocity(loud) > Loudness.velocity(plain));
  }

  @Test
  void nobody_strikes_a_key_again_before_it_was_let_go() {
    Plan plan = Heard.two(Invented.line(16, 3, 240), 100, 90);
    Map<Integer, Note> before = new HashMap<>();
    for (Note note : new Performer(plan, Heard.HUMAN).asPlanned().notes()) {
      Note last = before.put(note.chair(), note);
      assertTrue(last == null || last.endMicros() <= note.startMicros(), last + " " + note);
    }
  }

  @Test
  void channel_ten_is_left_to_percussion_whoever_plays() {
    for (int chair = 0; chair < 40; chair++) {
      int channel = Midi.channel(chair);
      assertTrue(channel >= 0 && channel < 16 && channel != 9, chair + " has " + channel);
    }
  }

  private static Stroke with(
      Stroke stroke, java.util.Set<Articulation> marks, boolean slurContinues, Dynamic dynamic) {
    return new Stroke(
        stroke.onset(),
        stroke.tones(),
        stroke.values(),
        stroke.graces(),
        false,
        slurContinues,
        true,
        marks,
        dynamic);
  }

  private static TempoMark mark(int quarters) {
    return new TempoMark(BeatUnit.QUARTER, Rational.of(quarters));
  }

  private static void assertTheSame(Plan plan) throws InvalidMidiDataException, IOException {
    Performer performer = new Performer(plan, Heard.MACHINE);
    List<Sounding> found = read(Midi.file(performer.asPlanned()));
    List<Sounding> meant = meant(plan, performer.clock());
    assertEquals(meant.size(), found.size());
    for (int i = 0; i < meant.size(); i++) {
      assertEquals(meant.get(i).channel(), found.get(i).channel());
      assertEquals(meant.get(i).key(), found.get(i).key());
      assertEquals(meant.get(i).startMicros(), found.get(i).startMicros(), MICROS_PER_MILLI);
      assertTrue(found.get(i).endMicros() <= meant.get(i).endMicros() + MICROS_PER_MILLI);
    }
  }

  private static List<Sounding> meant(Plan plan, Clock clock) {
    List<Sounding> notes = new ArrayList<>();
    for (Segment segment : plan.segments()) {
      Played played = plan.played(segment);
      for (int j = played.first(); j <= played.last(); j++) {
        notes.add(
            new Sounding(
                segment.player(),
                69,
                (double) clock.performed(played.line().onsetMicros(j)),
                (double) clock.performed(played.line().endMicros(j))));
      }
    }
    return sorted(notes);
  }

  private static List<Sounding> sorted(List<Sounding> notes) {
    return notes.stream()
        .sorted(
            Comparator.comparingInt(Sounding::channel).thenComparingDouble(Sounding::startMicros))
        .toList();
  }

  /** The notes of a file, on the clock that its own tempo marks make. */
  private static List<Sounding> read(byte[] file) throws InvalidMidiDataException, IOException {
    Sequence sequence = MidiSystem.getSequence(new ByteArrayInputStream(file));
    List<Sounding> notes = new ArrayList<>();
    for (Track track : sequence.getTracks()) {
      Map<Integer, Double> open = new HashMap<>();
      for (int i = 0; i < track.size(); i++) {
        if (track.get(i).getMessage() instanceof ShortMessage message) {
          double micros = micros(sequence, track.get(i).getTick());
          int key = message.getData1();
          if (message.getCommand() == ShortMessage.NOTE_ON && message.getData2() > 0) {
            open.put(key, micros);
          } else if (message.getCommand() == ShortMessage.NOTE_OFF
              || message.getCommand() == ShortMessage.NOTE_ON) {
            notes.add(
                new Sounding(message.getChannel(), key, open.getOrDefault(key, -1.0), micros));
          }
        }
      }
    }
    return sorted(notes);
  }

  private static double micros(Sequence sequence, long tick) {
    double micros = 0;
    long from = 0;
    double perTick = 500_000.0 / sequence.getResolution();
    Track tempi = sequence.getTracks()[0];
    for (int i = 0; i < tempi.size() && tempi.get(i).getTick() <= tick; i++) {
      byte[] message = tempi.get(i).getMessage().getMessage();
      if ((message[0] & 0xFF) == 0xFF && message[1] == 0x51) {
        micros += (tempi.get(i).getTick() - from) * perTick;
        from = tempi.get(i).getTick();
        int quarter = (message[3] & 0xFF) << 16 | (message[4] & 0xFF) << 8 | (message[5] & 0xFF);
        perTick = quarter / (double) sequence.getResolution();
      }
    }
    return micros + (tick - from) * perTick;
  }
}
