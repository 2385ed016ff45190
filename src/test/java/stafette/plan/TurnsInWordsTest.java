package stafette.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;

/** A plan told in one sentence. */
class TurnsInWordsTest {
  private static final Instrument FLUTE = Invented.instrument("flute");
  private static final int PER_BEAT = 4;
  private static final int PER_BAR = 4 * PER_BEAT;

  @Test
  void equal_turns_in_a_fixed_order_are_a_rotation() {
    Line line = Invented.line(6, PER_BEAT, 120);
    assertEquals(
        "Flute 1, 2, 3 in rotation, a bar each (6 turns)",
        said(
            line, List.of("Flute 1", "Flute 2", "Flute 3"), bars(1, 2, 3, 4, 5), 0, 1, 2, 0, 1, 2));
    assertEquals(
        "Flute 1, 2, Oboe one after the other, 2 bars each (3 turns)",
        said(line, List.of("Flute 1", "Flute 2", "Oboe"), bars(2, 4), 0, 1, 2));
    assertEquals(
        "Flute 1, Oboe 1 in turn, 2 bars each (3 turns)",
        said(line, List.of("Flute 1", "Oboe 1"), bars(2, 4), 0, 1, 0));
  }

  @Test
  void any_other_order_is_called_changing_and_once_each_is_one_after_the_other() {
    Line line = Invented.line(4, PER_BEAT, 120);
    List<String> names = List.of("Flute 1", "Flute 2", "Flute 3");
    assertEquals(
        "Flute 1, 2, 3 in changing order, a bar each (4 turns)",
        said(line, names, bars(1, 2, 3), 0, 1, 2, 1));
    assertEquals(
        "Flute 3, 1 one after the other, 2 bars each (2 turns)", said(line, names, bars(2), 2, 0));
    assertEquals("Flute 2 alone", said(line, names, List.of(), 1));
  }

  @Test
  void lengths_are_told_in_the_largest_unit_that_turns_keep_to() {
    Line line = Invented.line(14, PER_BEAT, 120);
    List<String> two = List.of("Flute 1", "Flute 2");
    assertEquals(
        "Flute 1, 2 in turn, 4 bars each, the last 2 (4 turns)",
        said(line, two, bars(4, 8, 12), 0, 1, 0, 1));
    assertEquals(
        "Flute 1, 2 in turn, 4, 2, 4 and 4 bars (4 turns)",
        said(line, two, bars(4, 6, 10), 0, 1, 0, 1));
    Line one = Invented.line(2, PER_BEAT, 120);
    assertEquals(
        "Flute 1, 2 in turn, half a bar each (4 turns)",
        said(one, two, List.of(8, 16, 24), 0, 1, 0, 1));
    assertEquals(
        "Flute 1, 2 in turn, a beat each (8 turns)",
        said(one, two, List.of(4, 8, 12, 16, 20, 24, 28), 0, 1, 0, 1, 0, 1, 0, 1));
    assertEquals(
        "Flute 1, 2 in turn, 1, 2, 4 and 1 beats (4 turns)",
        said(one, two, List.of(4, 12, 28), 0, 1, 0, 1));
    assertEquals(
        "Flute 1, 2 one after the other, 12 to 21 notes each (2 turns)",
        said(one, two, List.of(11), 0, 1));
  }

  @Test
  void a_pickup_joins_the_first_turn() {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 12; i < 5 * PER_BAR; i++) {
      strokes.add(
          Invented.stroke(
              Position.ofQuarters(i, PER_BEAT), Length.ofQuarters(1, PER_BEAT), Invented.A4));
    }
    Line line = Invented.lineOf(strokes, 120);
    assertEquals(
        "Flute 1, 2 one after the other, 2 bars each (2 turns)",
        said(line, List.of("Flute 1", "Flute 2"), List.of(4 + 2 * PER_BAR), 0, 1));
  }

  @Test
  void hocket_pairs_are_told_with_what_they_take_in_turn() {
    Line line = Invented.line(4, PER_BEAT, 120);
    Plan alone = new Plan(brief(line, Hocket.BEAT), List.of(odd(0, 0, 0, 63), even(0, 1, 0, 63)));
    assertEquals("Flute 1 and Flute 2, in turn by the beat", TurnsInWords.of(alone).toString());
    Plan then =
        new Plan(
            brief(line, Hocket.BEAT),
            List.of(odd(0, 0, 0, 32), even(0, 1, 0, 32), new Segment(2, 0, 32, 63)));
    assertEquals(
        "Flute 1 and Flute 2, Flute 3 one after the other, 2 bars each (2 turns); pairs in turn by"
            + " the beat",
        TurnsInWords.of(then).toString());
  }

  @Test
  void several_relays_are_told_one_after_the_other() {
    Line line = Invented.line(4, PER_BEAT, 120);
    Brief brief =
        new Brief(List.of(line, line), brief(line, Hocket.NO).players(), Invented.rules());
    Plan plan =
        new Plan(
            brief,
            List.of(
                new Segment(0, 0, 0, 32),
                new Segment(1, 0, 32, 63),
                new Segment(1, 2, 0, 0, 63, Pattern.ALL)));
    assertEquals(
        "relay 1: Flute 1, 2 one after the other, 2 bars each (2 turns); relay 2: Flute 3 alone",
        TurnsInWords.of(plan).toString());
  }

  private static Segment odd(int relay, int player, int first, int last) {
    return new Segment(relay, player, 0, first, last, Pattern.ODD);
  }

  private static Segment even(int relay, int player, int first, int last) {
    return new Segment(relay, player, 0, first, last, Pattern.EVEN);
  }

  private static Brief brief(Line line, Hocket hocket) {
    return new Brief(
        line,
        Stream.of("Flute 1", "Flute 2", "Flute 3")
            .map(name -> Invented.player(name, FLUTE, 20, 20, 99, 1))
            .toList(),
        Invented.rules().with(hocket));
  }

  @Test
  void entries_are_told_by_bar_and_beat() {
    Line line = Invented.line(4, PER_BEAT, 120);
    Plan plan = plan(line, List.of("Flute 1", "Flute 2"), List.of(24, 2 * PER_BAR), 0, 1, 0);
    assertEquals("Flute 1 from 1.1, Flute 2 from 2.3", TurnsInWords.entries(plan, 2).toString());
  }

  private static List<Integer> bars(int... at) {
    return Arrays.stream(at).map(bar -> bar * PER_BAR).boxed().toList();
  }

  private static String said(
      Line line, List<String> names, List<Integer> landings, Integer... players) {
    return TurnsInWords.of(plan(line, names, landings, players)).toString();
  }

  /** Players one after the other, each landing where the next one enters. */
  private static Plan plan(
      Line line, List<String> names, List<Integer> landings, Integer... players) {
    List<Player> all =
        names.stream().map(name -> Invented.player(name, FLUTE, 20, 20, 99, 1)).toList();
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < players.length; i++) {
      int first = i == 0 ? 0 : landings.get(i - 1);
      int last = i < landings.size() ? landings.get(i) : line.count() - 1;
      segments.add(new Segment(players[i], 0, first, last));
    }
    return new Plan(new Brief(line, all, Invented.rules()), segments);
  }
}
