package stafette.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import stafette.limits.Assurance;
import stafette.musicxml.MusicXmlReader;
import stafette.musicxml.UnreadableScore;
import stafette.score.Score;
import stafette.tables.LimitTables;

/** Fast passages in our own samples and in scores made up here. */
class PassagesTest {
  private static final double SLOWEST_WIND = 6.5;

  @Test
  void lantern_run_has_one_fast_passage_from_bar_5() throws IOException, UnreadableScore {
    assertEquals(List.of("Piano 1: 283 from bar 5, beat 1"), describe("lantern-run"));
  }

  private static List<String> describe(String file) throws IOException, UnreadableScore {
    Score score =
        MusicXmlReader.read(Files.readAllBytes(Path.of("samples", file + ".musicxml"))).score();
    return Passages.in(
            score, LimitTables.builtIn().catalogue()::of, Assurance.DEFAULT, SLOWEST_WIND)
        .stream()
        .map(
            passage ->
                passage.part().name()
                    + " "
                    + passage.voice().name()
                    + ": "
                    + passage.line().count()
                    + " from "
                    + passage.line().placeOf(0).at())
        .toList();
  }
}
