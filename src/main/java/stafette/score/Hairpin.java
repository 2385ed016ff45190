package stafette.score;

import java.util.Optional;
import stafette.time.Position;
import stafette.time.Span;

/**
 * A hairpin, or words that say the same.
 *
 * @param span where it grows louder or softer
 * @param staff counted from 1
 * @param louder whether it grows louder
 * @param words that say so, such as "cresc."; empty for a wedge
 * @param dashed whether dashes follow the words
 * @param goal the dynamic that stands where it ends, if one does
 */
public record Hairpin(
    Span span,
    int staff,
    boolean louder,
    Optional<String> words,
    boolean dashed,
    Optional<Dynamic> goal) {
  /**
   * How loud it is at a place within it, if it leads evenly from one dynamic to another.
   *
   * @param from the dynamic before it
   * @param goal the dynamic after it
   */
  public Dynamic at(Position place, Dynamic from, Dynamic goal) {
    double share =
        place.since(span.start()).quarters().toDouble() / span.length().quarters().toDouble();
    long steps = Math.round(share * (goal.ordinal() - from.ordinal()));
    return Dynamic.values()[from.ordinal() + (int) steps];
  }

  /** Whether a dynamic lies where it leads from another. */
  public boolean leadsTo(Dynamic goal, Dynamic from) {
    return louder ? goal.compareTo(from) > 0 : goal.compareTo(from) < 0;
  }
}
