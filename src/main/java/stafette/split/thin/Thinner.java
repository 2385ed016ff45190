package stafette.split.thin;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import stafette.check.Finding;
import stafette.check.Judge;
import stafette.check.alone.ThinnedPart;
import stafette.check.alone.ThinnedStroke;
import stafette.check.alone.Thinning;
import stafette.limits.Technique;
import stafette.plan.Brief;
import stafette.plan.GivenStretch;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Rules;
import stafette.plan.Segment;
import stafette.score.Line;

/**
 * Chooses the fullest background part that changes its pattern where a player expects it: for each
 * stretch of a line (see {@link ThinChoices}) a pattern, so that the player's whole part holds, at
 * the least cost. Each stroke left out costs a point, each change of pattern so many points, times
 * what its {@link ChangePlace} says. A stretch in which the player is hindered has what can be kept
 * there, and the pattern before goes on after it at no cost. No bar is a hole: none keeps fewer
 * strokes than both the pattern before and the one after would keep in it, unless the player is
 * hindered beside it. Equal costs go to fewer changes, then to the fuller end.
 *
 * <p>That is exact for one technique through the whole line and one way of writing notes that are
 * left far apart: as long ones, or for winds also short with silences to breathe in. All
 * combinations are tried, stretch by stretch; of two that stand at the same stroke in the same
 * pattern, one that costs no less, may go on no more freely and leaves the player no fresher, in
 * breath too, is given up, which loses nothing, as less spent is never worse later. Techniques that
 * are used only on certain lines count only if the result is such a line.
 */
public final class Thinner {

  private final Line line;
  private final Player player;
  private final Rules rules;
  private final int change;
  private final BooleanSupplier stop;
  private final Consumer<ThinProgress> progress;
  private boolean stopped;
  private boolean dropped;
  private int reckoned;

  private Thinner(
      Line line,
      Player player,
      Rules rules,
      BooleanSupplier stop,
      Consumer<ThinProgress> progress) {
    this.line = line;
    this.player = player;
    this.rules = rules;
    this.change = rules.weights().patternChange();
    this.stop = stop;
    this.progress = progress;
  }

  /**
   * A part that was found.
   *
   * @param part the best so far
   * @param proven whether no part costs less; false if the search was stopped, or the pedals of a
   *     harp did not give what it found
   */
  public record Found(ThinnedPart part, boolean proven) {}

  /**
   * How far a search has come.
   *
   * @param player for whom
   * @param stretches how many of the line have been tried, in one way
   * @param of how many it has
   * @param reckoned how many combinations of neighbouring patterns have been reckoned, with all
   *     techniques so far
   */
  public record ThinProgress(Player player, int stretches, int of, int reckoned) {}

  /**
   * The best part for a player.
   *
   * @param player with the skills that it brings
   */
  public static ThinnedPart thin(Line line, Player player, Rules rules) {
    return thin(line, player, rules, () -> false, progress -> {}).part();
  }

  /**
   * The best part, or the best that was found in time: from where the search was stopped, nothing
   * is kept.
   *
   * @param stop asked often; ends the search if it says yes
   * @param progress told after each stretch
   */
  public static Found thin(
      Line line,
      Player player,
      Rules rules,
      BooleanSupplier stop,
      Consumer<ThinProgress> progress) {
    Thinner thinner = new Thinner(line, onAnyNotes(player), rules, stop, progress);
    ThinnedPart part = thinner.best();
    return new Found(part, !thinner.stopped && !thinner.dropped);
  }

  /**
   * The player without techniques for repeated notes alone, or for changing ones: which notes of a
   * thinned part are repeated shows only when the next one is known.
   */
  private static Player onAnyNotes(Player player) {
    return player.with(
        player.skills().stream()
            .filter(skill -> skill.technique().pitches() == Technique.Pitches.ANY)
            .toList());
  }

  private ThinnedPart best() {
    Optional<ThinLabel> best = Optional.empty();
    Optional<ThinnedPart> part = Optional.empty();
    for (boolean sounding : player.instrument().isWind() ? List.of(true, false) : List.of(true)) {
      for (int way = 0; way < player.ways().size() && !isStopped(); way++) {
        Optional<ThinLabel> found = best(way, sounding);
        if (cost(found) < cost(best)) {
          Optional<ThinnedPart> made = used(part(found.orElseThrow(), way));
          best = made.isPresent() ? found : best;
          part = made.isPresent() ? made : part;
        }
      }
    }
    return part.orElseGet(this::nothing);
  }

  private Optional<ThinLabel> best(int way, boolean sounding) {
    long ready = rules.readyMicros(player);
    ThinStep step = new ThinStep(line, player, player.ways().get(way), ready);
    List<ThinLabel> labels = List.of(ThinLabel.START);
    List<ThinStretch> all = new ThinChoices(line, player, ready, sounding).all();
    int done = 0;
    while (done < all.size() && !isStopped()) {
      List<ThinLabel> next = after(labels, all.get(done), step);
      if (!stopped) {
        labels = next;
        done++;
        progress.accept(new ThinProgress(player, done, all.size(), reckoned + step.reckoned()));
      }
    }
    reckoned += step.reckoned();
    List<ThinStretch> left = all.subList(done, all.size());
    return cheapest(labels, step).map(label -> leavingOut(left, label));
  }

