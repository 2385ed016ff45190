package stafette.split;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import stafette.check.Costing;
import stafette.plan.Brief;
import stafette.plan.Halves;
import stafette.plan.Hocket;
import stafette.plan.Lock;
import stafette.plan.Rules;
import stafette.plan.Weights;
import stafette.score.Line;

/**
 * What one relay offers to every actor: its stretches with their costs, worked out as asked for,
 * and its handoffs.
 */
final class RelayOffers {
  private static final int WHOLE = 2;

  private final Workbench workbench;
  private final Line line;
  private final Rules rules;
  private final List<PlayerKind> kinds;
  private final List<Actor> actors;
  private final Actor[] numbered;
  private final Halves halves;
  private final LockedLeeway keeping;
  private final Handoffs handoffs;
  private final Map<List<Integer>, SegmentTable> tables = new HashMap<>();
  private final @Nullable StretchesFromStart[][] reaches;
  private int work;

  private RelayOffers(
      Brief brief, int index, List<PlayerKind> kinds, List<Actor> actors, Workbench workbench) {
    this.workbench = workbench;
    this.line = brief.line(index);
    this.rules = brief.rules();
    this.kinds = kinds;
    this.actors = actors;
    this.numbered = actors.toArray(new Actor[0]);
    this.halves = workbench.halves(brief, index);
    this.keeping =
        new LockedLeeway(index, line.count(), rules.locks(), kindOf(rules.locks(), kinds));
    this.handoffs = new Handoffs(line, rules.overlap(), rules.weights(), kinds, actors, keeping);
    this.reaches = new StretchesFromStart[actors.size()][line.count()];
    for (Actor actor : actors) {
      for (int member = 0; member < actor.size(); member++) {
        if (actor.size() == 1) {
          table(actor, member, WHOLE);
        } else {
          table(actor, member, 0);
          table(actor, member, 1);
        }
      }
    }
  }

  /** The relays of a brief; those alike in all are one and the same. */
  static List<RelayOffers> of(
      Brief brief, List<PlayerKind> kinds, List<Actor> actors, Workbench workbench) {
    List<RelayOffers> relays = new ArrayList<>();
    for (int index = 0; index < brief.lines().size(); index++) {
      int earlier = brief.lines().indexOf(brief.line(index));
      boolean free = brief.rules().locks().isEmpty();
      relays.add(
          earlier < index && free
              ? relays.get(earlier)
              : new RelayOffers(brief, index, kinds, actors, workbench));
    }
    return relays;
  }

  private static Map<Integer, Integer> kindOf(List<Lock> locks, List<PlayerKind> kinds) {
    Map<Integer, Integer> result = new HashMap<>();
    for (int player : LockedPlayers.players(locks)) {
      for (int kind = 0; kind < kinds.size(); kind++) {
        if (kinds.get(kind).members().contains(player)) {
          result.put(player, kind);
        }
      }
    }
    return result;
  }

  Line line() {
    return line;
  }

  int count() {
    return line.count();
  }

  /** The first moment at which a stroke from that one on begins; never, after the last. */
  long onsetFrom(int stroke) {
    return stroke < line.count() ? line.onsetMicros(stroke) : Long.MAX_VALUE;
  }

  Handoffs handoffs() {
    return handoffs;
  }

  LockedLeeway keeping() {
    return keeping;
  }

  List<Actor> actors() {
    return actors;
  }

  Actor actor(int index) {
    return numbered[index];
  }

  /** Takes note of a bound made for so many actors. */
  void noteBound(int actors) {
    work += actors * line.count();
  }

  /** What all bounds have taken, roughly in what labels take. */
  int work() {
    return work;
  }

  /** The stretches of an actor that begin with a stroke. */
  StretchesFromStart reach(int actor, int first) {
    StretchesFromStart known = reaches[actor][first];
    if (known == null) {
      Actor who = numbered[actor];
      known = who.size() == 1 ? alone(who, first) : inTurns(who, first);
      reaches[actor][first] = known;
    }
    return known;
  }

  /** Which stroke of a member's own line is the last it plays in a stretch. */
  int own(Actor actor, int member, int first, int last) {
    return actor.size() == 1 ? last : halves.to(half(member, first), last);
  }

  /** Which stroke of a member's own line is the first it plays in a stretch. */
  int ownFirst(Actor actor, int member, int first) {
    return actor.size() == 1 ? first : halves.from(half(member, first), first);
  }

  private int half(int member, int first) {
    return member == 0 ? halves.halfOf(first) : 1 - halves.halfOf(first);
  }

  private StretchesFromStart alone(Actor actor, int first) {
    SegmentTable table = table(actor, 0, WHOLE);
    SegmentsFromStart row = table.row(first);
    int[] points = row.allPoints();
    if (!keeping.isFree()) {
      points = points.clone();
      filter(actor, first, points);
    }
    return new StretchesFromStart(
        first, points, new SegmentsFromStart[] {row}, new SegmentTable[] {table});
  }

  private void filter(Actor actor, int first, int[] points) {
    for (int k = 0; k < points.length; k++) {
      if (!keeping.allows(actor, first, first + k)) {
        points[k] = Relaxation.NEVER;
      }
    }
  }

  private StretchesFromStart inTurns(Actor actor, int first) {
    SegmentTable[] own = {
      table(actor, 0, half(0, first)), table(actor, 1, half(1, first)),
    };
    int[] from = {ownFirst(actor, 0, first), ownFirst(actor, 1, first)};
    if (from[1] >= own[1].line().count() || !isDealt(first)) {
      SegmentsFromStart none = SegmentsFromStart.EMPTY;
      return new StretchesFromStart(first, new int[0], new SegmentsFromStart[] {none, none}, own);
    }
    SegmentsFromStart[] rows = {own[0].row(from[0]), own[1].row(from[1])};
    long usual = Math.min(line.barMicros(first), Costing.USUAL_TURN_MICROS);
    int[] points = new int[line.count() - first];
    int length = 0;
    while (length < points.length && isDealt(first + length)) {
      int last = first + length;
      int one = own(actor, 0, first, last);
      int other = own(actor, 1, first, last);
      if (one > rows[0].last() || other > rows[1].last()) {
        break;
      }
      points[length++] =
          other < from[1] || !rows[0].goes(one) || !rows[1].goes(other)
              ? Relaxation.NEVER
              : rows[0].points(one)
                  + rows[1].points(other)
                  + 2 * Costing.shortPoints(usual, Costing.length(line, first, last), weights())
                  + weights().hocket();
    }
    points = Arrays.copyOf(points, length);
    filter(actor, first, points);
    return new StretchesFromStart(first, points, rows, own);
  }

  private boolean isDealt(int stroke) {
    return halves.interlocks(stroke, rules.margin().shortened())
        && (rules.hocket() != Hocket.STROKE || halves.evenBeat(stroke));
  }

  private Weights weights() {
    return rules.weights();
  }

  private SegmentTable table(Actor actor, int member, int part) {
    return tables.computeIfAbsent(
        List.of(actor.kind(member), actor.way(member), part),
        key -> {
          PlayerKind kind = kinds.get(actor.kind(member));
          Line own = part == WHOLE ? line : halves.line(part);
          SegmentTable table =
              workbench.table(own, kind.both(), actor.way(member), rules.weights(), part == WHOLE);
          kind.learn(table);
          return table;
        });
  }
}
