package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import stafette.sound.TinyBank;

/** The command preview, playing. */
class SoundOptionsTest {
  /** Of the excerpt, bars 5 to 16 in 4/4 at quarter = 104, the last note a quarter short of it. */
  private static final double SECONDS = 27.692;

  @TempDir private Path folder = Path.of("");

  @Test
  void plays_a_wav_and_tells_the_steps_in_level() throws Exception {
    Path file = folder.resolve("a.wav");
    Ran ran = preview("--sound", file.toString());
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    assertTrue(ran.out().contains("Played     " + file + " (27.7 s of music, file 28.7 s)"));
    assertTrue(ran.out().contains("published  over one  over before"), ran.out());
    assertEquals(6, ran.out().split("\\+3\\.01 dB ", -1).length - 1, ran.out());
    assertEquals(SECONDS + 1, seconds(file), 0.001);
  }

  @Test
  void plays_at_another_speed_round_one_handoff_and_as_a_comparison()
      throws IOException, UnsupportedAudioFileException {
    assertEquals(2 * SECONDS + 1, seconds(played("half.wav", "--speed", "50%")), 0.001);
    double handoff = seconds(played("handoff.wav", "--handoff", "2"));
    assertTrue(handoff > 5 && handoff < 8, Double.toString(handoff));
    assertEquals(3 * SECONDS + 2 * 1.5 + 1, seconds(played("three.wav", "--compare")), 0.001);
  }

  @Test
  void solo_mute_seats_spread_and_the_rest_of_the_score_are_heard() throws IOException {
    byte[] plain = Files.readAllBytes(played("plain.wav", "--handoff", "1"));
    assertArrayEquals(plain, Files.readAllBytes(played("again.wav", "--handoff", "1")));
    List<List<String>> others =
        List.of(
            List.of("--solo", "flute 1"),
            List.of("--mute", "Flute 1"),
            List.of("--spread", "off"),
            List.of("--with-score"),
            List.of("--seats", "Flute 1: -3 2; Flute 2: 4 9"));
    for (List<String> other : others) {
      List<String> options = new ArrayList<>(List.of("--handoff", "1"));
      options.addAll(other);
      Path file = played("other.wav", options.toArray(String[]::new));
      assertFalse(Arrays.equals(plain, Files.readAllBytes(file)), other.toString());
      assertEquals(plain.length, Files.size(file));
    }
    assertArrayEquals(
        Files.readAllBytes(played("solo.wav", "--handoff", "1", "--solo", "Flute 1")),
        Files.readAllBytes(played("mute.wav", "--handoff", "1", "--mute", "Flute 2")));
  }

  @Test
  void plays_with_a_bank_of_the_users_own() throws IOException {
    Path bank = Files.write(folder.resolve("tiny.sf2"), TinyBank.sf2());
    byte[] own = Files.readAllBytes(played("own.wav", "--handoff", "1", "--bank", bank.toString()));
    byte[] usual = Files.readAllBytes(played("usual.wav", "--handoff", "1"));
    assertEquals(usual.length, own.length);
    assertFalse(Arrays.equals(usual, own));
  }

  /** 283 notes of the line and five that two players share. */
  @Test
  void plays_a_midi_file_that_has_every_note() throws Exception {
    Sequence sequence = MidiSystem.getSequence(played("a.MID", "--spread", "off").toFile());
    long notes = 0;
    for (Track track : sequence.getTracks()) {
      for (int i = 0; i < track.size(); i++) {
        notes +=
            track.get(i).getMessage() instanceof ShortMessage message
                    && message.getCommand() == ShortMessage.NOTE_ON
                ? 1
                : 0;
      }
    }
    assertEquals(283 + 5, notes);
    assertEquals(SECONDS, sequence.getMicrosecondLength() / 1e6, 0.001);
  }

