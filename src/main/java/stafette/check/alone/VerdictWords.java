package stafette.check.alone;

import java.util.Optional;
import stafette.check.Verdict;
import stafette.limits.Grade;
import stafette.plan.Plan;
import stafette.score.Line;
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
                    "with {0}, which not everybody has, about {1} of 100 would manage",
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

  /** What decides, and where: "burst at bar 14, beat 2". */
  public static Sentence deciding(LineVerdict verdict, Line line) {
    Sentence what =
        switch (verdict.limiting()) {
          case BURST -> Sentence.of("burst");
          case MOVING -> Sentence.of("changing notes");
          case TIREDNESS -> Sentence.of("tiredness");
          case BREATH -> Sentence.of("breath");
          case RANGE -> Sentence.of("range");
          case TECHNIQUE -> Sentence.of("no technique");
          case PEDALS -> Sentence.of("pedals");
        };
    return Sentence.of("{0} at {1}", what, line.placeOf(verdict.stroke()).at());
  }
}
