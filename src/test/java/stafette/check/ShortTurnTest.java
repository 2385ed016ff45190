package stafette.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.split.SplitResult;
import stafette.split.Splitter;

/** No relay gets round a rate that is beyond its players. */
class ShortTurnTest {
  private static final Instrument PIPE = Invented.instrument("pipe");

  /** Sixteenths at 150 are ten a second. */
  private static final Line LINE = Invented.line(2, 4, 150);

  /** Two gaps at ten a second need 2/9 s less a fifth: within a burst, not as a turn. */
  @Test
  void a_turn_of_three_notes_needs_the_time_that_a_longer_one_would() {
    Player one = Invented.player("One", PIPE, 9, 8, 20, 8);
    Player two = Invented.player("Two", PIPE, 11, 10, 20, 8);
    Brief brief = Invented.brief(LINE, one, two);
    Plan plan = new Plan(brief, List.of(new Segment(0, 0, 0, 2), new Segment(1, 0, 2, 31)));
    assertEquals(
        List.of(Finding.FindingKind.TURN),
        Judge.judge(plan).findings().stream().map(Finding::kind).toList());
    Plan longer = new Plan(brief, List.of(new Segment(1, 0, 0, 28), new Segment(0, 0, 28, 31)));
    assertEquals(
        Finding.FindingKind.TURN, Judge.judge(longer).findings().get(0).kind(), "the last too");
  }

  @Test
  void players_who_are_too_slow_do_not_share_a_line_out_in_threes() {
    List<Player> four =
        List.of(1, 2, 3, 4).stream()
            .map(i -> Invented.player("Player " + i, PIPE, 9, 8, 20, 0.1))
            .toList();
    Brief brief = new Brief(LINE, four, Invented.rules().withReady(0));
    assertEquals(SplitResult.None.class, Splitter.split(brief, () -> false).getClass());
  }

  @Test
  void a_close_pair_within_a_longer_turn_is_nothing() {
    Line pair = Invented.line(8, 2, 60, i -> Invented.A4);
    Player slow = Invented.player("Slow", PIPE, 3, 2.5, 20, 8);
    Plan plan = new Plan(Invented.brief(pair, slow), List.of(new Segment(0, 0, 0, 7)));
    assertEquals(List.of(), Judge.judge(plan).findings());
  }
}
