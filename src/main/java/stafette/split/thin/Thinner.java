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
 * Chooses the fullest background part: for each stretch of a line (see {@link ThinChoices}) a
 * pattern, so that the player's whole part holds, with the most strokes kept; where that leaves a
 * choice, with the fewest changes of pattern, then the pattern that is named first.
 *
 * <p>That is exact for one technique through the whole line and one way of writing notes that are
 * left far apart: as long ones, or for winds also short with silences to breathe in. All
 * combinations are tried, stretch by stretch; of two that stand at the same stroke after the same
 * pattern, one that keeps no more strokes and leaves the player no fresher, in breath too, is given
 * up, which loses nothing, as less spent is never worse later. Techniques that are used only on
 * certain lines count only if the result is such a line.
 */
public final class Thinner {
  /** More than any line has changes of pattern. */
  private static final long STROKE = 1_000_000;

  private final Line line;
  private final Player player;
  private final Rules rules;
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
    this.stop = stop;
    this.progress = progress;
  }

  /**
   * A part that was found.
   *
   * @param part the fullest so far
   * @param proven whether no part is fuller; false if the search was stopped, or the pedals of a
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

  /** Combinations so far, compared by what they have kept. */
  private record ThinLabel(
      Optional<ThinLabel> before,
      Optional<ThinChoices.Choice> choice,
      long value,
      ThinStep.ThinState state) {
    boolean isAsGoodAs(ThinLabel other) {
      return value >= other.value
          && state.effort().tiredness() <= other.state.effort().tiredness()
          && state.effort().spent() <= other.state.effort().spent();
    }

    /** What must be equal for two to be compared. */
    List<Object> standing() {
      return List.of(
          choice.map(ThinChoices.Choice::pattern),
          state.tail(),
          state.run(),
          state.passages(),
          state.effort().sound());
    }

    List<ThinChoices.Choice> choices() {
      List<ThinChoices.Choice> all =
          new ArrayList<>(before.map(ThinLabel::choices).orElseGet(List::of));
      choice.ifPresent(all::add);
      return all;
    }
  }

  /**
   * The fullest part for a player.
   *
   * @param player with the skills that it brings
   */
  public static ThinnedPart thin(Line line, Player player, Rules rules) {
    return thin(line, player, rules, () -> false, progress -> {}).part();
  }

  /**
   * The fullest part, or the fullest that was found in time: from where the search was stopped,
   * nothing is kept.
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
    ThinnedPart part = thinner.fullest();
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

  private ThinnedPart fullest() {
    Optional<ThinLabel> best = Optional.empty();
    Optional<ThinnedPart> part = Optional.empty();
    for (boolean sounding : player.instrument().isWind() ? List.of(true, false) : List.of(true)) {
      for (int way = 0; way < player.ways().size() && !isStopped(); way++) {
        Optional<ThinLabel> found = best(way, sounding);
        long value = found.map(ThinLabel::value).orElse(Long.MIN_VALUE);
        if (value > best.map(ThinLabel::value).orElse(Long.MIN_VALUE)) {
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
    List<ThinLabel> labels =
        List.of(new ThinLabel(Optional.empty(), Optional.empty(), 0, ThinStep.ThinState.START));
    List<List<ThinChoices.Choice>> all = new ThinChoices(line, player, ready, sounding).all();
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
    List<List<ThinChoices.Choice>> left = all.subList(done, all.size());
    return fullest(labels, step).map(label -> leavingOut(left, label));
  }

  private boolean isStopped() {
    stopped = stopped || stop.getAsBoolean();
    return stopped;
  }

  private static Optional<ThinLabel> fullest(List<ThinLabel> labels, ThinStep step) {
    Optional<ThinLabel> best = Optional.empty();
    for (ThinLabel label : labels) {
      if (label.value > best.map(ThinLabel::value).orElse(Long.MIN_VALUE)
          && step.ends(label.state)) {
        best = Optional.of(label);
      }
    }
    return best;
  }

  private static ThinLabel leavingOut(List<List<ThinChoices.Choice>> stretches, ThinLabel before) {
    ThinLabel label = before;
    for (List<ThinChoices.Choice> choices : stretches) {
      ThinChoices.Choice nothing = choices.get(choices.size() - 1);
      label = after(label, nothing, label.state);
    }
    return label;
  }

  private static ThinLabel after(
      ThinLabel before, ThinChoices.Choice choice, ThinStep.ThinState state) {
    return new ThinLabel(Optional.of(before), Optional.of(choice), value(before, choice), state);
  }

  /** Cut short when the search is stopped. */
  private List<ThinLabel> after(
      List<ThinLabel> labels, List<ThinChoices.Choice> choices, ThinStep step) {
    Map<List<Object>, List<ThinLabel>> kept = new LinkedHashMap<>();
    for (ThinChoices.Choice choice : choices) {
      for (int i = 0; i < labels.size() && !isStopped(); i++) {
        ThinLabel label = labels.get(i);
        step.play(label.state, choice.kept())
            .map(state -> after(label, choice, state))
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

  private static long value(ThinLabel before, ThinChoices.Choice choice) {
    boolean changes = before.choice.filter(last -> last.pattern() != choice.pattern()).isPresent();
    return before.value + choice.kept().size() * STROKE - (changes ? 1 : 0);
  }

  private ThinnedPart part(ThinLabel label, int way) {
    List<ThinChoices.Choice> choices = label.choices();
    List<ThinnedStroke> kept = choices.stream().flatMap(choice -> choice.kept().stream()).toList();
    Optional<Plan> plan =
        kept.isEmpty() ? Optional.empty() : Optional.of(plan(ThinnedStroke.line(line, kept), way));
    return new ThinnedPart(line, player, stretches(choices), plan);
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

  private static List<ThinnedPart.ThinnedStretch> stretches(List<ThinChoices.Choice> choices) {
    List<ThinnedPart.ThinnedStretch> result = new ArrayList<>();
    for (ThinChoices.Choice choice : choices) {
      int end = result.size() - 1;
      if (end >= 0 && result.get(end).pattern() == choice.pattern()) {
        ThinnedPart.ThinnedStretch last = result.get(end);
        result.set(
            end,
            new ThinnedPart.ThinnedStretch(
                last.first(), choice.last(), last.pattern(), last.kept() + choice.kept().size()));
      } else {
        result.add(
            new ThinnedPart.ThinnedStretch(
                choice.first(), choice.last(), choice.pattern(), choice.kept().size()));
      }
    }
    return result;
  }
}
