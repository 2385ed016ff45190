package stafette.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.time.Position;
import stafette.time.TempoMap;
import stafette.time.TempoMark;

/**
 * A plan at another tempo, the given passages of its players with it. Times of those that are the
 * line's own stay so; others are rounded to microseconds.
 */
final class AtTempo {
  private final double factor;
  private final Map<Long, Long> ofLine = new HashMap<>();

  private AtTempo(List<Line> before, List<Line> after, double factor) {
    this.factor = factor;
    for (int relay = 0; relay < before.size(); relay++) {
      for (int j = 0; j < before.get(relay).count(); j++) {
        ofLine.put(before.get(relay).endMicros(j), after.get(relay).endMicros(j));
      }
    }
    for (int relay = 0; relay < before.size(); relay++) {
      for (int j = 0; j < before.get(relay).count(); j++) {
        ofLine.put(before.get(relay).onsetMicros(j), after.get(relay).onsetMicros(j));
      }
    }
  }

  /** The plan with the tempo at the line's start brought to a mark, all others scaled with it. */
  static Plan of(Plan plan, TempoMark mark) {
    Line line = plan.line();
    Position start = line.stroke(0).onset();
    TempoMap tempi = line.tempo().scaledTo(start, mark);
    List<Line> scaled = plan.brief().linesAt(tempi);
    double factor =
        mark.quartersPerMinute().dividedBy(line.tempo().at(start).quartersPerMinute()).toDouble();
    AtTempo tempo = new AtTempo(plan.brief().lines(), scaled, factor);
    List<Player> players = plan.brief().players().stream().map(tempo::of).toList();
    return new Plan(new Brief(scaled, players, plan.brief().rules()), plan.segments());
  }

  private Player of(Player player) {
    return player.busyWith(player.busy().stream().map(this::of).toList());
  }

  private GivenStretch of(GivenStretch busy) {
    return new GivenStretch(
        of(busy.fromMicros()),
        of(busy.toMicros()),
        busy.strokeMicros().stream().map(this::of).toList(),
        busy.changeMicros());
  }

  private long of(long micros) {
    return ofLine.getOrDefault(micros, Math.round(micros / factor));
  }
}
