package stafette.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.BeatUnit;
import stafette.time.Landmarks;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

/** Sixteenths in 7/8, by players who can't go on for a whole bar. */
class HandoffsOnGroupsTest {
  private static final Meter SEVEN = Meter.of(List.of(7), 8);
  private static final int BAR = 14;
  private static final int BARS = 6;

  @Test
  void players_enter_where_a_group_begins() {
    assertEquals(Set.of(0, 4, 8), entries(Meter.of(List.of(2, 2, 3), 8)));
    assertEquals(Set.of(0, 6, 10), entries(Meter.of(List.of(3, 2, 2), 8)));
  }

  @Test
  void they_enter_on_any_eighth_where_nobody_knows_the_groups() {
    assertTrue(entries(SEVEN).stream().anyMatch(place -> !Set.of(0, 4, 6, 8, 10).contains(place)));
  }

  /** Where in the bar those enter who take over, in sixteenths. */
  private static Set<Integer> entries(Meter counted) {
    Instrument flute = Invented.instrument("flute");
    List<Player> players =
        Stream.of("Flute 1", "Flute 2", "Flute 3")
            .map(name -> Invented.player(name, flute, 14, 4, 6, 1))
            .toList();
    Brief brief = new Brief(line(counted), players, Invented.rules());
    SplitResult result = Splitter.split(brief, new Workbench(), () -> false, progress -> {});
    Plan plan = ((SplitResult.Best) result).plan();
    return plan.handoffs().stream()
        .map(handoff -> handoff.enters().first() % BAR)
        .collect(Collectors.toSet());
  }

  private static Line line(Meter counted) {
    List<Bar> bars = new ArrayList<>();
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < BARS; i++) {
      Span span = Span.of(Position.ofQuarters(7L * i, 2), SEVEN.length());
      bars.add(
          new Bar(i, Integer.toString(i + 1), span, SEVEN, Length.ZERO, counted, Landmarks.NONE));
      for (int j = 0; j < BAR; j++) {
        Position onset = span.start().plus(Length.ofQuarters(j, 4));
        strokes.add(Invented.stroke(onset, Length.ofQuarters(1, 4), Invented.A4));
      }
    }
    return new Line(
        new LineSource("P1", "Piano", 1, "1", new ToneChoice.All(), 0, BARS - 1),
        strokes,
        Collections.nCopies(strokes.size(), 0),
        new Bars(bars),
        TempoMap.constant(new TempoMark(BeatUnit.QUARTER, Rational.of(156))));
  }
}
