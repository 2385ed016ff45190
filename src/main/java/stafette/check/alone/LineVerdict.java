package stafette.check.alone;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stafette.check.ShownTechnique;
import stafette.limits.Assurance;
import stafette.limits.Burst;
import stafette.limits.Instrument;
import stafette.limits.Source;
import stafette.limits.Technique;
import stafette.time.TempoMark;

/**
 * What becomes of one line in the hands of one fresh player of an instrument, in the better of its
 * ways of playing.
 *
 * @param techniques what the player uses, stretch by stretch; empty if the instrument has none
 * @param ratePerSecond the highest rate from note to note
 * @param share how many of 100 professional players manage the line, 0 to 100
 * @param ease the word for it
 * @param limiting what decides
 * @param stroke where: the stroke at which it takes most
 * @param planned the share of players of whom all that follows is told: one who is as good as so
 *     many of 100 are at least
 * @param use the largest share of a rate that the line takes from that player
 * @param burst the notes that take it; empty if no rate is tested
 * @param tiredness the highest, for that player
 * @param breath the largest share of the air spent, for that player; 0 for instruments without
 *     breath
 * @param lastsSeconds how long that player can play on from the line's first onset: the onset of
 *     the first stroke that fails; empty if the whole line holds
 * @param fastestTempo the fastest mark at the line's start at which that player manages, in the
 *     unit in force there and rounded down to whole beats, at most a hundred times the present one;
 *     empty if no tempo will do
 * @param thinning the fullest pattern that that player manages
 * @param source where the figure that decides comes from
 * @param helping a technique that not everybody has, where clearly more would manage with it
 */
public record LineVerdict(
    Instrument instrument,
    List<ShownTechnique> techniques,
    double ratePerSecond,
    double share,
    Ease ease,
    Limiting limiting,
    int stroke,
    Assurance planned,
    double use,
    Optional<Burst.Tightest> burst,
    double tiredness,
    double breath,
    OptionalDouble lastsSeconds,
    Optional<TempoMark> fastestTempo,
    Thinning thinning,
    Source source,
    Optional<OtherTechnique> helping) {
  public LineVerdict {
    techniques = List.copyOf(techniques);
  }

  /**
   * What would help.
   *
   * @param technique one that not everybody has
   * @param share how many of 100 of those who have it would manage
   */
  public record OtherTechnique(Technique technique, double share) {}

  LineVerdict with(Optional<OtherTechnique> help) {
    return new LineVerdict(
        instrument,
        techniques,
        ratePerSecond,
        share,
        ease,
        limiting,
        stroke,
        planned,
        use,
        burst,
        tiredness,
        breath,
        lastsSeconds,
        fastestTempo,
        thinning,
        source,
        help);
  }

  /** The largest of use, tiredness and breath, for that player. */
  public double strain() {
    return Math.max(use, Math.max(tiredness, breath));
  }
}
