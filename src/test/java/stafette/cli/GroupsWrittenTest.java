package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.read.Xml;
import stafette.time.Bar;
import stafette.time.Length;

/** Bars of 7/8 are shared out and written by the groups of their beams. */
class GroupsWrittenTest {
  private static final String SEVEN =
      "<attributes><divisions>12</divisions><time><beats>7</beats><beat-type>8</beat-type></time>"
          + "</attributes><sound tempo=\"120\"/>";

  @TempDir private Path folder = Path.of("");

  @Test
  void a_new_part_has_the_beams_of_the_line_that_was_taken_out() throws Exception {
    Path out = folder.resolve("out.musicxml");
    Ran ran = split(out, 4, 4, 6);
    assertEquals(0, ran.exitCode(), ran.err() + ran.out());
    Bar bar = MusicXmlReader.read(Files.readAllBytes(out)).score().bars().get(1);
    assertEquals(
        List.of(Length.QUARTER, Length.QUARTER, Length.ofQuarters(3, 2)), bar.counted().beats());
  }

  @Test
  void a_group_of_four_eighths_may_be_written_as_two_and_two() throws Exception {
    Path out = folder.resolve("out.musicxml");
    Ran ran = split(out, 8, 6);
    assertEquals(0, ran.exitCode(), ran.err() + ran.out());
    assertTrue(ran.out().contains("Flute 1: new part"), ran.out());
  }

  private Ran split(Path out, Integer... groups) throws Exception {
    String bar = Stream.of(groups).map(GroupsWrittenTest::beamed).collect(Collectors.joining());
    String text = Xml.scoreOf("<part-name>Piano</part-name>", SEVEN + bar, bar, bar);
    return Ran.command(
        "split",
        Files.writeString(folder.resolve("seven.musicxml"), text).toString(),
        "--part",
        "Piano",
        "--players",
        "Flute 1, Flute 2",
        "--source",
        "remove",
        "-o",
        out.toString());
  }

  private static String beamed(int notes) {
    return IntStream.range(0, notes)
        .mapToObj(i -> i == 0 ? "begin" : i == notes - 1 ? "end" : "continue")
        .map(state -> Xml.note("A", 4, 3, "<beam number=\"1\">" + state + "</beam>"))
        .collect(Collectors.joining());
  }
}