  @Test
  void plays_a_plan_that_was_kept_as_it_plays_a_new_one() throws IOException {
    Path plan = folder.resolve("plan.json");
    assertEquals(Commands.FINE, LanternRun.run("split", "--plan", plan.toString()).exitCode());
    Path kept = folder.resolve("kept.mid");
    Ran ran = Ran.command("preview", plan.toString(), "--sound", kept.toString());
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    assertArrayEquals(Files.readAllBytes(played("new.mid")), Files.readAllBytes(kept));
  }

  private record Case(int exitCode, String says, List<String> options) {}

  @TestFactory
  Stream<DynamicTest> each_wrong_use_gets_one_message_and_no_file() throws IOException {
    Path there = Files.writeString(folder.resolve("there.wav"), "mine");
    Path text = Files.writeString(folder.resolve("text.sf2"), "no bank");
    String wav = folder.resolve("x.wav").toString();
    String mid = folder.resolve("x.mid").toString();
    return Stream.of(
            wrong("into .wav or .mid", folder.resolve("x.ogg").toString()),
            wrong("--spread \"some\": write on or off", wav, "--spread", "some"),
            wrong("--speed \"half\": write a share", wav, "--speed", "half"),
            wrong("from 10% to 400%", wav, "--speed", "50"),
            wrong("from 10% to 400%", wav, "--speed", "0%"),
            wrong("from 10% to 400%", wav, "--speed", "401%"),
            wrong("numbered 1 to 5", wav, "--handoff", "6"),
            wrong("numbered 1 to 5", wav, "--handoff", "0"),
            wrong("Tuba is none of the players; it is played by Flute 1", wav, "--solo", "Tuba"),
            wrong("Clarinet 1 has nothing to play", wav, "--mute", "Clarinet 1"),
            wrong("leave nobody to hear", wav, "--mute", "Flute 1, Flute 2"),
            wrong("--solo \",\": name players", wav, "--solo", ","),
            wrong("leave out who is heard alone (--solo)", wav, "--compare", "--solo", "Flute 1"),
            wrong("a soundbank (--bank) gives", mid, "--bank", text.toString()),
            new Case(Commands.FILE, "is no soundbank", sound(wav, "--bank", text.toString())),
            new Case(Commands.FILE, "no such file", sound(wav, "--bank", "nowhere.sf2")),
            new Case(Commands.FILE, "exists already", sound(there.toString())),
            new Case(
                Commands.WRONG_USE,
                "--solo, --compare: go with --sound",
                List.of("--compare", "--solo", "Flute 1")))
        .map(
            wrong ->
                DynamicTest.dynamicTest(
                    wrong.options().toString(),
                    () -> {
                      Ran ran = preview(wrong.options().toArray(String[]::new));
                      assertTrue(ran.err().contains(wrong.says()), ran.err());
                      assertEquals(wrong.exitCode(), ran.exitCode());
                      assertFalse(Files.exists(Path.of(wav)) || Files.exists(Path.of(mid)));
                      assertEquals("mine", Files.readString(there));
                    }));
  }

  private static Case wrong(String says, String file, String... more) {
    return new Case(Commands.WRONG_USE, says, sound(file, more));
  }

  private static List<String> sound(String file, String... more) {
    List<String> options = new ArrayList<>(List.of("--sound", file));
    options.addAll(List.of(more));
    return options;
  }

  private Path played(String name, String... more) {
    Path file = folder.resolve(name);
    List<String> options = sound(file.toString(), more);
    options.add("--force");
    Ran ran = preview(options.toArray(String[]::new));
    assertEquals(Commands.FINE, ran.exitCode(), ran.err());
    assertTrue(ran.out().contains("Played     " + file), ran.out());
    return file;
  }

  private static double seconds(Path wav) throws IOException, UnsupportedAudioFileException {
    var format = AudioSystem.getAudioFileFormat(wav.toFile());
    return format.getFrameLength() / format.getFormat().getFrameRate();
  }

  private static Ran preview(String... options) {
    return LanternRun.run("preview", options);
  }
}
