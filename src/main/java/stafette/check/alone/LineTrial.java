package stafette.check.alone;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import stafette.limits.Assurance;
import stafette.limits.Demand;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.score.Line;

/**
 * Tries one line on one instrument: what becomes of it in the hands of one fresh player with each
 * of some techniques.
 */
public final class LineTrial {
  private LineTrial() {}

  /**
   * One row for each technique that is used on such a line, best first: by ease, then by strain,
   * then in the order given. A line to which the pedals of the harp give no twin strings is beyond
   * them at any tempo. Where the instrument lacks a note of the line, every row is out of range,
   * and only a thinning that leaves it out can be played.
   *
   * @param assurance the share of players who should manage
   * @param techniques of that instrument, those to be tried
   */
  public static List<LineVerdict> of(
      Line line, Instrument instrument, Assurance assurance, List<Technique> techniques) {
    return techniques.stream()
        .filter(technique -> Demand.applies(technique, line))
        .map(
            technique ->
                judged(
                    new SoloPlayer(line, instrument, technique, technique.limit().at(assurance))))
        .sorted(Comparator.comparing(LineVerdict::ease).thenComparingDouble(LineVerdict::strain))
        .toList();
  }

  /**
   * The least share of a peak rate that one of some techniques needs; empty if none is used on such
   * a line. A quick look: nothing is said of tiredness, breath, range and other tempi.
   */
  public static OptionalDouble leastUse(
      Line line, Instrument instrument, Assurance assurance, List<Technique> techniques) {
    return techniques.stream()
        .filter(technique -> Demand.applies(technique, line))
        .map(
            technique ->
                new SoloPlayer(line, instrument, technique, technique.limit().at(assurance)))
        .mapToDouble(SoloPlayer::use)
        .min();
  }

  private static LineVerdict judged(SoloPlayer solo) {
    return new LineVerdict(
        solo.instrument(),
        solo.technique(),
        solo.capability(),
        solo.highestPerSecond(),
        solo.use(),
        solo.tiredness(),
        solo.breath(),
        solo.lastsSeconds(),
        solo.ease(),
        solo.fastestTempo(),
        solo.ease().plays() ? Thinning.ALL : thinned(solo));
  }

  /** The fullest pattern that leaves something out and can be played with the technique. */
  private static Thinning thinned(SoloPlayer solo) {
    return Thinning.partial().stream()
        .filter(
            pattern -> pattern.of(solo.line()).filter(rest -> plays(solo.with(rest))).isPresent())
        .findFirst()
        .orElse(Thinning.NOTHING);
  }

  private static boolean plays(SoloPlayer thinned) {
    return Demand.applies(thinned.technique(), thinned.line()) && thinned.ease().plays();
  }
}
