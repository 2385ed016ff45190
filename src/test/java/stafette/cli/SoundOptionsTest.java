package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command preview, sounding. */
class SoundOptionsTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void writes_wav_with_the_levels_of_the_handoffs_published_and_measured()
      throws IOException, UnsupportedAudioFileException {
    Path file = folder.resolve("a.WAV");
    Ran ran = preview("--sound", file.toString());
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    assertTrue(ran.out().contains("Sounded    " + file), ran.out());
    assertTrue(ran.out().contains("Flute 1 to Flute 2  +3.0 dB"), ran.out());
    assertTrue(ran.out().contains("all together"), ran.out());
    AudioFileFormat format = AudioSystem.getAudioFileFormat(file.toFile());
    assertEquals(2, format.getFormat().getChannels());
  }

  @Test
  void writes_the_same_midi_twice_and_other_midi_without_spread()
      throws IOException, InvalidMidiDataException {
    byte[] one = Files.readAllBytes(midi("one.mid"));
    assertArrayEquals(one, Files.readAllBytes(midi("two.mid")));
    byte[] machine = Files.readAllBytes(midi("machine.mid", "--spread", "off"));
    assertFalse(java.util.Arrays.equals(one, machine));
  }

  @Test
  void solo_and_mute_choose_who_is_heard() throws IOException, InvalidMidiDataException {
    int all = attacks(midi("all.mid"));
    int solo = attacks(midi("solo.mid", "--solo", "flute 1"));
    int mute = attacks(midi("mute.mid", "--mute", "Flute 1, Clarinet 1"));
    assertTrue(solo > 0 && mute > 0);
    assertEquals(all, solo + mute);
  }

  @Test
  void the_rest_of_the_score_accompanies_when_asked() throws IOException, InvalidMidiDataException {
    assertTrue(attacks(midi("alone.mid")) < attacks(midi("score.mid", "--with-score")));
  }

  @Test
  void one_handoff_is_a_few_seconds_and_half_the_speed_twice_the_time()
      throws IOException, InvalidMidiDataException {
    double whole = seconds(midi("whole.mid"));
    double slow = seconds(midi("slow.mid", "--speed", "50%"));
    double handoff = seconds(midi("handoff.mid", "--handoff", "2"));
    assertEquals(2 * (whole - 1), slow - 1, 0.01);
    assertTrue(handoff > 3 && handoff < 6, "seconds " + handoff);
  }

  @Test
  void the_comparison_plays_the_line_three_times() throws IOException, InvalidMidiDataException {
    Path plan = midi("plan.mid");
    Path three = midi("three.mid", "--compare");
    assertEquals(3 * seconds(plan) + 2, seconds(three), 0.05);
    int shared = 3;
    assertEquals(3 * attacks(plan) - 2 * shared, attacks(three));
  }

  @Test
  void a_plan_that_was_kept_sounds_too() throws IOException {
    Path plan = folder.resolve("plan.json");
    List<String> split = new ArrayList<>(List.of("split"));
    split.addAll(job());
    split.addAll(List.of("--plan", plan.toString()));
    assertEquals(Commands.FINE, Ran.command(split.toArray(String[]::new)).exitCode());
    Path file = folder.resolve("kept.mid");
    Ran ran = Ran.command("preview", plan.toString(), "--sound", file.toString());
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    assertTrue(Files.exists(file));
  }

  @Test
  void refuses_what_cannot_be_before_it_searches() throws IOException {
    String wav = folder.resolve("a.wav").toString();
    refused(Commands.WRONG_USE, ".wav or .mid", "--sound", folder.resolve("a.mp3").toString());
    refused(Commands.WRONG_USE, "need --sound", "--speed", "50%");
    refused(Commands.WRONG_USE, "percentage", "--sound", wav, "--speed", "slow");
    refused(Commands.WRONG_USE, "10% to 400%", "--sound", wav, "--speed", "0%");
    refused(Commands.WRONG_USE, "on or off", "--sound", wav, "--spread", "wide");
    refused(Commands.WRONG_USE, "--compare", "--sound", wav, "--compare", "--solo", "Flute 1");
    refused(
        Commands.WRONG_USE,
        "holds no sounds",
        "--sound",
        folder.resolve("a.mid").toString(),
        "--bank",
        wav);
    Path there = Files.writeString(folder.resolve("there.wav"), "mine");
    refused(Commands.FILE, "--force", "--sound", there.toString());
    assertEquals("mine", Files.readString(there));
  }

  @Test
  void refuses_players_handoffs_and_banks_that_are_not_there() throws IOException {
    String wav = folder.resolve("a.wav").toString();
    assertRefused(Commands.WRONG_USE, "none of the players", "--sound", wav, "--solo", "Harp");
    assertRefused(Commands.WRONG_USE, "1 to 3", "--sound", wav, "--handoff", "4");
    Path noBank = Files.writeString(folder.resolve("no.sf2"), "no bank");
    assertRefused(Commands.FILE, "no.sf2: is no sound bank", "--sound", wav, "--bank", "" + noBank);
    assertFalse(Files.exists(folder.resolve("a.wav")));
  }

  private static void refused(int exitCode, String words, String... options) {
    Ran ran = assertRefused(exitCode, words, options);
    assertFalse(ran.out().contains("Plan"), ran.out());
  }

  private static Ran assertRefused(int exitCode, String words, String... options) {
    Ran ran = preview(options);
    assertEquals(exitCode, ran.exitCode(), ran.err());
    assertTrue(ran.err().contains(words), ran.err());
    return ran;
  }

  private Path midi(String name, String... more) {
    Path file = folder.resolve(name);
    List<String> options = new ArrayList<>(List.of("--sound", file.toString()));
    options.addAll(List.of(more));
    Ran ran = preview(options.toArray(String[]::new));
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    return file;
  }

  private static double seconds(Path file) throws IOException, InvalidMidiDataException {
    return MidiSystem.getSequence(file.toFile()).getMicrosecondLength() / 1e6;
  }

  private static int attacks(Path file) throws IOException, InvalidMidiDataException {
    Sequence sequence = MidiSystem.getSequence(file.toFile());
    int attacks = 0;
    for (Track track : sequence.getTracks()) {
      for (int i = 0; i < track.size(); i++) {
        MidiEvent event = track.get(i);
        attacks +=
            event.getMessage() instanceof ShortMessage message
                    && message.getCommand() == ShortMessage.NOTE_ON
                    && message.getData2() > 0
                ? 1
                : 0;
      }
    }
    return attacks;
  }

  private static Ran preview(String... options) {
    List<String> args = new ArrayList<>(List.of("preview"));
    args.addAll(job());
    args.addAll(List.of(options));
    return Ran.command(args.toArray(String[]::new));
  }

  private static List<String> job() {
    return List.of(
        "samples/lantern-run.musicxml",
        "--part",
        "Piano",
        "--staff",
        "1",
        "--bars",
        "5-16",
        "--players",
        "Flute 1, Flute 2, Clarinet 1");
  }
}
