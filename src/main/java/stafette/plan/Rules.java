package stafette.plan;

import stafette.limits.Assurance;

/**
 * What holds for a whole plan.
 *
 * @param assurance the share of players who should manage each part
 * @param overlap how much two players share
 * @param readySeconds rest before an entry; winds never get less than their {@code catch}
 * @param favour what is favoured; {@code weights} already show it
 * @param weights what things cost
 */
public record Rules(
    Assurance assurance, OverlapRule overlap, double readySeconds, Favour favour, Weights weights) {
  /** Labelled default of the planning model. */
  public static final double DEFAULT_READY_SECONDS = 0.5;

  /** The least rest before an entry of this player, in microseconds, rounded up. */
  public long readyMicros(Player player) {
    double seconds =
        player
            .instrument()
            .breath()
            .map(b -> Math.max(b.catchSeconds(), readySeconds))
            .orElse(readySeconds);
    return (long) Math.ceil(seconds * 1_000_000 - 1e-6);
  }
}
