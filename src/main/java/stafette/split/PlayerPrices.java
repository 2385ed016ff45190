package stafette.split;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import stafette.check.Costing;
import stafette.plan.Brief;
import stafette.plan.Segment;

/**
 * What players cost, used or not. Whoever costs no less idle than used is welcome: they are in
 * every crew, and the search pays for each who is left out. All others are in a crew or not, and
 * each crew is searched by itself.
 */
final class PlayerPrices {
  private final List<PlayerKind> kinds;
  private final List<KindPrice> prices = new ArrayList<>();

  private record KindPrice(int used, int idle, boolean isWelcome, boolean isReckoned) {
    /** What one more of them in a crew costs at least. */
    int inCrew() {
      return isWelcome || !isReckoned ? used : used - idle;
    }

    /** What each of them costs who is in no crew. */
    int outside() {
      return isWelcome || !isReckoned ? 0 : idle;
    }
  }

  /**
   * @param few whether kinds are so few that what idle players cost is reckoned in the search; if
   *     not, it is left out of all bounds
   * @param limited whether no more than some of the players may be used: then idle ones cost
   *     nothing
   */
  PlayerPrices(Brief brief, List<PlayerKind> kinds, boolean few, boolean limited) {
    this.kinds = List.copyOf(kinds);
    for (PlayerKind kind : kinds) {
      int one = kind.members().get(0);
      int used = Costing.price(brief, one);
      int idle = limited ? 0 : Costing.idle(brief, one);
      prices.add(new KindPrice(used, idle, few && !limited && idle >= used, few));
    }
  }

  /** What is paid for those who are in no crew, if nobody is. */
  int base() {
    return IntStream.range(0, kinds.size())
        .map(kind -> prices.get(kind).outside() * kinds.get(kind).members().size())
        .sum();
  }

  /** What a player of each kind costs in a crew, 0 or more. */
  List<Integer> inCrew() {
    return prices.stream().map(KindPrice::inCrew).toList();
  }

  /** What all players cost if a crew is used to the last player. */
  int of(Crew crew) {
    return base()
        + IntStream.range(0, kinds.size())
            .map(kind -> prices.get(kind).inCrew() * crew.counts().get(kind))
            .sum();
  }

  /** Whether players of a kind are in every crew. */
  boolean isWelcome(int kind) {
    return prices.get(kind).isWelcome;
  }

  /** The kind of each player who is in every crew, in order. */
  int[] welcome() {
    return IntStream.range(0, kinds.size())
        .filter(this::isWelcome)
        .flatMap(kind -> kinds.get(kind).members().stream().mapToInt(member -> kind))
        .toArray();
  }

  /** What is paid on top for a player of a kind who is in a crew and is not used. */
  int unused(int kind) {
    KindPrice price = prices.get(kind);
    return price.isWelcome ? price.idle - price.used : 0;
  }

  /** What all players cost with these segments. */
  int of(List<Segment> segments) {
    List<Integer> used = segments.stream().map(Segment::player).distinct().toList();
    int points = 0;
    for (int kind = 0; kind < kinds.size(); kind++) {
      for (int member : kinds.get(kind).members()) {
        KindPrice price = prices.get(kind);
        points += used.contains(member) ? price.used : price.idle;
      }
    }
    return points;
  }
}
