package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;

/**
 * What a player hears just before each entry: the last beat of who came before, where that is no
 * more than a bar away and the player itself is silent.
 */
final class Cues {
  private Cues() {}

  /**
   * One of them.
   *
   * @param span from the beginning of the beat to the entry
   * @param plays what is played there
   */
  record Cue(Span span, List<Played> plays) {}

  static List<Cue> of(Plan plan, int player) {
    List<Cue> cues = new ArrayList<>();
    for (Handoff handoff : plan.handoffs()) {
      if (handoff.enters().has(player) && !handoff.leaves().has(player)) {
        before(plan, player, handoff)
            .filter(cue -> isSilent(plan, player, cue.span()))
            .ifPresent(cues::add);
      }
    }
    return cues;
  }

  private static Optional<Cue> before(Plan plan, int player, Handoff handoff) {
    Segment enters =
        handoff.enters().segments().stream()
            .filter(segment -> segment.player() == player)
            .findFirst()
            .orElseThrow();
    Played own = plan.played(enters);
    Position entry = own.line().stroke(own.first()).onset();
    List<Played> all = handoff.leaves().segments().stream().map(plan::played).toList();
    return all.stream()
        .flatMap(played -> lastBefore(played, entry).stream())
        .max(Comparator.naturalOrder())
        .flatMap(last -> cue(own.line().bars().at(last), last, entry, all))
        .filter(cue -> isNear(own.line(), cue.span().start(), entry));
  }

  private static Optional<Cue> cue(Bar bar, Position last, Position entry, List<Played> all) {
    Position beat = bar.beatStart(last);
    Position from = beat.isBefore(bar.span().start()) ? bar.span().start() : beat;
    Span span = new Span(from, entry);
    List<Played> plays = all.stream().flatMap(played -> within(played, span).stream()).toList();
    return Optional.of(new Cue(span, plays));
  }

  private static boolean isNear(Line line, Position from, Position entry) {
    return line.bars().at(entry).index() - line.bars().at(from).index() <= 1;
  }

  private static Optional<Position> lastBefore(Played played, Position entry) {
    for (int j = played.last(); j >= played.first(); j--) {
      Position onset = played.line().stroke(j).onset();
      if (onset.isBefore(entry)) {
        return Optional.of(onset);
      }
    }
    return Optional.empty();
  }

  private static Optional<Played> within(Played played, Span span) {
    int first = played.first();
    while (first <= played.last() && played.line().stroke(first).onset().isBefore(span.start())) {
      first++;
    }
    int last = played.last();
    while (last >= first && !played.line().stroke(last).onset().isBefore(span.end())) {
      last--;
    }
    return last < first ? Optional.empty() : Optional.of(new Played(played.line(), first, last));
  }

  private static boolean isSilent(Plan plan, int player, Span span) {
    Line line = plan.line();
    long from = line.micros(span.start());
    long to = line.micros(span.end());
    return plan.brief().players().get(player).busy().stream()
            .noneMatch(busy -> busy.fromMicros() < to && from < busy.toMicros())
        && plan.segmentsOf(player).stream()
            .map(plan::played)
            .noneMatch(played -> within(played, span).isPresent());
  }
}
