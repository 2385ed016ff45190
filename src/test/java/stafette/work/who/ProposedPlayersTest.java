package stafette.work.who;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stafette.ask.LineRequest;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.ask.TempoWish;
import stafette.keep.LimitsInForce;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.time.Rational;
import stafette.words.Refusal;

/** Who is proposed for a line. */
class ProposedPlayersTest {
  private static final Path LANTERN_RUN = Path.of("samples", "lantern-run.musicxml");

  @Test
  void where_the_score_has_nobody_winds_who_can_play_it_all_come_first() throws Refusal {
    assertEquals(
        List.of("Flute 1", "Flute 2"), proposed(LANTERN_RUN, "Piano", "5-16", 104).subList(0, 2));
  }

  @Test
  void where_nobody_can_play_it_somebody_is_proposed_all_the_same() throws Refusal {
    List<String> names = proposed(LANTERN_RUN, "Piano", "5-16", 300);
    assertEquals(4, names.size(), names.toString());
  }

  @Test
  void a_line_too_wide_for_anybody_goes_to_players_who_reach_it_together(@TempDir Path folder)
      throws Refusal, IOException {
    String narrow = Files.readString(LANTERN_RUN);
    int first = narrow.indexOf("<octave>", narrow.indexOf("<measure number=\"5\""));
    String wide = narrow.substring(0, first) + "<octave>2</octave>" + narrow.substring(first + 18);
    Path score = Files.writeString(folder.resolve("wide.musicxml"), wide);
    List<String> names = proposed(score, "Piano", "5-16", 104);
    assertTrue(names.size() > 1, names.toString());
    assertTrue(names.stream().anyMatch(name -> name.startsWith("Bassoon")), names.toString());
  }

  private static List<String> proposed(Path file, String part, String bars, int perMinute)
      throws Refusal {
    LineChoice choice =
        new LineChoice(
            part,
            Optional.of(new BarChoice(bars)),
            OptionalInt.of(1),
            Optional.empty(),
            Optional.empty());
    LineRequest line =
        LineRequest.whole(file)
            .with(choice)
            .with(new TempoWish(Optional.empty(), Rational.of(perMinute)));
    LimitsInForce limits = LimitsInForce.load(Optional.empty());
    SplitRequest usual = SplitRequest.usual(line);
    return WhoCouldPlay.of(usual, limits).into(usual).players().stream()
        .map(PlayerWish::name)
        .toList();
  }
}
