package stafette.split.rotate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.check.Costing;
import stafette.check.PartTrial;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.Segment;
import stafette.plan.Turn;

/** What each of some turns costs each kind of player, and what handing it over costs. */
public final class TurnCosts {
  private final Brief brief;
  private final PartTrial trial;
  private final List<List<Integer>> kinds;
  private final EqualTurns turns;
  private final int[][][] own;
  private final int[] instrumentOf;
  private final int[][][] meeting;

  /**
   * @param kinds the players who are alike, by kind
   */
  public TurnCosts(Brief brief, PartTrial trial, List<List<Integer>> kinds, EqualTurns turns) {
    this.brief = brief;
    this.trial = trial;
    this.kinds = kinds;
    this.turns = turns;
    List<Instrument> instruments =
        IntStream.range(0, kinds.size()).mapToObj(this::instrument).distinct().toList();
    instrumentOf =
        IntStream.range(0, kinds.size())
            .map(kind -> instruments.indexOf(instrument(kind)))
            .toArray();
    own = new int[turns.count()][kinds.size()][];
    meeting = new int[turns.count() - 1][][];
    for (int turn = 0; turn < turns.count(); turn++) {
      for (int kind = 0; kind < kinds.size(); kind++) {
        own[turn][kind] = byWay(turn, kinds.get(kind).get(0));
      }
    }
    for (int turn = 0; turn < meeting.length; turn++) {
      meeting[turn] = byInstruments(turn, instruments.size());
    }
  }

  private Instrument instrument(int kind) {
    return brief.players().get(kinds.get(kind).get(0)).instrument();
  }

  private int[] byWay(int turn, int player) {
    return IntStream.range(0, brief.players().get(player).ways().size())
        .map(way -> trial.pointsAlone(turns.segment(turn, player, way)).orElse(Rotation.NEVER))
        .toArray();
  }

  private int[][] byInstruments(int turn, int instruments) {
    int[][] costs = new int[instruments][instruments];
    for (int leaving = 0; leaving < costs.length; leaving++) {
      for (int entering = 0; entering < costs.length; entering++) {
        Handoff handoff = new Handoff(turnOf(turn, leaving), turnOf(turn + 1, entering));
        costs[leaving][entering] = Costing.handoff(brief, handoff).total();
      }
    }
    return costs;
  }

  private Turn turnOf(int turn, int instrument) {
    int player =
        IntStream.range(0, kinds.size())
            .filter(kind -> instrumentOf[kind] == instrument)
            .map(kind -> kinds.get(kind).get(0))
            .findFirst()
            .orElseThrow();
    return new Turn(List.of(turns.segment(turn, player, 0)));
  }

  /** What all turns cost at least, whoever takes them; {@link Rotation#NEVER} if nobody can. */
  public int least() {
    int sum = 0;
    for (int[][] turn : own) {
      sum = Math.min(Rotation.NEVER, sum + least(turn));
    }
    for (int[][] handoff : meeting) {
      sum = Math.min(Rotation.NEVER, sum + least(handoff));
    }
    return sum;
  }

  private static int least(int[][] costs) {
    return Arrays.stream(costs).flatMapToInt(Arrays::stream).min().orElse(Rotation.NEVER);
  }

  /**
   * What every n-th turn costs a kind at least, in one way for all of them, what it brings along
   * from turn to turn left aside; {@link Rotation#NEVER} if it can't take one of them.
   */
  public int leastNth(int kind, int from, int every) {
    return IntStream.range(0, own[from][kind].length)
        .map(way -> nth(kind, way, from, every))
        .min()
        .orElse(Rotation.NEVER);
  }

  private int nth(int kind, int way, int from, int every) {
    int sum = 0;
    for (int turn = from; turn < own.length; turn += every) {
      sum = Math.min(Rotation.NEVER, sum + own[turn][kind][way]);
    }
    return sum;
  }

  /** What every n-th turn costs a kind with all that it brings along; empty if it can't. */
  public Optional<EveryNth> cheapestNth(int kind, int from, int every) {
    return IntStream.range(0, own[from][kind].length)
        .mapToObj(way -> new EveryNth(way, nth(kind, way, from, every)))
        .filter(nth -> nth.points() < Rotation.NEVER)
        .sorted(Comparator.comparingInt(EveryNth::points))
        .filter(nth -> trial.points(segments(kind, nth.way(), from, every)).isPresent())
        .findFirst();
  }

  private List<Segment> segments(int kind, int way, int from, int every) {
    List<Segment> segments = new ArrayList<>();
    for (int turn = from; turn < turns.count(); turn += every) {
      segments.add(turns.segment(turn, kinds.get(kind).get(0), way));
    }
    return segments;
  }

  /** What all handoffs from one place of an order to the next cost, for two kinds. */
  public int meeting(int place, int places, int leaving, int entering) {
    int sum = 0;
    for (int turn = place; turn < meeting.length; turn += places) {
      sum += meeting[turn][instrumentOf[leaving]][instrumentOf[entering]];
    }
    return sum;
  }
}
