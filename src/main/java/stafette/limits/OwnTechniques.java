package stafette.limits;

import java.util.List;

/**
 * An instrument in the hands of somebody of whom some techniques are known. One figure shifts all
 * that hang on it: what else the same tongue, bow or hand does is taken to be better or worse in
 * the same proportion, and keeps its relative spread, being a guess at this player still.
 *
 * <p>The proportion is that of the player's peak to the population's mean, or of sustained to
 * sustained if that is smaller, so that nothing is promised that was not said. Where several
 * techniques of an act are known, that with as many takers counts before others, then the smaller
 * proportion. Fingers don't follow the tongue: the moving rate of slurred notes stays, and slurred
 * notes shift nothing. What has no spread is known, and stays.
 */
public final class OwnTechniques {
  private static final Source SHIFTED =
      new Source("common practice, no source; in proportion to the player's own figure", Grade.D);

  private final Instrument usual;
  private final List<Technique> own;

  private OwnTechniques(Instrument usual, List<Technique> own) {
    this.usual = usual;
    this.own = own;
  }

  /**
   * The instrument with techniques of a player's own.
   *
   * @param own techniques of this instrument with limits of the player's own
   */
  public static Instrument in(Instrument usual, List<Technique> own) {
    OwnTechniques all = new OwnTechniques(usual, own);
    return usual.with(
        usual.levelDecibel(),
        usual.breath(),
        usual.techniques().stream().map(all::technique).toList());
  }

  private Technique technique(Technique mean) {
    return own.stream()
        .filter(each -> sameName(each, mean))
        .findFirst()
        .orElseGet(() -> shifted(mean));
  }

  private static boolean sameName(Technique one, Technique other) {
    return one.name().equals(other.name());
  }

  private Technique shifted(Technique mean) {
    if (mean.limit().deviationPerSecond() == 0) {
      return mean;
    }
    List<Technique> akin =
        own.stream().filter(each -> each.act() == mean.act() && !each.isSlurred()).toList();
    List<Technique> alike = akin.stream().filter(each -> each.takers() == mean.takers()).toList();
    return (alike.isEmpty() ? akin : alike)
        .stream().mapToDouble(this::proportion).min().stream()
            .mapToObj(factor -> mean.with(times(mean, factor), mean.expected(), SHIFTED))
            .findFirst()
            .orElse(mean);
  }

  private static Limit times(Technique mean, double factor) {
    Limit shifted = mean.limit().times(factor);
    return mean.isSlurred() ? shifted.moving(mean.limit().movingPerSecond()) : shifted;
  }

  private double proportion(Technique known) {
    Limit mean =
        usual.techniques().stream()
            .filter(each -> sameName(each, known))
            .findFirst()
            .orElseThrow()
            .limit();
    double peaks = known.limit().peakPerSecond() / mean.peakPerSecond();
    return mean.sustainedPerSecond() > 0
        ? Math.min(peaks, known.limit().sustainedPerSecond() / mean.sustainedPerSecond())
        : peaks;
  }
}
