package stafette.check;

import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stafette.plan.Plan;
import stafette.time.Rational;
import stafette.time.TempoMark;
import stafette.words.Sentence;

/**
 * The tempi round the present one between which a plan holds, all of them: a connected interval. A
 * tempo is a factor of the present one. All times of the line and of what the score gives scale
 * with it; rest before entries, catching breath and recovery don't, so both ends can come from them
 * as well as from rate. The techniques stay those of the present tempo.
 *
 * <p>Bounds in closed form: rates, 1 ÷ the largest use; rest, silence ÷ rest needed. Tiredness and
 * breath are followed outward to the first failure ({@link TempoBoundSearch}), to within one part
 * in ten thousand million. A plan that still holds at a thousandth or at a thousand times its tempo
 * has no bound there.
 *
 * @param slowestFactor the least factor at which the plan holds; 0 if any slower tempo will do
 * @param fastestFactor the largest; infinite if any faster tempo will do
 * @param slowestText the slowest mark at the line's start, in the unit in force there, rounded
 *     inward to whole beats at which the plan was judged to hold ("dotted quarter = 71"), to
 *     hundredths if there is no whole one; or "any slower tempo"
 * @param fastestText the fastest mark, likewise; or "any faster tempo"
 * @param slowestLimit what breaks first below ("breath of Flute 1 at bar 7, beat 2"); "nothing" if
 *     there is no bound
 * @param fastestLimit what breaks first above, likewise
 */
public record TempoWindow(
    double slowestFactor,
    double fastestFactor,
    Sentence slowestText,
    Sentence fastestText,
    Sentence slowestLimit,
    Sentence fastestLimit) {
  /** How far beyond an end to look for what breaks there. */
  private static final double HAIR = 1e-6;

  /** As far as the line's clock of microseconds may lead beside the exact end. */
  private static final double ROUNDING = 1e-5;

  private static final int STEPS_TRIED = 10;
  private static final Sentence NOTHING = Sentence.of("nothing");

  /** The window of a plan; empty if it does not even hold at the present tempo. */
  public static Optional<TempoWindow> of(Plan plan) {
    Demands demands = new Demands(plan.brief());
    if (!Judge.findings(plan, demands, 1).isEmpty()) {
      return Optional.empty();
    }
    TempoWindowEnds ends = new TempoWindowEnds(plan, demands);
    double slowest = ends.slowestFactor();
    double fastest = ends.fastestFactor();
    return Optional.of(
        new TempoWindow(
            slowest,
            fastest,
            slowest == 0 ? Sentence.of("any slower tempo") : slowestMark(plan, slowest).inWords(),
            fastest == Double.POSITIVE_INFINITY
                ? Sentence.of("any faster tempo")
                : fastestMark(plan, fastest).inWords(),
            slowest == 0 ? NOTHING : breaksAt(plan, demands, slowest * (1 - HAIR)),
            fastest == Double.POSITIVE_INFINITY
                ? NOTHING
                : breaksAt(plan, demands, fastest * (1 + HAIR))));
  }

  /** Whole beats first, then hundredths, from the slowest inward. */
  private static TempoMark slowestMark(Plan plan, double factor) {
    double exact = present(plan).perMinute().toDouble() * factor * (1 - ROUNDING);
    return firstThatHolds(
        plan,
        Stream.of(1, 100).flatMap(parts -> steps((long) Math.ceil(exact * parts), parts, 1)),
        mark -> mark.compareTo(present(plan).perMinute()) <= 0);
  }

  /** Whole beats first, then hundredths, from the fastest inward. */
  private static TempoMark fastestMark(Plan plan, double factor) {
    double exact = present(plan).perMinute().toDouble() * factor * (1 + ROUNDING);
    return firstThatHolds(
        plan,
        Stream.of(1, 100).flatMap(parts -> steps((long) Math.floor(exact * parts), parts, -1)),
        mark -> mark.compareTo(present(plan).perMinute()) >= 0);
  }

  private static Stream<Rational> steps(long from, int parts, int step) {
    return Stream.iterate(Rational.of(from, parts), at -> at.plus(Rational.of(step, parts)))
        .limit(STEPS_TRIED);
  }

  private static TempoMark firstThatHolds(
      Plan plan, Stream<Rational> perMinute, Predicate<Rational> inward) {
    return perMinute
        .filter(beats -> beats.signum() > 0)
        .filter(inward)
        .map(beats -> new TempoMark(present(plan).unit(), beats))
        .filter(mark -> holds(AtTempo.of(plan, mark), plan))
        .findFirst()
        .orElse(present(plan));
  }

  private static boolean holds(Plan atTempo, Plan written) {
    return Judge.findings(atTempo, new Demands(atTempo.brief(), written.brief()), 1).isEmpty();
  }

  private static TempoMark present(Plan plan) {
    return plan.line().tempo().at(plan.line().stroke(0).onset());
  }

  private static Sentence breaksAt(Plan plan, Demands demands, double factor) {
    return Judge.findings(plan, demands, 1 / factor).stream()
        .findFirst()
        .map(
            finding ->
                Sentence.of(
                    "{0} of {1} at {2}",
                    limit(finding.kind()), finding.place().part(), finding.place().at()))
        .orElse(NOTHING);
  }

  private static Sentence limit(Finding.FindingKind kind) {
    return switch (kind) {
      case PEAK, TURN -> Sentence.of("peak rate");
      case MOVING -> Sentence.of("rate of changing notes");
      case TIREDNESS -> Sentence.of("tiredness");
      case BREATH -> Sentence.of("breath");
      case REST -> Sentence.of("rest before the entry");
      case TECHNIQUE -> Sentence.of("pedals");
      case INTERLOCKING -> Sentence.of("turns stroke by stroke");
      case SHAPE, OVERLAP, RANGE, BUSY, LOCK ->
          throw new IllegalStateException("the tempo has no part in this: " + kind);
    };
  }
}
