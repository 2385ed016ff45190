package stafette.json;

/**
 * Figures of players are whole thousandths, and within a margin of tempo rounded against the player
 * once or twice more: whatever is beyond the figures in the player's favour is refused, whatever
 * holds by the figures against the player is let pass, and between the two both is right.
 */
enum Leeway {
  /** The figures as they stand, and what the rounding of times can make. */
  NONE(0, 0),
  /** No rounding leaves a player more. */
  FOR(1, 0),
  /** No rounding leaves a player less. */
  AGAINST(-1, 0.0011);

  private static final double TIMES = 1e-7;
  private static final double RATE = 3e-3;
  private static final double SUSTAINED = 6e-3;

  private final int sign;
  private final double recovery;

  Leeway(int sign, double recovery) {
    this.sign = sign;
    this.recovery = recovery;
  }

  Leeway opposite() {
    return switch (this) {
      case NONE -> NONE;
      case FOR -> AGAINST;
      case AGAINST -> FOR;
    };
  }

  double need(double seconds) {
    return 1 / (1 / seconds + sign * RATE);
  }

  double sustained(double rate) {
    return Math.max(0, rate + sign * SUSTAINED);
  }

  double recovery(double seconds) {
    return seconds + recovery;
  }

  /** Whether a share of a limit is beyond it. */
  boolean isBeyond(double share) {
    return share > 1 + (this == AGAINST ? -TIMES : TIMES);
  }

  /** Whether a time reaches what is needed. */
  boolean reaches(double seconds, double needed) {
    double rounding = 2e-6 + needed * 1e-8;
    return seconds >= needed + (this == AGAINST ? rounding : -rounding);
  }

  /** The same where no figure is rounded to microseconds. */
  boolean allowsBreath(double seconds, double needed) {
    return seconds >= needed * (1 + (this == AGAINST ? 1e-8 : -1e-8));
  }
}
