package stafette.check.alone;

import java.util.Optional;
import java.util.OptionalDouble;
import stafette.limits.Capability;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.time.TempoMark;

/**
 * What becomes of one line with one technique in the hands of one fresh player.
 *
 * @param ratePerSecond the highest rate from note to note
 * @param use the largest share of a peak or moving limit
 * @param tiredness the highest
 * @param breath the largest share of the air spent; 0 for instruments without breath
 * @param lastsSeconds how long the player can play on from the line's first onset: the onset of the
 *     first stroke that fails, 0 if that is the first one whose rate is tested at all; empty if the
 *     whole line holds
 * @param ease by the largest of use, tiredness and breath
 * @param fastestTempo the fastest mark at the line's start at which it can be played, in the unit
 *     in force there and rounded down to whole beats, at most a hundred times the present one;
 *     empty if no tempo will do
 * @param thinning the fullest pattern that can be played
 */
public record LineVerdict(
    Instrument instrument,
    Technique technique,
    Capability capability,
    double ratePerSecond,
    double use,
    double tiredness,
    double breath,
    OptionalDouble lastsSeconds,
    Ease ease,
    Optional<TempoMark> fastestTempo,
    Thinning thinning) {
  /** The largest of use, tiredness and breath. */
  public double strain() {
    return Math.max(use, Math.max(tiredness, breath));
  }
}
