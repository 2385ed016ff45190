package stafette.check.alone;

import java.util.Optional;
import stafette.check.Strain;
import stafette.check.Tolerance;
import stafette.check.Verdict;
import stafette.check.Wording;
import stafette.limits.Burst;
import stafette.limits.Grade;
import stafette.plan.Plan;
import stafette.score.Line;
import stafette.time.BarBeat;
import stafette.words.Sentence;

/** Verdicts as musicians say them. */
public final class VerdictWords {
  private static final int STEP = 5;

  private VerdictWords() {}

  /**
   * How many manage, in steps that the figure bears: "about 60 of 100 manage; no published figure".
   */
  public static Sentence share(LineVerdict verdict) {
    return switch (verdict.ease()) {
      case OUT_OF_RANGE -> Sentence.of("the instrument lacks notes of it");
      case COMFORTABLE -> Sentence.of("nearly everybody manages{0}", figure(verdict));
      case BEYOND ->
          toldShare(verdict) == 0
              ? Sentence.of("nobody manages{0}", figure(verdict))
              : Sentence.of("fewer than 16 of 100 manage{0}", figure(verdict));
      default -> Sentence.of("about {0} of 100 manage{1}", toldShare(verdict), figure(verdict));
    };
  }

  /** The least share of which the same is said, so that what is told alike counts alike. */
  public static int toldShare(LineVerdict verdict) {
    return switch (verdict.ease()) {
      case OUT_OF_RANGE -> 0;
      case BEYOND -> verdict.share() < 1 ? 0 : 1;
      case COMFORTABLE -> 98;
      default -> told(verdict.share(), verdict.ease());
    };
  }

  private static Sentence figure(LineVerdict verdict) {
    Grade grade = verdict.source().grade();
    return grade == Grade.D ? Sentence.of("; no published figure") : Sentence.NONE;
  }

  /** How many manage the hardest part of a plan, with the word for it. */
  public static Sentence ofPlan(Plan plan, Verdict verdict) {
    double share = verdict.hardest() * 100;
    Ease ease = Ease.of(share);
    boolean unpublished =
        plan.segments().stream()
            .flatMap(segment -> plan.way(segment).skills().stream())
            .anyMatch(skill -> skill.technique().source().grade() == Grade.D);
    Sentence figure = unpublished ? Sentence.of("; no published figure") : Sentence.NONE;
    return switch (ease) {
      case COMFORTABLE -> Sentence.of("nearly everybody manages the hardest part{0}", figure);
      case BEYOND, OUT_OF_RANGE ->
          Sentence.of("fewer than 16 of 100 manage the hardest part{0}", figure);
      default ->
          Sentence.of("about {0} of 100 manage the hardest part{1}", told(share, ease), figure);
    };
  }

  /** In whole fives, rounded down, but never below the word's own border. */
  private static int told(double share, Ease ease) {
    return Math.max((int) (Math.floor(share / STEP) * STEP), (int) ease.least());
  }

  /** What would help, if somebody has a technique that not everybody has. */
  public static Optional<Sentence> helping(LineVerdict verdict) {
    return verdict
        .helping()
        .map(
            help ->
                Sentence.of(
                    "with {0}, which not everybody has, about {1} of 100 of those who have it would manage",
                    help.technique(), told(help.share(), Ease.of(help.share()))));
  }

  /**
   * How a line that not nearly everybody manages stands among the fast passages that open scores
   * have for the instrument.
   */
  public static Optional<Sentence> asked(LineVerdict verdict, Line line) {
    return verdict.ease() == Ease.COMFORTABLE
        ? Optional.empty()
        : verdict.instrument().repertoire().inWords(line, verdict.instrument());
  }

  /**
   * What decides, where, and what is held against what: "burst at bar 14, beat 2: 5 notes at 10.4 a
   * second, managed by 84 of 100 up to 8.8".
   */
  public static Sentence deciding(LineVerdict verdict, Line line) {
    BarBeat place = line.placeOf(verdict.stroke()).at();
    return switch (verdict.limiting()) {
      case BURST -> Sentence.of("burst at {0}: {1}", place, pace(verdict));
      case MOVING -> Sentence.of("changing notes at {0}: {1}", place, pace(verdict));
      case TIREDNESS ->
          Sentence.of(
              "tiredness at {0}: {1} % of what {2} can spend",
              place, Strain.wholePercent(verdict.tiredness()), verdict.planned());
      case BREATH ->
          Sentence.of(
              "breath at {0}: {1} % of what {2} have",
              place, Strain.wholePercent(verdict.breath()), verdict.planned());
      case RANGE -> Sentence.of("range: the first note that the instrument lacks is at {0}", place);
      case TECHNIQUE -> Sentence.of("no technique for the note at {0}", place);
      case PEDALS -> Sentence.of("pedals: they can't give the strings at {0}", place);
    };
  }

  /**
   * How fast the fastest notes are, and how fast so few may be; nothing where no rate is tested.
   */
  public static Sentence pace(LineVerdict verdict) {
    return verdict.burst().map(burst -> pace(verdict, burst)).orElse(Sentence.NONE);
  }

  private static Sentence pace(LineVerdict verdict, Burst.Tightest burst) {
    boolean byKey =
        verdict.limiting() == Limiting.BURST
            && verdict.instrument().techniques().get(0).act().repeatsByKey();
    Sentence notes =
        byKey
            ? Sentence.of("{0} strokes on one key, string or drum", burst.strokes())
            : Sentence.of("{0} notes", burst.strokes());
    boolean beyond = !Tolerance.within(verdict.use(), 1);
    double rate = burst.perSecond();
    double limit = burst.limitPerSecond();
    return Sentence.of(
        "{0} at {1} a second, managed by {2} up to {3}",
        notes,
        beyond ? Wording.above(rate, limit) : Sentence.decimal(rate, 1),
        verdict.planned(),
        beyond ? Wording.below(rate, limit) : Sentence.decimal(limit, 1));
  }
}
