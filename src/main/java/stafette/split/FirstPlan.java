package stafette.split;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** A plan soon, not the best: a beam over partial plans of equal numbers of segments. */
final class FirstPlan {
  private static final int ENDS = 12;

  private final List<Relay> relays;
  private final Extension extension;
  private final int width;

  FirstPlan(List<Relay> relays, Extension extension, int width) {
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
      List<Label> next = new ArrayList<>();
      for (Label label : beam) {
        best = cheaper(best, extend(label, next));
      }
      beam = narrowed(next, best);
    }
    return best;
  }

  private Optional<CrewSearch.Goal> extend(Label label, List<Label> next) {
    extension.findEnds(label);
    Optional<CrewSearch.Goal> goal = Optional.empty();
    for (int tried = 0; label.hasEnd() && tried < ENDS; label.nextEnd()) {
      int end = label.end();
      int before = next.size();
      boolean whole = extension.follow(label, end, next::add);
      if (whole) {
        goal =
            cheaper(goal, Optional.of(new CrewSearch.Goal(label, end, extension.cost(label, end))));
      }
      tried += whole || next.size() > before ? 1 : 0;
    }
    return goal;
  }

  private List<Label> narrowed(List<Label> labels, Optional<CrewSearch.Goal> best) {
    int most = best.map(CrewSearch.Goal::cost).orElse(Relaxation.NEVER);
    labels.removeIf(label -> extension.bound(label) >= most);
    labels.sort(Comparator.comparingInt(extension::bound));
    Map<Place, Integer> perPlace = new HashMap<>();
    List<Label> kept = new ArrayList<>();
    for (Label label : labels) {
      if (kept.size() < width
          && perPlace.merge(Place.of(label, relays.get(label.relay()).count()), 1, Integer::sum)
              <= 2) {
        kept.add(label);
      }
    }
    return kept;
  }

  private static Optional<CrewSearch.Goal> cheaper(
      Optional<CrewSearch.Goal> one, Optional<CrewSearch.Goal> other) {
    boolean better = other.isPresent() && (one.isEmpty() || other.get().cost() < one.get().cost());
    return better ? other : one;
  }
}
