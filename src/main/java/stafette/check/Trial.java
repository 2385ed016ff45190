package stafette.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stafette.limits.Assurance;
import stafette.limits.Capability;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.score.Line;

/**
 * Tries one line on one instrument: what becomes of it in the hands of one fresh player with each
 * of some techniques.
 */
public final class Trial {
  private Trial() {}

  /**
   * One row for each technique that is used on such a line, best first: by ease, then by strain,
   * then in the order given. On the harp, twin strings are used only where one setting of the
   * pedals serves the whole line. Where the instrument lacks a note of the line, every row is out
   * of range, and only a thinning that leaves it out can be played.
   *
   * @param assurance the share of players who should manage
   */
  public static List<Judged> of(
      Line line, Instrument instrument, Assurance assurance, List<Technique> techniques) {
    return techniques.stream()
        .map(technique -> row(line, instrument, technique, technique.limit().at(assurance)))
        .flatMap(Optional::stream)
        .sorted(Comparator.comparing(Judged::ease).thenComparingDouble(Judged::strain))
        .toList();
  }

  private static Optional<Judged> row(
      Line line, Instrument instrument, Technique technique, Capability capability) {
    Solo solo = new Solo(line, instrument, technique, capability);
    if (!solo.applies()) {
      return Optional.empty();
    }
    double strain = Math.max(solo.use(), Math.max(solo.tiredness(), solo.breath()));
    return Optional.of(
        new Judged(
            instrument,
            technique,
            capability,
            solo.highestPerSecond(),
            solo.use(),
            solo.tiredness(),
            solo.breath(),
            solo.lastsSeconds(),
            solo.inRange() ? Ease.of(strain) : Ease.OUT_OF_RANGE,
            solo.fastestTempo(),
            solo.plays() ? Thinning.ALL : thinned(line, instrument, technique, capability)));
  }

  /** The fullest pattern that leaves something out, can be played and is made by the technique. */
  private static Thinning thinned(
      Line line, Instrument instrument, Technique technique, Capability capability) {
    return Thinning.partial().stream()
        .filter(
            pattern ->
                pattern
                    .of(line)
                    .map(rest -> new Solo(rest, instrument, technique, capability))
                    .filter(solo -> solo.applies() && solo.plays())
                    .isPresent())
        .findFirst()
        .orElse(Thinning.NOTHING);
  }
}
