package stafette.split;

import stafette.limits.Capability;

/**
 * Tiredness and spent air as whole numbers, {@link #WHOLE} being all there is. Every figure is
 * rounded against the player, so that what fits here fits for the judge as well.
 */
final class RoundedUnits {
  static final long WHOLE = 1_000_000_000_000L;

  /**
   * The most that may be spent: half of what the judge tolerates beyond the whole, so that rounding
   * against the player shuts out nothing that ends exactly at a limit.
   */
  static final long MOST = WHOLE + WHOLE / 2_000_000_000L;

  /** Beyond this gap a sustained rate gives back no more; far below the overflow of a long. */
  private static final long LONGEST_LOAD_MICROS = 100_000_000L;

  private static final long LONGEST_REST_MICROS = 9_000_000_000L;

  private RoundedUnits() {}

  /**
   * The change of tiredness at a stroke: max((1 − sustained · g) / stamina, −g / recovery).
   *
   * @param gapMicros g, from the player's previous stroke
   * @param sustainedMilli thousandths of a stroke a second
   */
  static long load(long gapMicros, int sustainedMilli, Capability capability) {
    long gap = Math.min(gapMicros, LONGEST_LOAD_MICROS);
    long spent = (1_000_000_000L - sustainedMilli * gap) * 1_000_000L;
    long load = -Math.floorDiv(-spent, capability.staminaMilli());
    long rest =
        -Math.floorDiv(
            Math.min(gapMicros, LONGEST_REST_MICROS) * 1_000_000_000L, capability.recoveryMillis());
    return Math.max(load, rest);
  }

  /** What grace notes add to tiredness. */
  static long graces(int count, Capability capability) {
    return -Math.floorDiv(-count * 1_000_000L * 1_000_000_000L, capability.staminaMilli());
  }

  /** Time as a share of a capacity in seconds, rounded up. */
  static long spent(long micros, double use, double capacitySeconds) {
    return micros <= 0 ? 0 : (long) Math.ceil(micros * use / capacitySeconds * 1e6) + 1;
  }

  /** Time as a share of what refills, rounded down. */
  static long givenBack(long micros, double fullSeconds) {
    return Math.max(0, (long) Math.floor(micros / fullSeconds * 1e6) - 1);
  }
}
