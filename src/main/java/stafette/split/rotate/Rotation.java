package stafette.split.rotate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import stafette.plan.Segment;

/**
 * So many players take turns in a fixed order: which ones, and in which order?
 *
 * <p>What a place in the order costs depends on who has it; what a handoff costs, on who has two
 * neighbouring places. So the cheapest order is a cheapest cycle through places, each taken by one
 * player. Orders are made longer place by place, the most promising first; of two that have used
 * the same players and have the same first and last ones, one is enough (M. Held and R. Karp, "A
 * dynamic programming approach to sequencing problems", J. SIAM 10, 1962), players who are alike
 * being counted, not told apart. For p players all unlike there are up to p²·2<sup>p</sup> of them;
 * those that promise no less than an order that is known are never made.
 */
public final class Rotation {
  /** Above the cost of any rotation. */
  public static final int NEVER = 1 << 28;

  private final List<List<Integer>> kinds;
  private final EqualTurns turns;
  private final TurnCosts costs;
  private final List<Integer> prices;
  private final int places;
  private final Map<List<Integer>, Optional<EveryNth>> own = new HashMap<>();
  private final int[][][] meeting;
  private final int[] cheapestMeeting;
  private final int[] atLeast;

  /**
   * @param kinds the players who are alike, by kind
   * @param prices what a player of each kind costs beside, 0 or more
   * @param places how many players take turns, two or more
   */
  Rotation(
      List<List<Integer>> kinds,
      EqualTurns turns,
      TurnCosts costs,
      List<Integer> prices,
      int places) {
    this.prices = List.copyOf(prices);
    this.kinds = kinds;
    this.turns = turns;
    this.costs = costs;
    this.places = places;
    meeting = new int[places][kinds.size()][kinds.size()];
    cheapestMeeting = new int[places];
    for (int place = 0; place < places; place++) {
      for (int leaving = 0; leaving < kinds.size(); leaving++) {
        for (int entering = 0; entering < kinds.size(); entering++) {
          meeting[place][leaving][entering] = costs.meeting(place, places, leaving, entering);
        }
      }
      cheapestMeeting[place] =
          Arrays.stream(meeting[place]).flatMapToInt(Arrays::stream).min().orElse(0);
    }
    atLeast = bounds();
  }

  /** For each place, the least that it and all places after it cost. */
  private int[] bounds() {
    int[] bounds = new int[places + 1];
    for (int place = places - 1; place >= 0; place--) {
      int turn = NEVER;
      for (int kind = 0; kind < kinds.size(); kind++) {
        turn = Math.min(turn, costs.leastNth(kind, place, places) + prices.get(kind));
      }
      bounds[place] = Math.min(NEVER, bounds[place + 1] + turn + cheapestMeeting[place]);
    }
    return bounds;
  }

  int places() {
    return places;
  }

  /** The least that the turns and handoffs cost; {@link #NEVER} if nobody can. */
  int bound() {
    return atLeast[0];
  }

  /**
   * An order, whole or not.
   *
   * @param kindAt the kind of player at each place
   * @param points what their turns and handoffs cost
   * @param bound no whole order costs less that begins like this
   */
  record Order(List<Integer> kindAt, int points, int bound) {}

  /**
   * The cheapest order, of equals that with players listed first; empty if none costs less than
   * {@code most}, or if it was stopped.
   *
   * @param needed the kind of each player who must take part
   * @param stop asked for each order
   */
  Optional<Order> cheapest(int most, List<Integer> needed, BooleanSupplier stop) {
    PriorityQueue<Order> open =
        new PriorityQueue<>(
            Comparator.comparingInt(Order::bound)
                .thenComparing(Order::kindAt, Rotation::listedFirst));
    Map<List<Integer>, Order> best = new HashMap<>();
    open.add(new Order(List.of(), 0, bound()));
    while (!open.isEmpty() && !stop.getAsBoolean()) {
      Order order = open.remove();
      if (order.kindAt.size() > places) {
        return Optional.of(new Order(order.kindAt.subList(0, places), order.points, order.bound));
      }
      for (Order longer : longer(order, needed)) {
        Order other = best.get(likeness(longer.kindAt));
        if (longer.bound < most && (other == null || isBetter(longer, other))) {
          best.put(likeness(longer.kindAt), longer);
          open.add(longer);
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isBetter(Order one, Order other) {
    return one.points != other.points
        ? one.points < other.points
        : listedFirst(one.kindAt, other.kindAt) < 0;
  }

  private static int listedFirst(List<Integer> one, List<Integer> other) {
    return Arrays.compare(
        one.stream().mapToInt(kind -> kind).toArray(),
        other.stream().mapToInt(kind -> kind).toArray());
  }

  /** With one place more, or if all are taken, with the first once more, to whom the last leads. */
  private List<Order> longer(Order order, List<Integer> needed) {
    int place = order.kindAt.size();
    if (place == places) {
      int whole =
          order.points + meeting[place - 1][order.kindAt.get(place - 1)][order.kindAt.get(0)];
      return takesPart(order, needed)
          ? List.of(new Order(with(order, order.kindAt.get(0)), whole, whole))
          : List.of();
    }
    List<Order> longer = new ArrayList<>();
    for (int kind = 0; kind < kinds.size(); kind++) {
      int next = kind;
      if (Collections.frequency(order.kindAt, kind) < kinds.get(kind).size()) {
        own(place, kind)
            .map(turn -> order.points + turn.points() + prices.get(next) + arriving(order, next))
            .map(points -> new Order(with(order, next), points, points + rest(place)))
            .ifPresent(longer::add);
      }
    }
    return longer;
  }

  private static boolean takesPart(Order order, List<Integer> needed) {
    return needed.stream()
        .allMatch(
            kind ->
                Collections.frequency(order.kindAt, kind) >= Collections.frequency(needed, kind));
  }

  private int rest(int place) {
    return cheapestMeeting[place] + atLeast[place + 1];
  }

  private Optional<EveryNth> own(int place, int kind) {
    return own.computeIfAbsent(List.of(place, kind), key -> costs.cheapestNth(kind, place, places));
  }

  private static List<Integer> with(Order order, int kind) {
    List<Integer> kindAt = new ArrayList<>(order.kindAt);
    kindAt.add(kind);
    return List.copyOf(kindAt);
  }

  private int arriving(Order order, int kind) {
    int place = order.kindAt.size();
    return place == 0 ? 0 : meeting[place - 1][order.kindAt.get(place - 1)][kind];
  }

  /** What two orders have in common that can be gone on with in the same ways. */
  private static List<Integer> likeness(List<Integer> kindAt) {
    List<Integer> likeness = new ArrayList<>(kindAt.stream().sorted().toList());
    likeness.add(kindAt.get(0));
    likeness.add(kindAt.get(kindAt.size() - 1));
    return likeness;
  }

  /** The plan in which the players listed first of each kind take turns in this order. */
  List<Segment> segments(Order order) {
    List<Segment> segments = new ArrayList<>();
    for (int turn = 0; turn < turns.count(); turn++) {
      int place = turn % places;
      int kind = order.kindAt.get(place);
      int before = Collections.frequency(order.kindAt.subList(0, place), kind);
      int way = own(place, kind).orElseThrow().way();
      segments.add(turns.segment(turn, kinds.get(kind).get(before), way));
    }
    return segments;
  }
}
