package stafette.split;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.plan.Brief;
import stafette.plan.Hocket;
import stafette.plan.Lock;

/** Makes the bounds of crews; crews of which nobody can tell the difference share theirs. */
final class Bounds {
  /** Those used last are kept: there may be more crews than memory. */
  private static final int MOST_KEPT = 64;

  private final Brief brief;
  private final List<RelayOffers> relays;
  private final Map<List<Object>, Relaxation> known =
      new LinkedHashMap<>(MOST_KEPT, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Object>, Relaxation> eldest) {
          return size() > MOST_KEPT;
        }
      };

  private final PlayerPrices playerPrices;

  Bounds(Brief brief, List<RelayOffers> relays, PlayerPrices playerPrices) {
    this.playerPrices = playerPrices;
    this.brief = brief;
    this.relays = relays;
  }

  boolean isBeyond(Crew crew) {
    return Multipliers.isBeyond(crew, relays);
  }

  /** Extends the partial plans of a crew. */
  Extension extension(Crew crew, Multipliers prices) {
    Relaxation[] relaxations = new Relaxation[relays.size()];
    for (int relay = 0; relay < relaxations.length; relay++) {
      relaxations[relay] = of(crew, relays.get(relay), prices);
    }
    boolean doubled = relays.size() > 1 && brief.doubled(0, 1);
    boolean turnsApart = relays.size() > 1 && brief.rules().hocket() != Hocket.NO;
    IdlePlayers idle = idle(crew, relaxations, prices);
    return new Extension(crew, relays, relaxations, prices, idle, doubled, turnsApart, mustKeep());
  }

  /** How dear it is to let a kind play is told where it may differ, and prices don't hide it. */
  private IdlePlayers idle(Crew crew, Relaxation[] relaxations, Multipliers prices) {
    int[] slots = crew.slots();
    int[] points = Arrays.stream(slots).map(playerPrices::unused).toArray();
    boolean told =
        relays.size() == 1
            && prices.isFree()
            && relaxations[0].whole() < Relaxation.NEVER_MICRO
            && crew.kindsPresent().count() > 1
            && Arrays.stream(points).anyMatch(each -> each > 0);
    return new IdlePlayers(
        slots,
        points,
        told
            ? Optional.of(() -> TakingPart.of(relays.get(0), relaxations[0], crew.kinds().size()))
            : Optional.empty());
  }

  private Relaxation of(Crew crew, RelayOffers relay, Multipliers prices) {
    boolean alone = relays.size() == 1;
    if (!prices.isFree()) {
      return new Relaxation(crew, relay, prices, alone);
    }
    int enough = brief.rules().hocket() == Hocket.NO ? 2 : 4;
    List<Object> likeness =
        List.of(
            relay,
            alone && crew.size() == 2,
            crew.counts().stream().map(count -> Math.min(count, enough)).toList());
    return known.computeIfAbsent(likeness, key -> new Relaxation(crew, relay, prices, alone));
  }

  /**
   * By kind, in points: no plan costs less in which somebody of that kind plays, the players' price
   * apart; {@link Relaxation#NEVER} for a kind that can't play.
   *
   * @param crew all who may play
   */
  int[] withKind(Crew crew) {
    long[] least = new long[crew.kinds().size()];
    Arrays.fill(least, Relaxation.NEVER_MICRO);
    long whole = 0;
    for (RelayOffers relay : relays) {
      whole += of(crew, relay, Multipliers.none(crew.kinds())).whole();
    }
    for (RelayOffers relay : relays) {
      Relaxation relaxed = of(crew, relay, Multipliers.none(crew.kinds()));
      long[] here = TakingPart.leastByKind(relay, relaxed, least.length);
      for (int kind = 0; kind < least.length; kind++) {
        least[kind] = Math.min(least[kind], whole - relaxed.whole() + here[kind]);
      }
    }
    return Arrays.stream(least).mapToInt(Extension::points).toArray();
  }

  private long mustKeep() {
    long bits = 0;
    List<Lock> locks = brief.rules().locks();
    for (int i = 0; i < locks.size(); i++) {
      long bit = 1L << i;
      bits |= locks.get(i).match(at -> 0L, exactly -> 0L, in -> bit, out -> 0L);
    }
    return bits;
  }
}
