package stafette.split;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stafette.limits.Instrument;
import stafette.limits.Way;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Halves;
import stafette.plan.Hocket;
import stafette.plan.Margin;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Weights;
import stafette.score.Line;

/**
 * What has been worked out about lines and players, kept for the next search: while a line is open,
 * locks, rules and players may change and come back; tables of segments stay as they are, and what
 * has been proven about crews without locks holds with them. Of plans that cost the same a search
 * that knows more may give another one. Not for several threads.
 */
public final class Workbench {
  private final Map<Likeness, SegmentTable> tables = new HashMap<>();
  private final Map<Dealt, Halves> halves = new HashMap<>();

  private record Likeness(
      Line line,
      Instrument instrument,
      List<GivenStretch> busy,
      Way way,
      Margin margin,
      Weights weights,
      boolean whole) {}

  private final Map<TableKey, KnownBounds> floors = new HashMap<>();

  private record TableKey(List<Line> lines, Rules rules) {}

  private record Dealt(Line line, Hocket hocket) {}

  /**
   * The segments of a player in one way.
   *
   * @param whole whether turns are stretches of this line; in a hocket they are not
   */
  SegmentTable table(Line line, PlayerWithinMargin both, int way, Weights weights, boolean whole) {
    Player player = both.written();
    return tables.computeIfAbsent(
        new Likeness(
            line,
            player.instrument(),
            player.busy(),
            player.ways().get(way),
            both.margin(),
            weights,
            whole),
        key -> new SegmentTable(line, both, way, weights, whole));
  }

  Halves halves(Brief brief, int relay) {
    return halves.computeIfAbsent(
        new Dealt(brief.line(relay), brief.rules().hocket()), key -> brief.halves(relay));
  }

  /** What is known about crews for a brief whose locks are left out. */
  KnownBounds floors(Brief brief) {
    return floors.computeIfAbsent(
        new TableKey(brief.lines(), brief.rules().with(List.of())), key -> new KnownBounds());
  }
}
