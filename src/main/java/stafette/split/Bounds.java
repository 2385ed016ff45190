package stafette.split;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stafette.plan.Brief;
import stafette.plan.Hocket;
import stafette.plan.Lock;

/** Makes the bounds of crews; crews of which nobody can tell the difference share theirs. */
final class Bounds {
  private final Brief brief;
  private final List<Relay> relays;
  private final Map<List<Object>, Relaxation> known = new HashMap<>();

  Bounds(Brief brief, List<Relay> relays) {
    this.brief = brief;
    this.relays = relays;
  }

  boolean isBeyond(Crew crew) {
    return Prices.isBeyond(crew, relays);
  }

  /** Extends the partial plans of a crew. */
  Extension extension(Crew crew, Prices prices) {
    Relaxation[] relaxations = new Relaxation[relays.size()];
    for (int relay = 0; relay < relaxations.length; relay++) {
      relaxations[relay] = of(crew, relays.get(relay), prices);
    }
    boolean doubled = relays.size() > 1 && brief.doubled(0, 1);
    boolean turnsApart = relays.size() > 1 && brief.rules().hocket() != Hocket.NO;
    return new Extension(crew, relays, relaxations, prices, doubled, turnsApart, mustKeep());
  }

  private Relaxation of(Crew crew, Relay relay, Prices prices) {
    boolean alone = relays.size() == 1;
    if (!prices.isFree() || (alone && crew.size() == 2)) {
      return new Relaxation(crew, relay, prices, alone);
    }
    int enough = brief.rules().hocket() == Hocket.NO ? 2 : 4;
    List<Object> likeness =
        List.of(relay, crew.counts().stream().map(count -> Math.min(count, enough)).toList());
    return known.computeIfAbsent(likeness, key -> new Relaxation(crew, relay, prices, alone));
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
