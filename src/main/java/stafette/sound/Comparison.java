package stafette.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stafette.plan.Brief;
import stafette.plan.Halves;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.plan.Turn;
import stafette.time.Span;

/** The same line three times, so that the ear can say what a plan is worth. */
public final class Comparison {
  private static final long PAUSE_MICROS = 1_500_000;

  private Comparison() {}

  /**
   * By one player who has no limits, the first of the plan; by the plan without overlaps; by the
   * plan. A pause after each but the last.
   *
   * @param plan at its own tempo
   */
  public static Performance of(Plan plan, Span excerpt, Hearing hearing) {
    Stage stage = Stage.of(plan, hearing.seats());
    return Performance.of(byOne(plan), excerpt, hearing.with(Timing.WRITTEN), stage)
        .then(Performance.of(withoutOverlaps(plan), excerpt, hearing, stage), PAUSE_MICROS)
        .then(Performance.of(plan, excerpt, hearing, stage), PAUSE_MICROS);
  }

  /** Only the second of these: who enters begins after the landing note. */
  public static Performance withoutOverlaps(Plan plan, Span excerpt, Hearing hearing) {
    return Performance.of(withoutOverlaps(plan), excerpt, hearing, Stage.of(plan, hearing.seats()));
  }

  /** Each relay as one segment of the player who begins it. */
  public static Plan byOne(Plan plan) {
    List<Segment> segments = new ArrayList<>();
    for (List<Turn> relay : plan.relays()) {
      Segment first = relay.get(0).segments().get(0);
      segments.add(
          new Segment(
              first.relay(),
              first.player(),
              first.way(),
              0,
              plan.line(first).count() - 1,
              Pattern.ALL));
    }
    return new Plan(plan.brief(), segments);
  }

  /** Who enters begins after the landing note; a hocket pair keeps an overlap that it needs. */
  static Plan withoutOverlaps(Plan plan) {
    List<Segment> segments = new ArrayList<>();
    for (List<Turn> relay : plan.relays()) {
      int next = 0;
      for (Turn turn : relay) {
        int first = Math.max(turn.first(), next);
        int from = turn.isHocket() && !bothPlay(plan.brief(), turn, first) ? turn.first() : first;
        segments.addAll(beginning(plan.brief(), turn, from));
        next = turn.last() + 1;
      }
    }
    return new Plan(plan.brief(), segments);
  }

  private static boolean bothPlay(Brief brief, Turn turn, int first) {
    return brief.halves(turn.relay()).bothPlay(first, turn.last());
  }

  /** A turn that begins later; the two of a hocket pair keep the strokes that are theirs. */
  private static List<Segment> beginning(Brief brief, Turn turn, int first) {
    Halves halves = brief.halves(turn.relay());
    boolean swap = turn.isHocket() && halves.halfOf(first) != halves.halfOf(turn.first());
    return turn.segments().stream()
        .map(
            segment ->
                new Segment(
                    segment.relay(),
                    segment.player(),
                    segment.way(),
                    first,
                    segment.last(),
                    swap ? other(segment.pattern()) : segment.pattern()))
        .sorted(Comparator.comparing(segment -> segment.pattern() == Pattern.EVEN))
        .toList();
  }

  private static Pattern other(Pattern pattern) {
    return pattern == Pattern.ODD ? Pattern.EVEN : Pattern.ODD;
  }
}
