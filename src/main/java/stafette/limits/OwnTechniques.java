package stafette.limits;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * An instrument in the hands of somebody of whom some techniques are known. One figure shifts all
 * that hang on it: what else the same tongue, bow or hand does is taken to be better or worse in
 * the same proportion, and keeps its relative spread, being a guess at this player still.
 *
 * <p>The proportion is that of the player's peak to the population's mean, or of sustained to
 * sustained if that is smaller, so that nothing is promised that was not said. Where several
 * techniques of an act are known, that with as many takers counts before others, then the smaller
 * proportion. Fingers don't follow the tongue or the bow: their moving rate stays. What has no
 * spread is known, and stays.
 *
 * <p>What begins a slur is the very stroke of a technique that has the same figures in the tables
 * (single tonguing, détaché): it takes that one's own, so that slurred notes go on being made with
 * it, with the fingers of most players.
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
        .filter(each -> each.name().equals(mean.name()))
        .findFirst()
        .orElseGet(() -> mean.limit().deviationPerSecond() == 0 ? mean : following(mean));
  }

  private Technique following(Technique mean) {
    List<Technique> akin = own.stream().filter(each -> each.act() == mean.act()).toList();
    List<Technique> alike = akin.stream().filter(each -> each.takers() == mean.takers()).toList();
    return alike.stream()
        .filter(each -> mean.isSlurred() && isSameStroke(usual(each).limit(), mean.limit()))
        .map(each -> begun(mean, each.limit()))
        .findFirst()
        .or(
            () ->
                (alike.isEmpty() ? akin : alike)
                    .stream()
                        .map(this::proportion)
                        .min(Comparator.naturalOrder())
                        .map(factor -> times(mean, factor)))
        .map(limit -> mean.with(limit, mean.expected(), SHIFTED))
        .orElse(mean);
  }

  private static boolean isSameStroke(Limit one, Limit other) {
    return one.peakPerSecond() == other.peakPerSecond()
        && one.sustainedPerSecond() == other.sustainedPerSecond();
  }

  private static Limit begun(Technique slurred, Limit stroke) {
    int moving = slurred.limit().at(Assurance.DEFAULT).movingMilli();
    return stroke.moving(
        moving == Capability.UNLIMITED
            ? OptionalDouble.empty()
            : OptionalDouble.of(moving / 1000.0));
  }

  private static Limit times(Technique mean, double factor) {
    Limit shifted = mean.limit().times(factor);
    return mean.act().slurs() ? shifted.moving(mean.limit().movingPerSecond()) : shifted;
  }

  private Technique usual(Technique known) {
    return usual.techniques().stream()
        .filter(each -> each.name().equals(known.name()))
        .findFirst()
        .orElseThrow();
  }

  private double proportion(Technique known) {
    Limit mean = usual(known).limit();
    double peaks = known.limit().peakPerSecond() / mean.peakPerSecond();
    return mean.sustainedPerSecond() > 0
        ? Math.min(peaks, known.limit().sustainedPerSecond() / mean.sustainedPerSecond())
        : peaks;
  }
}
