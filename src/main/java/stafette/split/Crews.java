package stafette.split;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * All crews in the order of what a plan costs at least that uses them to the last player, each made
 * when its turn comes: many players have more crews than can ever be looked at.
 *
 * <p>No such plan costs less than the floor of all plans, nor than the cheapest in which somebody
 * of the crew's dearest kind plays; and each player costs a price beside. Crews without the
 * strength for the line are left out, and with them all that can't be made strong enough. Of equal
 * bounds smaller crews come first, then those with players listed earlier. Memory grows with the
 * crews made, not with those that there are.
 */
final class Crews {
  /** More players than there are. */
  private static final int TOO_MANY = 1 << 20;

  private final List<PlayerKind> kinds;
  private final CrewFigures figures;
  private final int[] needed;
  private final long[][] strongest;
  private final PriorityQueue<Family> families =
      new PriorityQueue<>(
          Comparator.comparingInt(Family::bound)
              .thenComparingInt(Family::size)
              .thenComparing(Family::next, Arrays::compare));
  private int work;

  /**
   * What is known of all crews, in points.
   *
   * @param base what any crew costs beside its players
   * @param prices of a player of each kind, 0 or more
   * @param mostPlayers no crew has more
   * @param floor no plan costs less, the players' price apart
   * @param withKind no plan of a crew costs less that somebody of a kind is in; {@link
   *     Relaxation#NEVER} for a kind that can't play
   * @param strength of a player of each kind, and what any crew needs
   */
  record CrewFigures(
      int base,
      List<Integer> prices,
      int mostPlayers,
      int floor,
      List<Integer> withKind,
      Multipliers.Strength strength) {
    CrewFigures {
      prices = List.copyOf(prices);
      withKind = List.copyOf(withKind);
    }
  }

  /**
   * A crew.
   *
   * @param floor no plan costs less that uses it to the last player, the players' price apart
   */
  record Made(Crew crew, int floor) {}

  /**
   * @param needed the kind of each player who must be there, in order
   */
  Crews(List<PlayerKind> kinds, CrewFigures figures, int[] needed) {
    this.kinds = List.copyOf(kinds);
    this.figures = figures;
    this.needed = needed;
    this.strongest = strongest();
    int dearest = figures.floor;
    for (int kind : needed) {
      dearest = Math.max(dearest, figures.withKind.get(kind));
    }
    if (dearest < Relaxation.NEVER) {
      add(new Family(needed, 0, dearest, false));
    }
  }

  /** No crew that is still to come costs less; {@link Relaxation#NEVER} after the last. */
  int bound() {
    while (!families.isEmpty() && !families.element().isCrewNext()) {
      families.remove().children().forEach(this::add);
    }
    return families.isEmpty() ? Relaxation.NEVER : families.element().bound();
  }

  /** Whether there is a crew still to come that is to be looked at before another. */
  boolean comeBefore(CrewProblem candidate) {
    int bound = bound();
    if (families.isEmpty() || bound != candidate.bound()) {
      return bound < candidate.bound();
    }
    int[] next = families.element().next();
    int[] other = candidate.crew().slots();
    return next.length != other.length
        ? next.length < other.length
        : Arrays.compare(next, other) < 0;
  }

  /** The strength of the strongest so many players of the kinds from one on. */
  private long[][] strongest() {
    long[][] sums = new long[kinds.size() + 1][];
    sums[kinds.size()] = new long[1];
    List<Long> strengths = new ArrayList<>();
    for (int kind = kinds.size() - 1; kind >= 0; kind--) {
      strengths.addAll(
          Collections.nCopies(
              kinds.get(kind).members().size(), figures.strength.ofOne().get(kind)));
      strengths.sort(Comparator.reverseOrder());
      sums[kind] = new long[strengths.size() + 1];
      for (int i = 0; i < strengths.size(); i++) {
        sums[kind][i + 1] = sums[kind][i] + strengths.get(i);
      }
    }
    return sums;
  }

  /** The next crew; there must be one. */
  Made next() {
    bound();
    Family family = families.remove();
    add(family.withoutCrew());
    return new Made(Crew.of(kinds, family.members), family.dearest);
  }

