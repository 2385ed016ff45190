package stafette.limits;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Turns feats of one player into limits of that player alone, without spread: all figures that the
 * feats leave open follow the population's means.
 *
 * <p>A fresh player lasts T seconds at a constant rate r above sustained if {@code r · T = stamina
 * + sustained · T} (the law of tiredness), and no rate above peak for a moment. In the mean of the
 * population K seconds at peak spend the stamina, eight unless the tables say otherwise. So:
 *
 * <ul>
 *   <li>One feat is one figure, k, by which peak, sustained, stamina and moving rate are multiplied
 *       so that the player just lasts: {@code k = r · T / (stamina + sustained · T)}. What is kept
 *       for less than K seconds, or for a moment, speaks of the peak: {@code k = r / peak}, and T
 *       counts as K.
 *   <li>Of two feats or more of K seconds and more, the shortest and the longest fix sustained and
 *       stamina: {@code sustained = (r2 · T2 − r1 · T1) / (T2 − T1)}. Those between them can only
 *       raise the stamina, until all hold.
 *   <li>Peak is what spends the stamina in K seconds, unless something shorter than K is said
 *       beside the longest feat: then it is the fastest rate said.
 *   <li>Where nothing can go on (a bow that is thrown), the strokes of the longest feat are the
 *       stamina, and the fastest rate is the peak.
 * </ul>
 *
 * <p>Figures are rounded up to the next thousandth, so that what is said holds before a judge who
 * rounds against the player and counts whole microseconds.
 */
final class OwnLimit {
  private final Limit mean;
  private final List<Feat> feats;
  private final double keeps;

  private OwnLimit(Limit mean, List<Feat> feats) {
    this.mean = mean;
    this.feats = feats;
    this.keeps = mean.secondsAtPeak();
  }

  /**
   * The player's own limit.
   *
   * @param feats at least one, from the shortest to the longest, each slower than the one before
   *     and with more strokes
   */
  static Limit of(Limit population, List<Feat> feats) {
    return new OwnLimit(population, feats).limit();
  }

  private Limit limit() {
    double fastest = feats.get(0).perSecond();
    double sustained = sustained();
    double stamina =
        feats.stream()
            .mapToDouble(feat -> (feat.perSecond() - sustained) * seconds(feat))
            .max()
            .orElseThrow();
    double peak = isPeakSaid() ? fastest : Math.max(fastest, sustained + stamina / keeps);
    OptionalDouble moving = mean.movingPerSecond();
    return new Limit(
        up(peak),
        0,
        sustained > 0 ? up(sustained) : 0,
        OptionalDouble.of(up(stamina)),
        mean.recoverySeconds(),
        moving.isPresent()
            ? OptionalDouble.of(up(moving.getAsDouble() * peak / mean.peakPerSecond()))
            : moving);
  }

  private double sustained() {
    List<Feat> tiring = feats.stream().filter(feat -> feat.lasting() >= keeps).toList();
    Feat longest = longest();
    if (tiring.size() > 1 && mean.sustainedPerSecond() > 0) {
      Feat shortest = tiring.get(0);
      return (longest.strokes() - shortest.strokes()) / (longest.lasting() - shortest.lasting());
    }
    double inProportion = mean.stamina() + mean.sustainedPerSecond() * seconds(longest);
    return mean.sustainedPerSecond() * longest.perSecond() * seconds(longest) / inProportion;
  }

  private boolean isPeakSaid() {
    return mean.sustainedPerSecond() == 0 || (feats.size() > 1 && feats.get(0).lasting() < keeps);
  }

  private Feat longest() {
    return feats.get(feats.size() - 1);
  }

  /** How long a feat counts: the longest one no shorter than what the peak is kept. */
  private double seconds(Feat feat) {
    return feat.equals(longest()) ? Math.max(keeps, feat.lasting()) : feat.lasting();
  }

  private static double up(double figure) {
    return (Math.floor(figure * 1000) + 1) / 1000;
  }
}
