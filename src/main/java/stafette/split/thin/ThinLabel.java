package stafette.split.thin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.check.alone.ThinnedStroke;
import stafette.check.alone.Thinning;

/**
 * Patterns for the first stretches of a line.
 *
 * @param before the same without the last stretch; empty at the start
 * @param stretch the last one; empty at the start
 * @param chosen what is kept of that
 * @param pattern the part's own pattern, that of the last stretch in which the player is free;
 *     empty before the first
 * @param cost strokes left out and changes paid, in points; then how often the pattern differs
 * @param dips whether the last stretch is a bar, alone so far, that keeps less than the pattern
 *     before would
 * @param state where the player stands
 */
record ThinLabel(
    Optional<ThinLabel> before,
    Optional<ThinStretch> stretch,
    Thinning chosen,
    Optional<Thinning> pattern,
    long cost,
    boolean dips,
    ThinStep.ThinState state) {
  /** More than any line has changes of pattern. */
  private static final long POINT = 1_000_000;

  static final ThinLabel START =
      new ThinLabel(
          Optional.empty(),
          Optional.empty(),
          Thinning.NOTHING,
          Optional.empty(),
          0,
          false,
          ThinStep.ThinState.START);

  /** Whether a stretch may go on with a pattern: not if that made the bar before it a hole. */
  boolean allows(ThinStretch next, Thinning other) {
    return !dips
        || next.hindered()
        || stretch.filter(last -> last.leftOut(other) < last.leftOut(chosen)).isEmpty();
  }

  /**
   * With one stretch more.
   *
   * @param change the price of a change of pattern where something begins
   */
  ThinLabel then(ThinStretch next, Thinning choice, ThinStep.ThinState after, int change) {
    boolean differs = pattern.filter(own -> own != choice).isPresent();
    boolean changes = differs && !next.hindered();
    int points = next.leftOut(choice) + (changes ? change * next.place().times() : 0);
    return new ThinLabel(
        Optional.of(this),
        Optional.of(next),
        choice,
        next.hindered() ? pattern : Optional.of(choice),
        cost + points * POINT + (differs ? 1 : 0),
        next.wholeBar() && isThinner(next, choice),
        after);
  }

  /** Whether a choice keeps less of a stretch than the pattern of the one before would. */
  private boolean isThinner(ThinStretch next, Thinning choice) {
    return stretch.filter(last -> !last.hindered()).isPresent()
        && next.leftOut(chosen) < next.leftOut(choice);
  }

  boolean isAsGoodAs(ThinLabel other) {
    return cost <= other.cost
        && (!dips || other.dips)
        && state.effort().tiredness() <= other.state.effort().tiredness()
        && state.effort().spent() <= other.state.effort().spent();
  }

  /** What must be equal for two to be compared. */
  List<Object> standing() {
    return List.of(pattern, state.tail(), state.run(), state.passages(), state.effort().sound());
  }

  /** From the first stretch on. */
  List<ThinLabel> all() {
    List<ThinLabel> all = new ArrayList<>(before.map(ThinLabel::all).orElseGet(List::of));
    stretch.ifPresent(last -> all.add(this));
    return all;
  }

  List<ThinnedStroke> kept() {
    return stretch.map(last -> last.kept(chosen)).orElse(List.of());
  }
}
