package stafette.split;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import stafette.check.Costing;
import stafette.check.PartTrial;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.Segment;
import stafette.plan.Turn;

/**
 * So many players take turns in a fixed order: which ones, and in which order?
 *
 * <p>What a place in the order costs depends on who has it; what a handoff costs, on who has two
 * neighbouring places. So the cheapest order is a cheapest cycle through places, each taken by one
 * player, solved by dynamic programming over who has been used, the first and the last of them (M.
 * Held and R. Karp, "A dynamic programming approach to sequencing problems", J. SIAM 10, 1962),
 * with players who are alike counted, not told apart. For p players all unlike it takes up to
 * p²·2<sup>p </sup> steps; a bound cuts off most.
 */
final class Rotation {
  /** Above the cost of any rotation. */
  static final int NEVER = 1 << 28;

  private final Brief brief;
  private final List<List<Integer>> kinds;
  private final Turns turns;
  private final int places;
  private final List<List<Optional<EveryNth>>> own = new ArrayList<>();
  private final int[][][] meeting;
  private final int[] atLeast;

  /**
   * @param kinds the players who are alike, by kind
   * @param places how many players take turns, two or more
   */
  Rotation(Brief brief, PartTrial trial, List<List<Integer>> kinds, Turns turns, int places) {
    this.brief = brief;
    this.kinds = kinds;
    this.turns = turns;
    this.places = places;
    this.meeting = new int[places][kinds.size()][kinds.size()];
    for (int place = 0; place < places; place++) {
      int from = place;
      own.add(
          kinds.stream()
              .map(kind -> EveryNth.cheapest(brief, trial, kind.get(0), turns, from, places))
              .toList());
      meet(place);
    }
    this.atLeast = bounds();
  }

  int places() {
    return places;
  }

  /** The least that the turns and handoffs cost; {@link #NEVER} if nobody can. */
  int bound() {
    return atLeast[0];
  }

  /** An order: the kind of player at each place, and what its turns and handoffs cost. */
  record Order(List<Integer> kindAt, int points) {}

  /**
   * The cheapest order, the first of equals; empty if none costs less than {@code most}, or if it
   * was stopped.
   *
   * @param needed kinds that must take part
   */
  Optional<Order> cheapest(int most, Set<Integer> needed, BooleanSupplier stop) {
    Map<List<Integer>, Order> reached = new LinkedHashMap<>();
    reached.put(List.of(), new Order(List.of(), 0));
    for (int place = 0; place < places; place++) {
      Map<List<Integer>, Order> longer = new LinkedHashMap<>();
      for (Order order : reached.values()) {
        if (stop.getAsBoolean()) {
          return Optional.empty();
        }
        extend(order, most, longer);
      }
      reached = longer;
    }
    return reached.values().stream()
        .map(order -> new Order(order.kindAt, order.points + closing(order)))
        .filter(order -> order.points < most && order.kindAt.containsAll(needed))
        .reduce((one, other) -> other.points < one.points ? other : one);
  }

  private void extend(Order order, int most, Map<List<Integer>, Order> into) {
    int place = order.kindAt.size();
    for (int kind = 0; kind < kinds.size(); kind++) {
      Optional<EveryNth> turn = own.get(place).get(kind);
      if (turn.isEmpty() || used(order, kind) == kinds.get(kind).size()) {
        continue;
      }
      int points = order.points + turn.get().points() + arriving(order, kind);
      if (points + cheapestMeeting(place) + atLeast[place + 1] < most) {
        List<Integer> kindAt = new ArrayList<>(order.kindAt);
        kindAt.add(kind);
        Order longer = new Order(List.copyOf(kindAt), points);
        into.merge(likeness(kindAt), longer, (one, two) -> two.points < one.points ? two : one);
      }
    }
  }

  private static int used(Order order, int kind) {
    return (int) order.kindAt.stream().filter(other -> other == kind).count();
  }

  private int arriving(Order order, int kind) {
    int place = order.kindAt.size();
    return place == 0 ? 0 : meeting[place - 1][order.kindAt.get(place - 1)][kind];
  }

  private int closing(Order order) {
    return meeting[places - 1][order.kindAt.get(places - 1)][order.kindAt.get(0)];
  }

  /** What two orders have in common that can be gone on with in the same ways. */
  private static List<Integer> likeness(List<Integer> kindAt) {
    List<Integer> likeness = new ArrayList<>(kindAt.stream().sorted().toList());
    likeness.add(kindAt.get(0));
    likeness.add(kindAt.get(kindAt.size() - 1));
    return likeness;
  }

  /** All handoffs from one place of the order to the next, for each two kinds. */
  private void meet(int place) {
    for (int turn = place; turn + 1 < turns.count(); turn += places) {
      for (int leaving = 0; leaving < kinds.size(); leaving++) {
        for (int entering = 0; entering < kinds.size(); entering++) {
          meeting[place][leaving][entering] +=
              Costing.handoff(brief, handoff(turn, leaving, entering)).total();
        }
      }
    }
  }

  private Handoff handoff(int turn, int leaving, int entering) {
    return new Handoff(
        new Turn(List.of(turns.segment(turn, kinds.get(leaving).get(0), 0))),
        new Turn(List.of(turns.segment(turn + 1, kinds.get(entering).get(0), 0))));
  }

  /** For each place, the least that it and all places after it cost. */
  private int[] bounds() {
    int[] bounds = new int[places + 1];
    for (int place = places - 1; place >= 0; place--) {
      int turn =
          own.get(place).stream()
              .flatMap(Optional::stream)
              .mapToInt(EveryNth::points)
              .min()
              .orElse(NEVER);
      bounds[place] = Math.min(NEVER, bounds[place + 1] + turn + cheapestMeeting(place));
    }
    return bounds;
  }

  private int cheapestMeeting(int place) {
    return Arrays.stream(meeting[place]).flatMapToInt(Arrays::stream).min().orElse(0);
  }

  /** The plan in which the players listed first of each kind take turns in this order. */
  List<Segment> segments(Order order) {
    List<Integer> players = new ArrayList<>();
    for (int place = 0; place < places; place++) {
      int kind = order.kindAt.get(place);
      int before = used(new Order(order.kindAt.subList(0, place), 0), kind);
      players.add(kinds.get(kind).get(before));
    }
    List<Segment> segments = new ArrayList<>();
    for (int turn = 0; turn < turns.count(); turn++) {
      int place = turn % places;
      int skill = own.get(place).get(order.kindAt.get(place)).orElseThrow().skill();
      segments.add(turns.segment(turn, players.get(place), skill));
    }
    return segments;
  }
}
