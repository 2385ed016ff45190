package stafette.check;

import stafette.limits.Breath;

/**
 * The share of air that a wind player has spent: sounds take one second of the capacity a second,
 * times a factor; a silence in which air can be taken gives some back, a shorter one is blown
 * through.
 */
public final class Breathing {
  private Breathing() {}

  /** After a sound, or a silence too short to breathe in. */
  public static double blown(double spent, double seconds, double use, Breath breath) {
    return spent + seconds * use / breath.capacitySeconds();
  }

  /** After a silence. */
  public static double silent(double spent, double seconds, double use, Breath breath) {
    return Tolerance.reaches(seconds, breath.catchSeconds())
        ? Math.max(0, spent - seconds / breath.fullSeconds())
        : blown(spent, seconds, use, breath);
  }
}