  private boolean isStopped() {
    stopped = stopped || stop.getAsBoolean();
    return stopped;
  }

  private static Optional<ThinLabel> cheapest(List<ThinLabel> labels, ThinStep step) {
    Optional<ThinLabel> best = Optional.empty();
    for (ThinLabel label : labels) {
      if (label.cost() < cost(best) && step.ends(label.state())) {
        best = Optional.of(label);
      }
    }
    return best;
  }

  private static long cost(Optional<ThinLabel> label) {
    return label.map(ThinLabel::cost).orElse(Long.MAX_VALUE);
  }

  private ThinLabel leavingOut(List<ThinStretch> stretches, ThinLabel before) {
    ThinLabel label = before;
    for (ThinStretch stretch : stretches) {
      label = label.then(stretch, Thinning.NOTHING, label.state(), change);
    }
    return label;
  }

  /** Cut short when the search is stopped. */
  private List<ThinLabel> after(List<ThinLabel> labels, ThinStretch stretch, ThinStep step) {
    Map<List<Object>, List<ThinLabel>> kept = new LinkedHashMap<>();
    for (Thinning pattern : stretch.kept().keySet()) {
      for (int i = 0; i < labels.size() && !isStopped(); i++) {
        ThinLabel label = labels.get(i);
        Optional.of(label)
            .filter(before -> before.allows(stretch, pattern))
            .flatMap(before -> step.play(before.state(), stretch.kept(pattern)))
            .map(state -> label.then(stretch, pattern, state, change))
            .ifPresent(
                next -> add(kept.computeIfAbsent(next.standing(), key -> new ArrayList<>()), next));
      }
    }
    return kept.values().stream().flatMap(Collection::stream).toList();
  }

  private static void add(List<ThinLabel> rivals, ThinLabel next) {
    if (rivals.stream().noneMatch(rival -> rival.isAsGoodAs(next))) {
      rivals.removeIf(next::isAsGoodAs);
      rivals.add(next);
    }
  }

  private ThinnedPart part(ThinLabel label, int way) {
    List<ThinLabel> all = label.all();
    List<ThinnedStroke> kept = all.stream().flatMap(each -> each.kept().stream()).toList();
    Optional<Plan> plan =
        kept.isEmpty() ? Optional.empty() : Optional.of(plan(ThinnedStroke.line(line, kept), way));
    return new ThinnedPart(line, player, stretches(all), plan);
  }

  private Plan plan(Line left, int way) {
    List<Segment> segments = new ArrayList<>();
    int first = 0;
    for (int j = 1; j <= left.count(); j++) {
      if (j == left.count() || isGivenBetween(left.onsetMicros(j - 1), left.onsetMicros(j))) {
        segments.add(new Segment(0, way, first, j - 1));
        first = j;
      }
    }
    return new Plan(new Brief(left, List.of(player), rules), segments);
  }

  private boolean isGivenBetween(long from, long to) {
    return player.busy().stream()
        .mapToLong(GivenStretch::fromMicros)
        .anyMatch(micros -> from < micros && micros <= to);
  }

  /** The part, if the pedals of a harp give what is left; the search doesn't know of them. */
  private Optional<ThinnedPart> used(ThinnedPart part) {
    List<Finding> findings = part.kept().map(Judge::playing).orElse(List.of());
    if (findings.stream().anyMatch(finding -> finding.kind() != Finding.FindingKind.TECHNIQUE)) {
      throw new IllegalStateException(
          "the search found a thinned part that does not hold: " + part + " " + findings);
    }
    dropped |= !findings.isEmpty();
    return findings.isEmpty() ? Optional.of(part) : Optional.empty();
  }

  private ThinnedPart nothing() {
    return new ThinnedPart(
        line,
        player,
        List.of(new ThinnedPart.ThinnedStretch(0, line.count() - 1, Thinning.NOTHING, 0)),
        Optional.empty());
  }

  private static List<ThinnedPart.ThinnedStretch> stretches(List<ThinLabel> labels) {
    List<ThinnedPart.ThinnedStretch> result = new ArrayList<>();
    for (ThinLabel label : labels) {
      ThinStretch stretch = label.stretch().orElseThrow();
      int end = result.size() - 1;
      boolean goesOn = end >= 0 && result.get(end).pattern() == label.chosen();
      int first = goesOn ? result.get(end).first() : stretch.first();
      int before = goesOn ? result.remove(end).kept() : 0;
      result.add(
          new ThinnedPart.ThinnedStretch(
              first, stretch.last(), label.chosen(), before + label.kept().size()));
    }
    return result;
  }
}
