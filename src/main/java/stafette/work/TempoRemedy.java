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
  private boolean isTried;
  private Optional<Slower> fastest = Optional.empty();

  TempoRemedy(Briefing briefing, RemedyTrials trials) {
    Line line = briefing.brief().line();
    this.briefing = briefing;
    this.trials = trials;
    this.unit = TempoWish.beatAt(line, line.stroke(0).onset());
    this.present = line.tempo().at(line.stroke(0).onset()).in(unit);
  }

  /** The fastest slower tempo, however much slower. */
  List<Remedy> all() {
    return found().stream().map(Slower::remedy).toList();
  }

  /** A change that players hardly notice. */
  List<Remedy> small() {
    return found().stream().filter(Slower::small).map(Slower::remedy).toList();
  }

  /** A change that everybody hears. */
  List<Remedy> large() {
    return found().stream().filter(slower -> !slower.small()).map(Slower::remedy).toList();
  }

  /** The remedy, and whether players hardly notice it. */
  private record Slower(boolean small, Remedy remedy) {}

  private Optional<Slower> found() {
    if (!isTried) {
      isTried = true;
      fastest = fastest();
    }
    return fastest;
  }

  private Optional<Slower> fastest() {
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
    long most = trials.edge(slow, fast, this::at);
    boolean small = most >= SMALL_CHANGE * present.perMinute().toDouble();
    return trials
        .remedy(new Change.Tempo(mark(most), present), at(most))
        .map(remedy -> new Slower(small, remedy));
  }

  private TempoMark mark(long perMinute) {
    return new TempoMark(unit, Rational.of(perMinute));
  }

  private Brief at(long perMinute) {
    return briefing.at(mark(perMinute));
  }
}
