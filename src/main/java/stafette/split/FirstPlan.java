package stafette.split;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;

/** A plan soon, not the best: a beam over partial plans of equal numbers of segments. */
final class FirstPlan {
  private static final int ENDS = 12;

  /** So many times the width of labels are looked at before the beam is narrowed. */
  private static final int CROWD = 8;

  private final List<RelayOffers> relays;
  private final Extension extension;
  private final int width;
  private int made;

  FirstPlan(List<RelayOffers> relays, Extension extension, int width) {
    this.relays = relays;
    this.extension = extension;
    this.width = width;
  }

  /** The cheapest plan that the beam meets. */
  Optional<CrewSearch.Goal> find(BooleanSupplier stop) {
    List<Label> beam = new ArrayList<>();
    extension.begin(beam::add);
    Optional<CrewSearch.Goal> best = Optional.empty();
    while (!beam.isEmpty() && !stop.getAsBoolean()) {
      Harvest next = new Harvest(extension, CROWD * width);
      for (Label label : beam) {
        best = cheaper(best, extend(label, next));
      }
      beam = narrowed(next.labels, best);
      made += next.offered;
    }
    return best;
  }

  /** How many labels it has made. */
  int made() {
    return made;
  }

  private Optional<CrewSearch.Goal> extend(Label label, Harvest next) {
    extension.findEnds(label);
    Optional<CrewSearch.Goal> goal = Optional.empty();
    int tried = 0;
    while (label.hasEnd() && tried < ENDS && extension.bound(label) < next.enough()) {
      int end = label.end();
      int before = next.offered;
      boolean whole = extension.follow(label, end, next.enough(), next::offer);
      if (whole) {
        goal = cheaper(goal, Optional.of(CrewSearch.Goal.of(label, end, extension)));
      }
      tried += whole || next.offered > before ? 1 : 0;
      label.nextEnd();
    }
    return goal;
  }

  private List<Label> narrowed(List<Label> labels, Optional<CrewSearch.Goal> best) {
    int most = best.map(CrewSearch.Goal::cost).orElse(Relaxation.NEVER);
    List<Label> cheapestFirst =
        labels.stream()
            .map(label -> new Bounded(label, extension.bound(label)))
            .filter(bounded -> bounded.bound < most)
            .sorted(Comparator.comparingInt(Bounded::bound))
            .map(Bounded::label)
            .toList();
    Map<DominanceKey, Integer> perPlace = new HashMap<>();
    List<Label> kept = new ArrayList<>();
    for (Label label : cheapestFirst) {
      if (kept.size() < width
          && perPlace.merge(
                  DominanceKey.of(label, relays.get(label.relay()).count()), 1, Integer::sum)
              <= 2) {
        kept.add(label);
      }
    }
    return kept;
  }

  /** A label with its bound as it was asked for: later it may be known to be higher. */
  private record Bounded(Label label, int bound) {}

  private static Optional<CrewSearch.Goal> cheaper(
      Optional<CrewSearch.Goal> one, Optional<CrewSearch.Goal> other) {
    boolean better = other.isPresent() && (one.isEmpty() || other.get().cost() < one.get().cost());
    return better ? other : one;
  }

  /** Labels that follow; once there are enough, only those better than the worst of the best. */
  private static final class Harvest {
    private final Extension extension;
    private final int most;
    private final List<Label> labels = new ArrayList<>();
    private int offered;
    private final PriorityQueue<Integer> best = new PriorityQueue<>(Comparator.reverseOrder());

    Harvest(Extension extension, int most) {
      this.extension = extension;
      this.most = most;
    }

    void offer(Label label) {
      offered++;
      int bound = extension.bound(label);
      if (bound < enough()) {
        labels.add(label);
        best.add(bound);
        if (best.size() > most) {
          best.remove();
        }
      }
    }

    /** The bound of labels that need not come any more. */
    int enough() {
      return best.size() < most ? Relaxation.NEVER : best.element();
    }
  }
}
