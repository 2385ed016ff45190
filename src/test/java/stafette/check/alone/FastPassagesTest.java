package stafette.check.alone;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Assurance;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.text.UnreadableScore;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Voice;
import stafette.tables.LimitTables;

/** Fast passages in our own samples and in scores made up here. */
class FastPassagesTest {
  private static final double SLOWEST_WIND = 6.5;

  @Test
  void lantern_run_has_one_fast_passage_from_bar_5() throws IOException, UnreadableScore {
    assertEquals(List.of("Piano 1: 283 from bar 5, beat 1"), describe("lantern-run"));
  }

  /** In bar 11 the trumpet's first sixteenth is tied; a rest and single notes part the others. */
  @Test
  void signal_hill_has_fast_trumpets_a_trembling_harp_and_strings()
      throws IOException, UnreadableScore {
    assertEquals(
        List.of(
            "Trumpet 1 1: 24 from bar 9, beat 1",
            "Trumpet 1 1: 21 from bar 11, second sixth of beat 1",
            "Trumpet 1 1: 30 from bar 13, beat 1",
            "Trumpet 1 1: 53 from bar 15, second sixth of beat 2",
            "Harp 1: 64 from bar 25, beat 1",
            "Violin I 1: 49 from bar 13, beat 1",
            "Viola 1: 49 from bar 13, beat 1"),
        describe("signal-hill"));
  }

  /** 0.7 of 10 a second is 7: 105 quarters of four sixteenths. */
  @Test
  void eight_strokes_above_seven_tenths_of_the_peak_are_a_passage() {
    assertEquals(1, passages(8, 106).size());
    assertEquals(0, passages(8, 105).size());
    assertEquals(0, passages(7, 106).size());
  }

  private static List<Passage> passages(int strokes, long quartersPerMinute) {
    Line line = Invented.line(strokes, 4, quartersPerMinute, i -> Invented.A4);
    Part part = new Part("P1", "Unknown", List.of(), List.of(new Voice(1, "1", line.strokes())));
    Score score = new Score(Optional.empty(), List.of(part), line.bars(), line.tempo(), true);
    return FastPassages.in(score, any -> Optional.empty(), Assurance.DEFAULT, 10);
  }

  private static List<String> describe(String file) throws IOException, UnreadableScore {
    Score score =
        MusicXmlReader.read(Files.readAllBytes(Path.of("samples", file + ".musicxml"))).score();
    return FastPassages.in(
            score, LimitTables.builtIn().catalogue()::of, Assurance.DEFAULT, SLOWEST_WIND)
        .stream()
        .map(
            passage ->
                passage.part().name()
                    + " "
                    + passage.line().source().strands().voiceText()
                    + ": "
                    + passage.line().count()
                    + " from "
                    + passage.line().placeOf(0).at())
        .toList();
  }
}
