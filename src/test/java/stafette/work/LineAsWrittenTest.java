package stafette.work;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import stafette.ask.LineRequest;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.score.Tremolo;
import stafette.words.Refusal;

class LineAsWrittenTest {
  private static final Path SCORE = Path.of("samples", "signal-hill.musicxml");

  @Test
  void whoever_has_a_line_in_the_score_plays_all_of_it() throws Refusal {
    OpenLine line = LineAsWritten.in(score(), asked("Violin I", "13-17"), limits());
    Plan written = LineAsWritten.of(line).orElseThrow().plan();
    assertEquals(List.of("Violin I"), names(written));
    assertEquals(1, written.segments().size());
    assertEquals(line.line().count() - 1, written.segments().get(0).last());
  }

  @Test
  void those_who_are_asked_stand_below_it_with_what_they_have_to_play() throws Refusal {
    SplitRequest asked =
        asked("Violin I", "13-17").with(PlayerWish.parse("Flute 1, Violin I, Flute 2"), List.of());
    OpenLine line = OpenLine.in(score(), asked, limits());
    Plan written = LineAsWritten.of(line).orElseThrow().plan();
    assertEquals(List.of("Violin I", "Flute 1", "Flute 2"), names(written));
    assertEquals(line.brief().players().get(0).busy(), written.brief().players().get(1).busy());
    assertEquals(0, written.segments().get(0).player());
  }

  private static List<String> names(Plan plan) {
    return plan.brief().players().stream().map(Player::name).toList();
  }

  private static SplitRequest asked(String part, String bars) {
    LineChoice choice =
        new LineChoice(
            part,
            Optional.of(new BarChoice(bars)),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.empty());
    return SplitRequest.usual(LineRequest.whole(SCORE).with(choice));
  }

  private static OpenScore score() throws Refusal {
    return OpenScore.open(SCORE, Tremolo.AS_WRITTEN, false, limits());
  }

  private static LimitsInForce limits() throws Refusal {
    return LimitsInForce.load(Optional.empty());
  }
}
