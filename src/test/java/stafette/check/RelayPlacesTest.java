package stafette.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.plan.Brief;
import stafette.plan.Hocket;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Segment;
import stafette.score.Line;

/** Findings about a player of several relays are named by the line in which they are. */
class RelayPlacesTest {
  private static final Line WHOLE = Invented.line(2, 4, 60);
  private static final Line SHORT = only(0, 2);
  private static final Line LONG = only(2, 30);

  private static Line only(int from, int to) {
    return WHOLE.only(IntStream.range(from, to).boxed().toList(), false);
  }

  private static Player flute(String name, double sustained) {
    return Invented.player(name, Invented.instrument("flute"), 13, sustained, 1, 8);
  }

  /** What is found where Flute 1 has the short line and one of the two the long one. */
  private static List<String> findings(int player, double sustained) {
    List<Player> players = List.of(flute("Flute 1", 8), flute("Flute 2", sustained));
    List<Segment> segments =
        List.of(
            new Segment(0, 0, 0, 0, 1, Pattern.ALL), new Segment(1, player, 0, 0, 27, Pattern.ALL));
    Brief brief = new Brief(List.of(SHORT, LONG), players, Invented.rules());
    return Judge.judge(new Plan(brief, segments)).findings().stream()
        .map(finding -> finding.kind() + " " + finding.place())
        .toList();
  }

  @Test
  void too_short_a_rest_is_named_in_the_second_line() {
    assertEquals(List.of("REST Flute 1, bar 1, second half of beat 1"), findings(0, 8));
  }

  @Test
  void tiredness_is_named_by_a_stroke_of_the_second_line() {
    assertEquals(List.of("TIREDNESS Flute 2, bar 1, second quarter of beat 2"), findings(1, 2.5));
  }

  @Test
  void who_takes_part_in_a_hocket_plays_in_no_other_relay_even_before_a_note_of_their_own() {
    Line line = Invented.line(1, 4, 60);
    Rules rules = Invented.rules().with(Hocket.BEAT);
    List<Player> players = List.of(flute("Flute 1", 8), flute("Flute 2", 8), flute("Flute 3", 8));
    Plan plan =
        new Plan(
            new Brief(List.of(line, line), players, rules),
            List.of(
                new Segment(0, 0, 0, 0, 15, Pattern.ODD),
                new Segment(0, 1, 0, 0, 15, Pattern.EVEN),
                new Segment(1, 1, 0, 0, 2, Pattern.ALL),
                new Segment(1, 2, 0, 2, 15, Pattern.ALL)));
    assertEquals(
        List.of(
            "Flute 2, bar 1, beat 1: takes part in a hocket of another relay meanwhile; let somebody else play here"),
        Judge.judge(plan).findings().stream()
            .filter(finding -> finding.kind() == Finding.FindingKind.REST)
            .map(finding -> finding.message().toString())
            .filter(message -> message.contains("hocket"))
            .toList());
  }
}
