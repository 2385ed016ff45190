package stafette.check;

import stafette.limits.Capability;
import stafette.limits.Demand;
import stafette.score.Line;

/**
 * How spent a player is, from 0 (fresh) to 1 (spent). With g the seconds from the player's previous
 * stroke that loads, wherever that was,
 *
 * <pre>
 * f ← max(0, f + max((1 − sustained · g) / stamina, −g / recovery))
 * </pre>
 *
 * and 1/stamina more for each grace note. At a constant rate r above sustained it reaches 1 after T
 * = stamina / (r − sustained) seconds: the two-parameter critical-power law (H. Monod and J.
 * Scherrer, "The work capacity of a synergic muscular group", Ergonomics 8, 1965), with linear
 * recovery. That is a model choice; no published use of it on tonguing is known.
 */
public final class Tiredness {
  private Tiredness() {}

  /** The tiredness after a player's very first stroke with that many grace notes. */
  public static double atFirst(int graces, Capability capability) {
    return graces / capability.staminaStrokes();
  }

  /**
   * The tiredness after the next stroke that loads.
   *
   * @param before the tiredness after the previous one
   * @param gapMicros from that one's onset
   * @param sustainedMilli the rate that can go on there, in thousandths of a stroke a second
   * @param graces how many grace notes the stroke has
   */
  public static double after(
      double before, long gapMicros, int sustainedMilli, int graces, Capability capability) {
    return after(before, (double) gapMicros, (double) sustainedMilli, graces, capability);
  }

  static double after(
      double before, double gapMicros, double sustainedMilli, int graces, Capability capability) {
    return after(
        before, change(gapMicros, sustainedMilli, capability), atFirst(graces, capability));
  }

  /**
   * Tiredness after a stroke whose change is known.
   *
   * @param change as {@link #change} has it
   * @param graces what the stroke's grace notes add, as {@link #atFirst} has it
   */
  public static double after(double before, double change, double graces) {
    return Math.max(0, before + change) + graces;
  }

  /**
   * What a stroke adds to tiredness, or the rest before it takes away, before the floor at 0.
   *
   * @param gapMicros from the onset of the previous stroke that loads
   * @param sustainedMilli the rate that can go on there, in thousandths of a stroke a second
   */
  public static double change(double gapMicros, double sustainedMilli, Capability capability) {
    double load = (1 - gapMicros * (sustainedMilli * 1e-9)) / capability.staminaStrokes();
    double rest = -gapMicros / (capability.recoveryMillis() * 1e3);
    return Math.max(load, rest);
  }

  /** The tiredness after stroke {@code last} of a player who began fresh with {@code first}. */
  public static double fresh(Demand demand, Line line, int first, int last) {
    double tiredness = atFirst(graces(line, first), demand.capability(first));
    int previous = first;
    for (int j = first + 1; j <= last; j++) {
      if (demand.loads(first, j)) {
        long gap = line.onsetMicros(j) - line.onsetMicros(previous);
        tiredness =
            after(tiredness, gap, demand.sustainedMilli(j), graces(line, j), demand.capability(j));
        previous = j;
      }
    }
    return tiredness;
  }

  static int graces(Line line, int j) {
    return line.stroke(j).graces().size();
  }
}
