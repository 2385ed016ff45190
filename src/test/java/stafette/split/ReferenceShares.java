package stafette.split;

import stafette.limits.Capability;

/**
 * The planning model's tiredness and air as whole numbers for a constraint solver, all there is
 * being {@link #WHOLE}; rounded against the player.
 */
final class ReferenceShares {
  static final long WHOLE = 1_000_000_000L;

  /**
   * The most that may be spent: room for a hundred roundings, so that they shut out nothing that
   * ends exactly at a limit.
   */
  static final long MOST = WHOLE + 100;

  private ReferenceShares() {}

  /**
   * The change of tiredness at a stroke, max((1 − sustained · g) / stamina, −g / recovery); no less
   * than what makes a spent player fresh.
   */
  static long change(long gapMicros, int sustainedMilli, Capability capability) {
    long tiring =
        ceil((1_000_000_000L - sustainedMilli * gapMicros) * 1000, capability.staminaMilli());
    long resting = ceil(-gapMicros * 1_000_000L, capability.recoveryMillis());
    return Math.max(-WHOLE, Math.max(tiring, resting));
  }

  /** What grace notes add to tiredness. */
  static long graces(int count, Capability capability) {
    return ceil(count * 1000L * WHOLE, capability.staminaMilli());
  }

  /** The share of the air that a time takes. */
  static long spent(long micros, double use, double capacitySeconds) {
    return (long) Math.ceil(micros * 1e-6 * use / capacitySeconds * WHOLE);
  }

  /** The share of the air that a silence gives back. */
  static long givenBack(long micros, double fullSeconds) {
    return (long) Math.min(WHOLE, Math.floor(micros * 1e-6 / fullSeconds * WHOLE));
  }

  private static long ceil(long dividend, long divisor) {
    return -Math.floorDiv(-dividend, divisor);
  }
}
