package stafette.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import javax.sound.midi.Soundbank;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.Invented;
import stafette.plan.Plan;
import stafette.score.Line;

/** What is heard, measured in the samples. */
class AudioTest {
  /** 10 · log10(2): two equal unrelated sources, textbook physics. */
  private static final double EQUAL_SOURCES_DECIBEL = 10 * Math.log10(2);

  @TempDir private Path folder = Path.of("");

  @Test
  void there_is_sound_where_the_plan_plays_and_silence_where_nobody_does() throws UnusableBank {
    Plan plan = Heard.two(Heard.restingLine(), 7, 8);
    Performer performer = new Performer(plan, Heard.MACHINE);
    Audio audio = Synthesis.plain().render(performer.asPlanned());
    Line line = plan.line();
    for (int j = 0; j < line.count(); j++) {
      long from = performer.clock().performed(line.onsetMicros(j));
      assertTrue(audio.energy(from, from + 200_000) > 0.1, "stroke " + j);
    }
    long rest = performer.clock().performed(line.endMicros(7));
    assertEquals(0, audio.energy(rest + 1_000_000, rest + 1_990_000), 1e-6);
    assertEquals(0, audio.energy(0, performer.clock().performed(0) - 1000), 1e-9);
  }

  @Test
  void it_lasts_a_quarter_the_line_and_a_second_to_the_millisecond()
      throws UnusableBank, IOException, UnsupportedAudioFileException {
    Plan plan = Heard.two(Heard.restingLine(), 7, 8);
    Audio audio = Synthesis.plain().render(new Performer(plan, Heard.HUMAN).asPlanned());
    double seconds = 0.5 + 12 * 0.5 + 1;
    assertEquals(seconds, audio.seconds(), 0.001);
    try (AudioInputStream read =
        AudioSystem.getAudioInputStream(new ByteArrayInputStream(audio.wav()))) {
      assertEquals(seconds, read.getFrameLength() / (double) Audio.FRAMES_PER_SECOND, 0.001);
    }
  }

  /**
   * Over 96 shared strokes the phases of two voices that stray are random: the mean of |1 +
   * e^(iφ)|² over n of them is 2 with a standard deviation of √(2/n), 0.14, which is 0.31 dB; three
   * of these are allowed.
   */
  @Test
  void two_equal_players_who_share_many_strokes_are_three_decibels_louder_than_one()
      throws UnusableBank {
    Plan plan = Heard.two(Invented.line(12, 3, 200), 119, 24);
    Performer performer = new Performer(plan, Heard.HUMAN);
    LevelStep.Measured measured = LevelStep.measure(plan, performer, Synthesis.plain());
    assertEquals(EQUAL_SOURCES_DECIBEL, measured.together().orElseThrow(), 0.93);
  }

  /** The pressures of two sources in step add up: 20 · log10(2) = 6.02 dB, textbook physics. */
  @Test
  void the_same_voice_twice_in_step_would_be_six_decibels_louder() throws UnusableBank {
    Chair chair = new Chair("Flute", 74, 64, 70, 0, false);
    Chair twin = new Chair("Twin", 74, 64, 70, 0, false);
    List<Note> notes =
        IntStream.range(0, 20)
            .mapToObj(i -> new Note(0, i * 200_000L, i * 200_000L + 180_000, 69, 64))
            .toList();
    List<Performance.Tempo> tempi = List.of(new Performance.Tempo(0, 500_000));
    Performance one = new Performance(List.of(chair), notes, tempi, 5_000_000);
    Performance both = one.with(new Performance(List.of(twin), notes, tempi, 5_000_000));
    double ratio =
        Synthesis.plain().render(both).energy(0, 5_000_000)
            / Synthesis.plain().render(one).energy(0, 5_000_000);
    assertEquals(20 * Math.log10(2), 10 * Math.log10(ratio), 0.1);
  }

  @Test
  void the_same_plan_gives_the_same_bytes() throws UnusableBank {
    Plan plan = Heard.two(Heard.restingLine(), 7, 8);
    assertArrayEquals(
        Synthesis.plain().render(new Performer(plan, Heard.HUMAN).asPlanned()).wav(),
        Synthesis.plain().render(new Performer(plan, Heard.HUMAN).asPlanned()).wav());
  }

  @Test
  void nothing_is_clipped_with_eight_players_at_once() throws UnusableBank {
    Line line = Heard.restingLine();
    Performance all = new Performer(Heard.two(line, 7, 8), Heard.MACHINE).byOneAlone();
    Performance eight = all;
    for (int i = 0; i < 7; i++) {
      eight = eight.with(all);
    }
    double one = Synthesis.plain().render(all).peak();
    assertTrue(one > 0.01 && one < 0.5, "peak of one player " + one);
    assertTrue(Synthesis.plain().render(eight).peak() <= 1);
  }

  @Test
  void a_bank_of_the_users_own_sounds() throws Exception {
    Plan plan = Heard.two(Heard.restingLine(), 7, 8);
    Performance performance = new Performer(plan, Heard.MACHINE).asPlanned();
    Audio audio = Synthesis.with(Files.readAllBytes(bank())).render(performance);
    assertEquals(7.5, audio.seconds(), 0.001);
    assertTrue(audio.energy(500_000, 2_000_000) > 0.1);
    assertEquals(0, audio.energy(4_000_000, 4_990_000 - 600_000), 1e-6);
  }

  @Test
  void a_file_that_is_no_bank_is_refused_with_words() {
    UnusableBank refused =
        assertThrows(UnusableBank.class, () -> Synthesis.with(new byte[] {1, 2, 3}));
    assertTrue(String.valueOf(refused.getMessage()).contains(".sf2"), refused.toString());
  }

  /** The JDK's emergency bank, written down as an SF2 file. */
  private Path bank() throws Exception {
    Soundbank emergency =
        (Soundbank)
            Class.forName("com.sun.media.sound.EmergencySoundbank")
                .getMethod("createSoundbank")
                .invoke(null);
    Path file = folder.resolve("bank.sf2");
    emergency.getClass().getMethod("save", String.class).invoke(emergency, file.toString());
    return file;
  }
}
