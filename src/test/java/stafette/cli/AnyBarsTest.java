package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bars that begin off the beat, or are shorter or longer than their metre, bear every command. */
class AnyBarsTest {
  @TempDir private Path folder = Path.of("");

  /** Sixteenths that a bar holds, and whether it is marked as not counted. */
  private record Written(int sixteenths, boolean implicit, int upper, int lower) {}

  @Test
  void a_pickup_of_two_sixteenths_is_checked_and_split() throws IOException {
    everyCommand(folder, List.of(new Written(2, true, 4, 4), full(), full(), full()));
  }

  @Test
  void an_unmarked_first_bar_that_is_a_sixteenth_short_is_checked_and_split() throws IOException {
    everyCommand(folder, List.of(new Written(15, false, 4, 4), full(), full(), full()));
  }

  @Property(tries = 10)
  void bars_of_any_length_bear_every_command(@ForAll("bars") List<Written> bars)
      throws IOException {
    Path own = Files.createTempDirectory("bars");
    everyCommand(own, bars);
    Leftovers.remove(own);
  }

  @Provide
  Arbitrary<List<Written>> bars() {
    return Combinators.combine(
            Arbitraries.integers().between(1, 20),
            Arbitraries.of(true, false),
            Arbitraries.of(1, 2, 3, 4, 5, 6, 9),
            Arbitraries.of(2, 4, 8, 16))
        .as(Written::new)
        .list()
        .ofMinSize(3)
        .ofMaxSize(7);
  }

  private static Written full() {
    return new Written(16, false, 4, 4);
  }

  private static void everyCommand(Path folder, List<Written> bars) throws IOException {
    Path score = folder.resolve("bars.musicxml");
    Path written = folder.resolve("written.musicxml");
    Files.writeString(score, text(bars));
    byte[] before = Files.readAllBytes(score);
    List<String> line = List.of("--part", "Flute", "--players", "Flute 1, Oboe 1, Violin 1");
    ran("check", score);
    ran("split", score, line, "-o", written.toString(), "--force");
    if (Files.exists(written)) {
      assertTrue(ran("check", written).err().isEmpty());
    }
    ran(
        "preview",
        score,
        line,
        "--timeline",
        folder.resolve("a.svg").toString(),
        "--notes",
        "--force");
    ran(
        "preview",
        score,
        line,
        "--sound",
        folder.resolve("a.mid").toString(),
        "--with-score",
        "--force");
    ran("thin", score, line, "-o", folder.resolve("thin.musicxml").toString(), "--force");
    ran("tempo", score, line, "--tempi", "100-120/20");
    assertArrayEquals(before, Files.readAllBytes(score));
  }

  private static Ran ran(String command, Path score, List<String> line, String... more) {
    List<String> all = new ArrayList<>(line);
    all.addAll(List.of(more));
    return ran(command, score, all.toArray(String[]::new));
  }

  private static Ran ran(String command, Path score, String... more) {
    List<String> all = new ArrayList<>(List.of(command, score.toString()));
    all.addAll(List.of(more));
    Ran ran = Ran.command(all.toArray(String[]::new));
    assertTrue(
        ran.exitCode() == Commands.FINE || ran.exitCode() == Commands.FINDINGS,
        () -> all + ": " + ran.exitCode() + ": " + ran.err());
    return ran;
  }

  private static String text(List<Written> bars) {
    StringBuilder text =
        new StringBuilder(
            "<score-partwise><part-list><score-part id=\"P1\"><part-name>Flute</part-name>"
                + "</score-part></part-list><part id=\"P1\">");
    for (int i = 0; i < bars.size(); i++) {
      Written bar = bars.get(i);
      text.append("<measure number=\"%d\"%s>".formatted(i, bar.implicit ? " implicit=\"yes\"" : ""))
          .append(
              "<attributes><divisions>4</divisions><time><beats>%d</beats>".formatted(bar.upper))
          .append("<beat-type>%d</beat-type></time></attributes>".formatted(bar.lower))
          .append("<sound tempo=\"%d\"/>".formatted(150 - 7 * i))
          .append(
              ("<note><pitch><step>A</step><octave>5</octave></pitch><duration>1</duration>"
                      + "<voice>1</voice><type>16th</type></note>")
                  .repeat(bar.sixteenths))
          .append("</measure>");
    }
    return text.append("</part></score-partwise>").toString();
  }
}
