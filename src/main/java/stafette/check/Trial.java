package stafette.check;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stafette.limits.Assurance;
import stafette.limits.Capability;
import stafette.limits.Demand;
import stafette.limits.Instrument;
import stafette.limits.Technique;
import stafette.plan.Skill;
import stafette.score.Line;
import stafette.time.Rational;
import stafette.time.TempoMark;

/** Tries a line on one instrument, technique by technique, in the hands of one fresh player. */
public final class Trial {
  private Trial() {}

  /**
   * One row for each of the techniques that applies to the line, the easiest first.
   *
   * @param techniques of that instrument, those to be tried
   */
  public static List<Judged> of(
      Line line, Instrument instrument, Assurance assurance, List<Technique> techniques) {
    List<Judged> rows = new ArrayList<>();
    for (Technique technique : techniques) {
      if (Demand.applies(technique, line)) {
        rows.add(judged(line, instrument, technique, technique.limit().at(assurance)));
      }
    }
    rows.sort(Comparator.comparing(Judged::ease).thenComparing(Judged::strain));
    return List.copyOf(rows);
  }

  private static Judged judged(
      Line line, Instrument instrument, Technique technique, Capability capability) {
    Solo solo = new Solo(line, instrument, new Skill(technique, capability));
    boolean reached = solo.inRange();
    boolean served = reached && solo.techniqueServes();
    double strain = Math.max(solo.use(), Math.max(solo.tiredness(), solo.breath()));
    Ease ease = !reached ? Ease.OUT_OF_RANGE : served ? Ease.of(strain) : Ease.BEYOND;
    return new Judged(
        instrument,
        technique,
        capability,
        solo.highestPerSecond(),
        solo.use(),
        solo.tiredness(),
        solo.breath(),
        served ? solo.lastsSeconds() : OptionalDouble.of(0),
        ease,
        served ? fastest(line, solo) : Optional.empty(),
        ease.plays() ? Thinning.ALL : thinned(line, instrument, technique, capability));
  }

  /** The fastest mark, in whole beats where these hold too. */
  private static Optional<TempoMark> fastest(Line line, Solo solo) {
    OptionalDouble stretch = solo.leastStretch();
    if (stretch.isEmpty()) {
      return Optional.empty();
    }
    TempoMark now = line.tempo().at(line.stroke(0).onset());
    TempoMark exact = now.times(Wording.exactly(1 / stretch.getAsDouble()));
    Rational whole = Rational.of(exact.perMinute().floor(), BigInteger.ONE);
    if (whole.signum() > 0 && solo.holdsAt(now.perMinute().dividedBy(whole).toDouble())) {
      return Optional.of(new TempoMark(now.unit(), whole));
    }
    return Optional.of(exact);
  }

  private static Thinning thinned(
      Line line, Instrument instrument, Technique technique, Capability capability) {
    for (Thinning thinning : Thinning.partial()) {
      Optional<Line> thinned = thinning.of(line);
      if (thinned.isPresent() && Demand.applies(technique, thinned.get())) {
        Solo solo = new Solo(thinned.get(), instrument, new Skill(technique, capability));
        double strain = Math.max(solo.use(), Math.max(solo.tiredness(), solo.breath()));
        if (solo.inRange() && solo.techniqueServes() && Ease.of(strain).plays()) {
          return thinning;
        }
      }
    }
    return Thinning.NOTHING;
  }
}
