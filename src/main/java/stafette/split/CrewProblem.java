package stafette.split;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * A crew with its search, which is begun only when its turn comes. It begins with strength for
 * nothing; if that leads nowhere soon, it begins again with good prices.
 */
final class CrewProblem {
  private static final int LABELS_BEFORE_TEST = 200;
  private static final int LABELS_BEFORE_PRICES = 3000;

  /** Prices for more kinds take longer to find than they save. */
  private static final int MOST_PRICED = 8;

  private final Crew crew;
  private final List<RelayOffers> relays;
  private final Bounds bounds;
  private final int price;
  private final int floor;
  private int proven;
  private Multipliers prices;
  private boolean priced;
  private boolean tested;
  private Optional<CrewSearch> begun = Optional.empty();
  private Optional<Extension> extension = Optional.empty();
  private int made;

  /**
   * @param price of the crew's players, what the others cost included
   * @param proven what is known before: no plan of these players costs less, in points, the
   *     players' price apart
   * @param floor no plan costs less that uses them to the last, likewise
   */
  CrewProblem(
      Crew crew, List<RelayOffers> relays, Bounds bounds, int price, int proven, int floor) {
    this.crew = crew;
    this.relays = relays;
    this.bounds = bounds;
    this.price = price;
    this.proven = proven;
    this.floor = floor;
    this.prices = Multipliers.none(crew.kinds());
  }

  Crew crew() {
    return crew;
  }

  /**
   * No plan costs less that uses this crew to the last player; {@link Relaxation#NEVER} if it has
   * none.
   */
  int bound() {
    int own = Math.max(floor, proven());
    return own >= Relaxation.NEVER ? Relaxation.NEVER : own + price;
  }

  /** No plan of these players costs less, their price apart, whoever of them plays. */
  int proven() {
    return Math.max(proven, begun.map(CrewSearch::bound).orElse(proven));
  }

  /** How many labels its searches have made. */
  int made() {
    return made;
  }

  Optional<CrewSearch.Goal> goal() {
    return begun.flatMap(CrewSearch::goal);
  }

  /** Whether its cheapest plan is found, whatever that costs with those who are not in it. */
  boolean isSettled() {
    return goal().filter(found -> proven() >= found.cost()).isPresent();
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
    if (begun.isEmpty() && risesAtOnce()) {
      return;
    }
    if (!tested && begun.get().made() > LABELS_BEFORE_TEST) {
      tested = true;
      if (bounds.isBeyond(crew)) {
        giveUp();
        return;
      }
    }
    if (begun.get().made() > LABELS_BEFORE_PRICES && isPricedAnew(best, stop)) {
      return;
    }
    CrewSearch search = begun.get();
    int before = search.made();
    search.advance(labels, Math.max(0, best - price), stop);
    made += search.made() - before;
  }

  /**
   * Begins the search; if that raises the bound, others may come first, and it is left off again.
   */
  private boolean risesAtOnce() {
    int before = Math.max(floor, proven);
    begin();
    boolean rises = proven() > before;
    if (rises) {
      close();
    }
    return rises;
  }

  /** Leaves off the search, but for what it has proven; going on begins it anew. */
  void close() {
    proven = proven();
    begun = Optional.empty();
    extension = prices.isFree() ? Optional.empty() : extension;
  }

  private void giveUp() {
    proven = Relaxation.NEVER;
    begun = Optional.empty();
  }

  /** Begins the search, and so learns its bound. */
  void begin() {
    begun = Optional.of(new CrewSearch(relays, extension()));
  }

  private boolean isPricedAnew(int best, BooleanSupplier stop) {
    boolean before = priced;
    price(best, stop);
    return priced != before;
  }

  /** Looks for prices, and begins again with them if they tell more. */
  void price(int best, BooleanSupplier stop) {
    if (priced || crew.kindsPresent().count() > MOST_PRICED) {
      return;
    }
    priced = true;
    long known = (best - (long) price) * Relaxation.MICROPOINTS;
    long now = Math.max(1, bound()) * Relaxation.MICROPOINTS;
    long target = best < Relaxation.NEVER ? known : now + now / 5 + 100 * Relaxation.MICROPOINTS;
    Multipliers.Priced found = Multipliers.find(crew, relays, target, stop);
    if (found.bound() >= Relaxation.NEVER_MICRO) {
      giveUp();
      return;
    }
    if (!found.prices().isFree()) {
      prices = found.prices();
      extension = Optional.empty();
      proven = Math.max(proven, (int) (found.bound() / Relaxation.MICROPOINTS));
      begun = Optional.empty();
      begin();
    }
  }
}
