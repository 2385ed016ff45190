package stafette.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Soundbank;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.plan.Brief;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.BeatUnit;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

/** Rendered sound. */
class AudioTest {
  private static final long STROKE_MICROS = 125_000;

  /** Two bars, two bars of silence, two bars. */
  private static Plan resting() {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 64; i++) {
      int at = i < 32 ? i : i + 32;
      strokes.add(
          Invented.stroke(
              Position.ofQuarters(at, 4), Length.ofQuarters(1, 4), InventedRelay.scale(i)));
    }
    return InventedRelay.of(Invented.lineOf(strokes, 120), 2, 32, 0);
  }

  @Test
  void it_sounds_where_the_plan_plays_and_is_silent_where_nobody_does() throws NoSound {
    Audio audio = InventedRelay.whole(resting(), Timing.WRITTEN).audio(Optional.empty());
    double stroke = audio.energy(0, 32 * STROKE_MICROS) / 32;
    for (int i = 0; i < 64; i++) {
      long at = (i < 32 ? i : i + 32) * STROKE_MICROS;
      assertTrue(audio.energy(at, at + STROKE_MICROS) > stroke / 4, "stroke " + i);
    }
    long silent = 32 * STROKE_MICROS;
    assertTrue(
        audio.energy(silent + 500_000, 64 * STROKE_MICROS) < stroke / 1e6, "rings on for too long");
    assertEquals(0, audio.energy(64 * STROKE_MICROS - 500_000, 64 * STROKE_MICROS), 0);
  }

  @Test
  void the_first_stroke_sounds_at_once() throws NoSound {
    Audio audio = InventedRelay.whole(resting(), Timing.WRITTEN).audio(Optional.empty());
    assertTrue(audio.energy(0, 2_000) > 0);
    assertTrue(audio.energy(64 * STROKE_MICROS, 64 * STROKE_MICROS + 2_000) > 0);
  }

  @Test
  void its_length_is_that_of_the_tempo_map_and_a_second_to_ring_on() throws NoSound {
    Line even = Invented.line(3, 4, 97);
    TempoMap tempi =
        TempoMap.of(
            Map.of(
                Position.START,
                quarters(97),
                Position.ofQuarters(13, 3),
                quarters(143),
                Position.ofQuarters(9, 1),
                quarters(61)));
    Plan plan = InventedRelay.of(even.at(tempi), 2, 16, 1);
    double byTempo = tempi.secondsOf(plan.line().span()).toDouble();
    for (Rational speed : List.of(Rational.ONE, Rational.of(1, 2), Rational.of(4, 3))) {
      Hearing all = InventedRelay.hearing(plan, Timing.ENSEMBLE);
      Hearing hearing = new Hearing(speed, all.timing(), all.seats(), all.heard(), all.rest());
      Audio audio = Performance.of(plan, Excerpts.whole(plan), hearing).audio(Optional.empty());
      assertEquals(byTempo / speed.toDouble() + 1, audio.seconds(), 0.001);
    }
  }

  private static TempoMark quarters(long perMinute) {
    return new TempoMark(BeatUnit.QUARTER, Rational.of(perMinute));
  }

  @Test
  void the_same_plan_makes_the_same_bytes_and_another_timing_others() throws NoSound {
    byte[] once = wav(Timing.ENSEMBLE);
    assertArrayEquals(once, wav(Timing.ENSEMBLE));
    assertFalse(Arrays.equals(once, wav(Timing.TOGETHER)));
  }

  private static byte[] wav(Timing timing) throws NoSound {
    Plan plan = InventedRelay.of(64, 3, 16, 1, InventedRelay::scale);
    return InventedRelay.whole(plan, timing).audio(Optional.empty()).wav();
  }

  @Test
  void nothing_is_clipped_with_eight_players_at_once() throws NoSound {
    Line line = Invented.line(2, 4, 120);
    List<Segment> segments =
        IntStream.range(0, 8)
            .mapToObj(i -> new Segment(i, i, 0, 0, line.count() - 1, Pattern.ALL))
            .toList();
    Plan plan =
        new Plan(
            new Brief(Collections.nCopies(8, line), InventedRelay.players(8), Invented.rules()),
            segments);
    double peak = InventedRelay.whole(plan, Timing.ENSEMBLE).audio(Optional.empty()).peak();
    assertTrue(peak > 0.2 && peak < 0.95, "peak " + peak);
  }

  @Test
  void the_file_is_stereo_of_sixteen_bits() throws Exception {
    try (AudioInputStream stream =
        AudioSystem.getAudioInputStream(new ByteArrayInputStream(wav(Timing.WRITTEN)))) {
      AudioFormat format = stream.getFormat();
      assertEquals(2, format.getChannels());
      assertEquals(16, format.getSampleSizeInBits());
      assertEquals(9 * 44_100, stream.getFrameLength());
    }
  }

  @Test
  void a_bank_of_the_users_own_sounds_at_the_same_time_and_otherwise() throws Exception {
    Plan plan = resting();
    Performance performance = InventedRelay.whole(plan, Timing.WRITTEN);
    Audio own = performance.audio(Optional.of(tiny()));
    assertFalse(Arrays.equals(own.wav(), performance.audio(Optional.empty()).wav()));
    assertTrue(own.energy(0, 2_000) > 0);
    assertEquals(0, own.energy(40 * STROKE_MICROS, 64 * STROKE_MICROS), 0);
    assertTrue(own.energy(64 * STROKE_MICROS, 64 * STROKE_MICROS + 2_000) > 0);
    assertArrayEquals(own.wav(), performance.audio(Optional.of(tiny())).wav());
  }

  /** The synthesiser's own sounds as a bank: both ways to it must make the same. */
  @Test
  void its_own_sounds_given_as_a_bank_make_the_same_bytes() throws Exception {
    Performance performance =
        InventedRelay.whole(InventedRelay.of(64, 2, 32, 4, InventedRelay::scale), Timing.ENSEMBLE);
    assertArrayEquals(
        performance.audio(Optional.empty()).wav(),
        performance.audio(Optional.of(MidiSystem.getSynthesizer().getDefaultSoundbank())).wav());
  }

  private static Soundbank tiny() throws InvalidMidiDataException, IOException {
    return MidiSystem.getSoundbank(new ByteArrayInputStream(TinyBank.sf2()));
  }

  @Test
  void reading_the_file_back_gives_its_samples()
      throws NoSound, IOException, UnsupportedAudioFileException {
    byte[] wav = wav(Timing.WRITTEN);
    try (AudioInputStream stream = AudioSystem.getAudioInputStream(new ByteArrayInputStream(wav))) {
      byte[] samples = stream.readAllBytes();
      assertArrayEquals(Arrays.copyOfRange(wav, wav.length - samples.length, wav.length), samples);
    }
  }
}
