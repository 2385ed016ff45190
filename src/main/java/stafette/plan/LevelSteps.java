package stafette.plan;

import stafette.score.Dynamic;

/**
 * How a difference in loudness between the instruments of a relay is balanced in the dynamics: each
 * plays so many steps softer than written as it is louder than the softest (common practice, no
 * source).
 */
public final class LevelSteps {
  /** From one dynamic to the next, in decibels (common practice, no source). */
  public static final double STEP_DECIBEL = 5;

  /** Nobody plays softer by more: the line would get another character (our judgement). */
  private static final int MOST_STEPS = 2;

  private LevelSteps() {}

  /** By how many steps a player of a plan plays softer than written; none for the softest. */
  public static int steps(Plan plan, int player) {
    double softest =
        plan.segments().stream()
            .mapToDouble(segment -> level(plan, segment.player()))
            .min()
            .orElseThrow();
    return (int) Math.min(MOST_STEPS, Math.round((level(plan, player) - softest) / STEP_DECIBEL));
  }

  private static double level(Plan plan, int player) {
    return plan.brief().players().get(player).instrument().levelDecibel();
  }

  /** A dynamic that is so many steps softer; <i>ppp</i> at the least. */
  public static Dynamic softer(Dynamic written, int steps) {
    return Dynamic.values()[Math.max(0, written.ordinal() - steps)];
  }
}
