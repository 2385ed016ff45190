package stafette.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.Invented;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Seat;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.score.Stroke;
import stafette.time.Rational;

/** Relays made up for sound: pipes, whose program is that of a flute. */
final class InventedRelay {
  private InventedRelay() {}

  /**
   * Players in turn, so many strokes each, sharing so many with the next.
   *
   * @param strokes sixteenths at quarter = 120, so that each lasts 125 ms
   */
  static Plan of(int strokes, int players, int each, int shared, IntFunction<Pitch> pitch) {
    return of(Invented.line(strokes, 4, 120, pitch), players, each, shared);
  }

  static Plan of(Line line, int players, int each, int shared) {
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i * each < line.count(); i++) {
      int last = Math.min(line.count(), (i + 1) * each) - 1;
      int first = i == 0 ? 0 : i * each - shared;
      segments.add(new Segment(i % players, 0, first, last));
    }
    return new Plan(new Brief(line, players(players), Invented.rules()), segments);
  }

  static List<Player> players(int count) {
    Instrument pipe = Invented.instrument("pipe");
    return IntStream.rangeClosed(1, count)
        .mapToObj(i -> Invented.player("Piper " + i, pipe, 13, 10, 100, 8))
        .toList();
  }

  /** One piper, with a part in the score, plays all of some strokes. */
  static Plan piperOf(String part, List<Stroke> strokes) {
    Player piper = players(1).get(0);
    Player own =
        new Player(
            piper.name(), piper.instrument(), Optional.of(part), piper.skills(), piper.busy());
    return new Plan(
        Invented.brief(Invented.lineOf(strokes, 120), own),
        List.of(new Segment(0, 0, 0, strokes.size() - 1)));
  }

  /** White keys up and down from C5. */
  static Pitch scale(int i) {
    int step = Math.floorMod(i, 12);
    int up = step < 7 ? step : 12 - step;
    return new Pitch(Step.values()[up], 0, 5);
  }

  static Hearing hearing(Plan plan, Timing timing) {
    return new Hearing(
        Rational.ONE,
        timing,
        Map.of(),
        IntStream.range(0, plan.brief().players().size()).boxed().collect(Collectors.toSet()),
        Optional.empty());
  }

  static Performance whole(Plan plan, Timing timing) {
    return Performance.of(plan, Excerpts.whole(plan), hearing(plan, timing));
  }

  /** The first two players at such places across the stage, both at its front. */
  static Hearing seated(Hearing hearing, double first, double second) {
    return new Hearing(
        hearing.speed(),
        hearing.timing(),
        Map.of("Piper 1", new Seat(first, 0), "Piper 2", new Seat(second, 0)),
        hearing.heard(),
        hearing.rest());
  }
}
