package stafette.split;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * A crew with its search, which is begun only when its turn comes. It begins with strength for
 * nothing; if that leads nowhere soon, it begins again with good prices.
 */
final class Candidate {
  private static final int LABELS_BEFORE_TEST = 200;
  private static final int LABELS_BEFORE_PRICES = 3000;

  private final Crew crew;
  private final int order;
  private final List<Relay> relays;
  private final Bounds bounds;
  private final int playerPrice;
  private int floor;
  private Prices prices;
  private boolean priced;
  private boolean tested;
  private Optional<CrewSearch> begun = Optional.empty();
  private Optional<Extension> extension = Optional.empty();
  private int made;

  /**
   * @param order among crews of the same bound the first is searched first
   * @param floor what is known of the bound before, in points, the players' price apart
   */
  Candidate(Crew crew, int order, List<Relay> relays, Bounds bounds, int playerPrice, int floor) {
    this.crew = crew;
    this.order = order;
    this.relays = relays;
    this.bounds = bounds;
    this.playerPrice = playerPrice;
    this.floor = floor;
    this.prices = Prices.none(crew.kinds());
  }

  Crew crew() {
    return crew;
  }

  int order() {
    return order;
  }

  /** No plan of this crew costs less; {@link Relaxation#NEVER} if it has none. */
  int bound() {
    int own = boundWithoutPlayers();
    return own >= Relaxation.NEVER ? Relaxation.NEVER : own + playerPrice * crew.size();
  }

  /** The same without the players' price. */
  int boundWithoutPlayers() {
    return Math.max(floor, begun.map(CrewSearch::bound).orElse(floor));
  }

  /** How many labels its searches have made. */
  int made() {
    return made;
  }

  Optional<CrewSearch.Goal> goal() {
    return begun.flatMap(CrewSearch::goal);
  }

  Extension extension() {
    if (extension.isEmpty()) {
      extension = Optional.of(bounds.extension(crew, prices));
    }
    return extension.get();
  }

  /**
   * Goes on with the search for a while.
   *
   * @param best what the best plan known costs
   */
  void advance(int labels, int best, BooleanSupplier stop) {
    if (begun.isEmpty()) {
      begin();
      return;
    }
    if (!tested && begun.get().made() > LABELS_BEFORE_TEST) {
      tested = true;
      if (bounds.isBeyond(crew)) {
        giveUp();
        return;
      }
    }
    if (!priced && begun.get().made() > LABELS_BEFORE_PRICES) {
      price(best, stop);
      return;
    }
    CrewSearch search = begun.get();
    int before = search.made();
    search.advance(labels, Math.max(0, best - playerPrice * crew.size()), stop);
    made += search.made() - before;
  }

  private void giveUp() {
    floor = Relaxation.NEVER;
    begun = Optional.empty();
  }

  /** Begins the search, and so learns its bound. */
  void begin() {
    begun = Optional.of(new CrewSearch(relays, extension()));
  }

  /** Looks for prices, and begins again with them if they tell more. */
  void price(int best, BooleanSupplier stop) {
    if (priced) {
      return;
    }
    priced = true;
    long known = (best - (long) playerPrice * crew.size()) * Relaxation.MICROPOINTS;
    long now = Math.max(1, bound()) * Relaxation.MICROPOINTS;
    long target = best < Relaxation.NEVER ? known : now + now / 5 + 100 * Relaxation.MICROPOINTS;
    Prices.Found found = Prices.find(crew, relays, target, stop);
    if (found.bound() >= Relaxation.NEVER_MICRO) {
      giveUp();
      return;
    }
    if (!found.prices().isFree()) {
      prices = found.prices();
      extension = Optional.empty();
      floor = Math.max(floor, (int) (found.bound() / Relaxation.MICROPOINTS));
      begun = Optional.empty();
      begin();
    }
  }
}
