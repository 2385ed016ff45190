package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each wrong use and each bad file gets one clear message and its exit code, and nothing is
 * written.
 */
class WrongUseTest {
  private static final String LANTERN = "samples/lantern-run.musicxml";

  @TempDir private Path folder = Path.of("");

  private record Case(int exitCode, String says, List<String> args) {}

  private static Case of(int exitCode, String says, String... args) {
    return new Case(exitCode, says, Arrays.asList(args));
  }

  private static Case split(int exitCode, String says, String... more) {
    List<String> args =
        new ArrayList<>(List.of("split", LANTERN, "--part", "Piano", "--staff", "1"));
    args.addAll(Arrays.asList(more));
    return new Case(exitCode, says, args);
  }

  @TestFactory
  Stream<DynamicTest> each_wrong_use_gets_one_message_and_its_exit_code() {
    return Stream.of(
            of(2, "Try:", "dance"),
            of(2, "--tempoo", "check", LANTERN, "--tempoo", "92"),
            of(3, "there is no such file", "check", "samples/nowhere.musicxml"),
            of(3, "is a folder", "check", "samples"),
            of(2, "no part \"Tuba\"", "check", LANTERN, "--part", "Tuba"),
            of(2, "no bar 99", "check", LANTERN, "--part", "Piano", "--bars", "99"),
            of(2, "go with --part", "check", LANTERN, "--bars", "5"),
            of(
                2,
                "no instrument \"zither of doom\"",
                "check",
                LANTERN,
                "--part",
                "P1",
                "--bars",
                "5",
                "--staff",
                "1",
                "--as",
                "zither of doom"),
            of(2, "a tempo lies between 1 and 2000", "check", LANTERN, "--tempo", "0"),
            of(
                2,
                "--tempo \"dotted banana = 92\": \"dotted banana\" is no note value",
                "check",
                LANTERN,
                "--tempo",
                "dotted banana = 92"),
            of(
                2,
                "choose one of their tones (--tone): top",
                "check",
                LANTERN,
                "--part",
                "P1",
                "--staff",
                "2",
                "--bars",
                "5",
                "--as",
                "harp"),
            of(2, "--tone is top", "check", LANTERN, "--part", "P1", "--tone", "middle"),
            of(2, "between 0 and 100", "check", LANTERN, "--assurance", "100"),
            of(2, "(the command limits lists them", "limits", "kazoo"),
            split(2, "is named twice", "--bars", "5-16", "--players", "Flute 1, Flute 1"),
            split(
                2,
                "plays no instrument that the limits know",
                "--bars",
                "5-16",
                "--players",
                "Anna"),
            split(
                2,
                "none of these players has a technique",
                "--bars",
                "5-16",
                "--players",
                "Flute 1",
                "--allow",
                "yodelling"),
            split(
                2,
                "--overlap \"0..2\": write MIN..MAX",
                "--bars",
                "5-16",
                "--players",
                "Flute 1",
                "--overlap",
                "0..2"),
            split(
                2,
                "--favour \"luck\": write balance, handoffs",
                "--bars",
                "5-16",
                "--players",
                "Flute 1",
                "--favour",
                "luck"),
            split(
                2,
                "--source \"burn\": write keep, cue or remove",
                "--bars",
                "5-16",
                "--players",
                "Flute 1",
                "--source",
                "burn"),
            split(2, "--ready", "--bars", "5-16", "--players", "Flute 1", "--ready", "-1"),
            split(
                3, "is the score itself", "--bars", "5-16", "--players", "Flute 1", "-o", LANTERN),
            split(1, "out of the range", "--bars", "5-16", "--players", "Contrabassoon 1, Tuba 1"),
            split(1, "No plan exists", "--bars", "5-16", "--players", "Oboe 1"))
        .map(c -> DynamicTest.dynamicTest(String.join(" ", c.args()), () -> refused(c)));
  }

  private static void refused(Case wrong) throws IOException {
    byte[] before = Files.readAllBytes(Path.of(LANTERN));
    Ran ran = Ran.command(wrong.args().toArray(String[]::new));
    String said = ran.err() + ran.out();
    assertEquals(wrong.exitCode(), ran.exitCode(), said);
    assertTrue(said.contains(wrong.says()), said);
    assertFalse(said.contains("Exception") || said.contains("\tat "), said);
    assertArrayEquals(before, Files.readAllBytes(Path.of(LANTERN)));
  }

  @Test
  void a_file_that_is_there_is_not_replaced_without_force() throws IOException {
    Path out = folder.resolve("mine.musicxml");
    Files.writeString(out, "precious");
    Ran ran = splitTo(out);
    assertEquals(3, ran.exitCode());
    assertTrue(ran.err().contains("exists already"), ran.err());
    assertEquals("precious", Files.readString(out));
    assertEquals(0, splitTo(out, "--force").exitCode());
    assertTrue(Files.readString(out).contains("Flute 2"));
  }

  @Test
  void a_folder_that_is_not_there_can_not_be_written_to_and_nothing_is_left_behind()
      throws IOException {
    Ran ran = splitTo(folder.resolve("no/such/folder.musicxml"));
    assertEquals(3, ran.exitCode());
    assertTrue(ran.err().contains("can't be written"), ran.err());
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(0, left.count());
    }
  }

  @Test
  void in_place_writes_into_the_score_itself() throws IOException {
    Path own = folder.resolve("own.musicxml");
    Files.copy(Path.of(LANTERN), own);
    Ran ran =
        Ran.command(
            "split",
            own.toString(),
            "--part",
            "Piano",
            "--staff",
            "1",
            "--bars",
            "5-16",
            "--players",
            "Flute 1, Flute 2",
            "--in-place");
    assertEquals(0, ran.exitCode(), ran.err());
    assertTrue(Files.readString(own).contains("<part-name>Flute 1</part-name>"));
  }

  @Test
  void a_bad_file_is_named_with_what_is_wrong_in_it() throws IOException {
    Path bad = folder.resolve("bad.musicxml");
    Files.write(bad, "<score-timewise version=\"4.0\"/>".getBytes(StandardCharsets.UTF_8));
    Ran ran = Ran.command("check", bad.toString());
    assertEquals(3, ran.exitCode());
    assertTrue(ran.err().startsWith(bad + ": ") && ran.err().contains("score-partwise"), ran.err());
  }

  @Test
  void tables_of_ones_own_are_validated_with_file_and_row() throws IOException {
    Files.writeString(
        folder.resolve("techniques.csv"),
        Files.readString(Path.of("limits/techniques.csv")).lines().findFirst().orElseThrow()
            + "\nflute,flutter,tongue,any,any,any,no,yes,fast,1,,,,,,me,D,\n");
    Ran ran = Ran.command("limits", "--validate", folder.toString());
    assertEquals(3, ran.exitCode());
    assertTrue(ran.out().contains("techniques.csv") && ran.out().contains("row 2"), ran.out());
    assertEquals(3, Ran.command("check", LANTERN, "--limits", folder.toString()).exitCode());
  }

  private Ran splitTo(Path out, String... more) {
    List<String> args =
        new ArrayList<>(
            List.of(
                "split",
                LANTERN,
                "--part",
                "Piano",
                "--staff",
                "1",
                "--bars",
                "5-16",
                "--players",
                "Flute 1, Flute 2",
                "-o",
                out.toString()));
    args.addAll(Arrays.asList(more));
    return Ran.command(args.toArray(String[]::new));
  }
}