  /**
   * A crew that promises a good plan: who is needed or known to be good first, then those who are
   * cheapest, the strongest among equals.
   *
   * @param players how many, unless more are needed for their strength
   * @param good the kinds of players who are known to be good
   */
  Crew mostPromising(int players, List<Integer> good) {
    List<Integer> others = new ArrayList<>();
    for (int kind = 0; kind < kinds.size(); kind++) {
      int known = isNeeded(kind) ? needed(kind) : Collections.frequency(good, kind);
      int left = kinds.get(kind).members().size() - known;
      others.addAll(Collections.nCopies(Math.max(0, left), kind));
    }
    others.sort(
        Comparator.comparing((Integer kind) -> figures.withKind.get(kind))
            .thenComparing(kind -> -figures.strength.ofOne().get(kind)));
    IntStream first =
        IntStream.concat(
            Arrays.stream(needed), good.stream().mapToInt(k -> k).filter(kind -> !isNeeded(kind)));
    int most =
        Math.min(figures.mostPlayers, Math.max(players, atLeast(figures.strength.asked(), 0) + 1));
    return Crew.of(
        kinds,
        IntStream.concat(first, others.stream().mapToInt(k -> k))
            .limit(Math.max(needed.length, most))
            .toArray());
  }

  private int pricesOf(int[] members) {
    return Arrays.stream(members).map(kind -> figures.prices.get(kind)).sum();
  }

  /** What a player of the kinds from one on costs at least. */
  private int cheapest(int from) {
    return figures.prices.stream().skip(from).mapToInt(price -> price).min().orElse(0);
  }

  private boolean isNeeded(int kind) {
    return needed(kind) > 0;
  }

  private int needed(int kind) {
    return (int) Arrays.stream(needed).filter(other -> other == kind).count();
  }

  /** How many crews and families of crews have been looked at. */
  int work() {
    return work;
  }

  private void add(Family family) {
    work++;
    if (family.bound() < Relaxation.NEVER) {
      families.add(family);
    }
  }

  /** The least number of players of the kinds from one on who have the strength. */
  private int atLeast(long strength, int from) {
    long[] sums = strongest[from];
    int players = 0;
    while (players < sums.length && sums[players] < strength) {
      players++;
    }
    return players < sums.length ? players : TOO_MANY;
  }

  /** A crew, unless it was made, and all to be made from it with players of kinds listed later. */
  private final class Family {
    private final int[] members;
    private final int from;
    private final int dearest;
    private final boolean crewNext;
    private final int size;

    /**
     * @param members the kind of each, in order
     */
    Family(int[] members, int from, int dearest, boolean made) {
      this.members = members;
      this.from = from;
      this.dearest = dearest;
      long has = Arrays.stream(members).mapToLong(kind -> figures.strength.ofOne().get(kind)).sum();
      long missing = figures.strength.asked() - has;
      crewNext = !made && members.length > 0 && missing <= 0;
      size = members.length + (crewNext ? 0 : Math.max(1, atLeast(missing, from)));
    }

    /** Whether the crew itself comes next. */
    boolean isCrewNext() {
      return crewNext;
    }

    Family withoutCrew() {
      return new Family(members, from, dearest, true);
    }

    /** The least that anything still to come of it costs. */
    int bound() {
      boolean ends = size > figures.mostPlayers || (!crewNext && from == kinds.size());
      return ends
          ? Relaxation.NEVER
          : dearest + figures.base + pricesOf(members) + cheapest(from) * (size - members.length);
    }

    /** The least number of players of anything still to come of it. */
    int size() {
      return size;
    }

    /** What comes next of it is no earlier in the order of crews of its size. */
    int[] next() {
      return crewNext ? members : with(from, 1);
    }

    /** Those with one player more or several of one kind. */
    List<Family> children() {
      List<Family> children = new ArrayList<>();
      for (int kind = from; kind < kinds.size(); kind++) {
        int points = Math.max(dearest, figures.withKind.get(kind));
        for (int count = 1; count <= free(kind) && points < Relaxation.NEVER; count++) {
          children.add(new Family(with(kind, count), kind + 1, points, false));
        }
      }
      return children;
    }

    private int free(int kind) {
      long taken = Arrays.stream(members).filter(member -> member == kind).count();
      return kinds.get(kind).members().size() - (int) taken;
    }

    private int[] with(int kind, int count) {
      int[] more = Arrays.copyOf(members, members.length + count);
      Arrays.fill(more, members.length, more.length, kind);
      Arrays.sort(more);
      return more;
    }
  }
}
