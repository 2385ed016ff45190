package stafette.work;

import java.util.List;
import java.util.Optional;
import stafette.ask.Briefing;
import stafette.ask.TempoWish;
import stafette.plan.Brief;
import stafette.score.Line;
import stafette.time.BeatUnit;
import stafette.time.Rational;
import stafette.time.TempoMark;

/**
 * The fastest slower tempo at which a plan was found, in whole beats a minute. Slower is not always
 * easier, since winds need more breath: between that mark and the next one up lies an edge, and
 * there may be others.
 */
final class TempoRemedy {
  /** Hundredths of the present tempo that are tried until one succeeds. */
  private static final List<Integer> SLOWER = List.of(95, 90, 80, 70, 60, 50, 40);

  private static final double SMALL_CHANGE = 0.9;

  private final Briefing briefing;
  private final RemedyTrials trials;
  private final BeatUnit unit;
  private final TempoMark present;

  TempoRemedy(Briefing briefing, RemedyTrials trials) {
    Line line = briefing.brief().line();
    this.briefing = briefing;
    this.trials = trials;
    this.unit = TempoWish.beatAt(line, line.stroke(0).onset());
    this.present = line.tempo().at(line.stroke(0).onset()).in(unit);
  }

  /**
   * A change that players hardly notice, or a larger one.
   *
   * @param perMinute beats a minute
   */
  record Slower(long perMinute, boolean small, Remedy remedy) {}

  Optional<Slower> fastest() {
    long fails = -present.perMinute().negated().floor().longValueExact();
    for (int hundredths : SLOWER) {
      long perMinute =
          present.perMinute().times(Rational.of(hundredths, 100)).floor().longValueExact();
      if (perMinute >= 1 && perMinute < fails) {
        if (trials.succeeds(at(perMinute))) {
          return between(perMinute, fails);
        }
        fails = perMinute;
      }
    }
    return Optional.empty();
  }

  private Optional<Slower> between(long slow, long fast) {
    long fastest = trials.edge(slow, fast, this::at);
    boolean small = fastest >= SMALL_CHANGE * present.perMinute().toDouble();
    return trials
        .remedy(new Change.Tempo(mark(fastest), present), at(fastest))
        .map(remedy -> new Slower(fastest, small, remedy));
  }

  private TempoMark mark(long perMinute) {
    return new TempoMark(unit, Rational.of(perMinute));
  }

  private Brief at(long perMinute) {
    return briefing.at(mark(perMinute));
  }
}
