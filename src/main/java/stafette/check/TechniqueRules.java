package stafette.check;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import stafette.limits.Act;
import stafette.limits.Demand;
import stafette.limits.Groups;
import stafette.limits.HarpPedals;
import stafette.limits.Technique;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Tone;
import stafette.words.Sentence;

/**
 * Where a technique is used at all. The line is what the player really plays: in a hocket its own
 * strokes, whose rate is what a lowest rate is held against.
 */
public final class TechniqueRules {
  private TechniqueRules() {}

  /**
   * Whether a technique is used on what a player plays: the judge's own rule, for whoever plans.
   * Groups and strings are a matter of each stretch and not asked here.
   */
  public static boolean serves(Technique technique, Line played) {
    return goesAt(Demand.usualRatePerSecond(played), technique) && Demand.fits(technique, played);
  }

  private static boolean goesAt(double usualPerSecond, Technique technique) {
    return Tolerance.reaches(usualPerSecond, technique.lowestPerSecond());
  }

  /**
   * Why a technique does not go for a stretch of a line with its times stretched, if it doesn't.
   */
  public static Optional<Sentence> obstacle(
      Technique technique, Line line, int first, int last, double stretch) {
    double usual = Demand.usualRatePerSecond(line) / stretch;
    double lowest = technique.lowestPerSecond();
    if (!goesAt(usual, technique)) {
      return Optional.of(
          Sentence.of(
              "needs at least {0} notes a second, and the line has {1}; choose another technique or"
                  + " a faster tempo",
              Wording.below(usual, lowest), Wording.above(usual, lowest)));
    }
    if (!Demand.fits(technique, line)) {
      return Optional.of(
          Sentence.of(
              "is not used on such a line ({0}); choose another technique",
              custom(technique, line)));
    }
    if (technique.groups() == Groups.THREES && line.placeInThree(first) != 0) {
      return Optional.of(Sentence.of("enters on the first of a group of three; move the entry"));
    }
    if (technique.twinStrings() && !twins(line, first, last)) {
      return Optional.of(
          Sentence.of(
              "finds no setting of the pedals that gives every repeated note a twin string; choose"
                  + " one string or other notes"));
    }
    return Optional.empty();
  }

  /**
   * Whether one setting of the pedals gives every pitch of the stretch, and every one that is
   * repeated on two strings.
   */
  static boolean twins(Line line, int first, int last) {
    Set<Integer> sounding = new HashSet<>();
    Set<Integer> repeated = new HashSet<>();
    Set<Integer> before = Set.of();
    for (int j = first; j <= last; j++) {
      Set<Integer> keys = new HashSet<>();
      for (Tone tone : line.stroke(j).tones()) {
        if (!(tone instanceof Pitch)) {
          return false;
        }
        keys.add(tone.key());
      }
      sounding.addAll(keys);
      if (keys.equals(before)) {
        repeated.addAll(keys);
      }
      before = keys;
    }
    return HarpPedals.twinsPossible(sounding, repeated);
  }

  private static Sentence custom(Technique technique, Line line) {
    if (technique.act() == Act.BOW
        && line.strokes().stream().anyMatch(stroke -> stroke.manner().isPlucked())) {
      return Sentence.of("the score says pizzicato");
    }
    if (technique.pitches() == Technique.Pitches.REPEATED) {
      return Sentence.of("only where each note repeats the one before");
    }
    if (technique.pitches() == Technique.Pitches.MOVING) {
      return Sentence.of("only where no note repeats the one before");
    }
    if (technique.slurs() == Technique.SlurUse.NONE) {
      return Sentence.of("only without slurs");
    }
    return technique.slurs() == Technique.SlurUse.ALL
        ? Sentence.of("only under slurs")
        : Sentence.of("only on beats divided into threes");
  }
}
