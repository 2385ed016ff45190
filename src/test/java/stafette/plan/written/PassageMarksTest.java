package stafette.plan.written;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Joins;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.plan.written.PassageMarks.MarkedDynamic;
import stafette.plan.written.PassageMarks.Swell;
import stafette.score.Dynamic;
import stafette.score.Expression;
import stafette.score.Hairpin;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Span;

/** What stands beside the notes of a turn; lines have sixteen notes to the bar. */
class PassageMarksTest {
  private static final int BAR = 16;

  @Test
  void a_dynamic_stands_at_the_first_entry_and_then_where_it_has_changed() {
    Line line = line(8, bar -> bar < 4 ? Dynamic.MF : Dynamic.P);
    assertEquals(
        List.of("bar 1 MF", "bar 7 P"),
        dynamics(turns(line, player("Flute 1"), 1, 3, 7), WrittenAs.plain(SourceTreatment.KEEP)));
  }

  @Test
  void a_dynamic_that_others_have_left_and_come_back_to_stands_again() {
    Line line = line(8, bar -> bar == 4 ? Dynamic.F : Dynamic.MF);
    assertEquals(
        List.of("bar 1 MF", "bar 7 MF"),
        dynamics(turns(line, player("Flute 1"), 1, 3, 7), WrittenAs.plain(SourceTreatment.KEEP)));
  }

  @Test
  void a_dynamic_stands_again_after_more_than_eight_bars_of_rest() {
    Line line = line(24, bar -> Dynamic.MF);
    assertEquals(
        List.of("bar 1 MF", "bar 20 MF"),
        dynamics(turns(line, player("Flute 1"), 1, 10, 20), WrittenAs.plain(SourceTreatment.KEEP)));
  }

  @Test
  void a_dynamic_stands_again_after_something_else_of_the_players_part() {
    Line line = line(8, bar -> Dynamic.MF);
    long from = line.onsetMicros(3 * BAR);
    Player busy =
        player("Flute 1").busyWith(List.of(new GivenStretch(from, from + 100_000, List.of(from))));
    assertEquals(
        List.of("bar 1 MF", "bar 7 MF"),
        dynamics(turns(line, busy, 1, 3, 7), WrittenAs.plain(SourceTreatment.KEEP)));
  }

  @Test
  void who_enters_shaded_is_told_at_each_entry_and_where_it_is_alone() {
    Line line = line(4, bar -> Dynamic.MF);
    Plan plan =
        new Plan(
            new Brief(line, List.of(player("Flute 1"), player("Flute 2")), Invented.rules()),
            List.of(
                new Segment(0, 0, 0, BAR),
                new Segment(1, 0, BAR, 2 * BAR),
                new Segment(0, 0, 2 * BAR, 4 * BAR - 1)));
    WrittenAs shaded = new WrittenAs(SourceTreatment.KEEP, Joins.SHADED, false, false);
    assertEquals(List.of("bar 1 MF", "bar 3 MP", "bar 3 MF"), dynamics(plan, shaded));
  }

  @Test
  void a_hairpin_over_a_join_is_divided_and_both_ends_have_what_it_has_reached() {
    Line plain = line(4, bar -> bar == 1 ? Dynamic.P : Dynamic.F);
    Span swell = new Span(plain.stroke(0).onset(), plain.stroke(BAR).onset());
    Hairpin hairpin = new Hairpin(swell, 1, true, Optional.empty(), false, Optional.of(Dynamic.F));
    Line line = plain.expressed(new Expression(List.of(hairpin), List.of(), List.of(), List.of()));
    Plan plan =
        new Plan(
            new Brief(line, List.of(player("Flute 1"), player("Flute 2")), Invented.rules()),
            List.of(new Segment(0, 0, 0, 8), new Segment(1, 0, 8, 4 * BAR - 1)));
    WrittenAs how = WrittenAs.plain(SourceTreatment.KEEP);
    assertEquals(List.of("bar 1 P", "bar 1 MF"), dynamics(plan, how));
    PassageMarks entering = marks(plan, 1, how).get(0);
    assertEquals(
        List.of(Dynamic.MF, Dynamic.F),
        entering.dynamics().stream().map(MarkedDynamic::dynamic).toList());
    assertEquals(
        List.of(line.stroke(8).onset()),
        entering.swells().stream().map(Swell::span).map(Span::start).toList());
  }

  private static List<String> dynamics(Plan plan, WrittenAs how) {
    return marks(plan, 0, how).stream()
        .flatMap(marks -> marks.dynamics().stream())
        .map(mark -> "bar " + plan.line().bars().at(mark.at()).number() + " " + mark.dynamic())
        .toList();
  }

  private static List<PassageMarks> marks(Plan plan, int player, WrittenAs how) {
    Landings landings = Landings.of(plan, player);
    return PassageMarks.all(WrittenPassage.all(plan, player, landings, how, Map.of()), landings);
  }

  /** Turns of a bar each. */
  private static Plan turns(Line line, Player player, int... bars) {
    List<Segment> segments = new ArrayList<>();
    for (int bar : bars) {
      segments.add(new Segment(0, 0, (bar - 1) * BAR, bar * BAR - 1));
    }
    return new Plan(new Brief(line, List.of(player), Invented.rules()), segments);
  }

  private static Line line(int bars, IntFunction<Dynamic> dynamic) {
    Line plain = Invented.line(bars, 4, 60);
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < plain.count(); i++) {
      Stroke stroke = plain.stroke(i);
      strokes.add(
          new Stroke(
              stroke.onset(),
              stroke.tones(),
              stroke.values(),
              stroke.graces(),
              stroke.slurred(),
              stroke.slurContinues(),
              stroke.measured(),
              stroke.articulations(),
              dynamic.apply(i / BAR + 1),
              stroke.manner()));
    }
    return plain.of(strokes, Collections.nCopies(plain.count(), 0));
  }

  private static Player player(String name) {
    return Invented.player(name, Invented.instrument("flute"), 30, 30, 1000, 100);
  }
}
