package stafette.plan;

import java.util.List;
import stafette.limits.Assurance;

/**
 * What holds for a whole plan.
 *
 * @param assurance the share of players who should manage each part
 * @param overlap how much two players share
 * @param readySeconds rest before an entry; winds never get less than their {@code catch}
 * @param favour what is favoured; {@code weights} already show it
 * @param weights what things cost
 * @param hocket whether pairs of players may share a stretch in turns, and in which
 * @param locks what must be kept
 * @param margin how far the tempo may drift while the plan still holds
 */
public record Rules(
    Assurance assurance,
    OverlapRule overlap,
    double readySeconds,
    Favour favour,
    Weights weights,
    Hocket hocket,
    List<Lock> locks,
    Margin margin) {
  public Rules {
    locks = List.copyOf(locks);
  }

  /** Rules without hockets, locks and margin. */
  public Rules(
      Assurance assurance,
      OverlapRule overlap,
      double readySeconds,
      Favour favour,
      Weights weights) {
    this(assurance, overlap, readySeconds, favour, weights, Hocket.NO, List.of(), Margin.NONE);
  }

  public Rules with(Hocket other) {
    return new Rules(assurance, overlap, readySeconds, favour, weights, other, locks, margin);
  }

  public Rules with(List<Lock> others) {
    return new Rules(assurance, overlap, readySeconds, favour, weights, hocket, others, margin);
  }

  public Rules with(Margin other) {
    return new Rules(assurance, overlap, readySeconds, favour, weights, hocket, locks, other);
  }

  public Rules with(Assurance other) {
    return new Rules(other, overlap, readySeconds, favour, weights, hocket, locks, margin);
  }

  public Rules withReady(double seconds) {
    return new Rules(assurance, overlap, seconds, favour, weights, hocket, locks, margin);
  }

  public Rules with(OverlapRule other) {
    return new Rules(assurance, other, readySeconds, favour, weights, hocket, locks, margin);
  }

  public Rules with(Weights others) {
    return new Rules(assurance, overlap, readySeconds, favour, others, hocket, locks, margin);
  }

  /**
   * The same rules for what favours something else.
   *
   * @param base weights that favour nothing
   */
  public Rules favouring(Favour other, Weights base) {
    return new Rules(
        assurance, overlap, readySeconds, other, base.favouring(other), hocket, locks, margin);
  }

  /** Labelled default of the planning model. */
  public static final double DEFAULT_READY_SECONDS = 0.5;

  /** What a harp needs at least before an entry, to set its pedals: a judgement. */
  private static final double PEDALS_SECONDS = 2;

  /** The least rest before an entry of this player, in microseconds, rounded up. */
  public long readyMicros(Player player) {
    double seconds =
        player
            .instrument()
            .breath()
            .map(b -> Math.max(b.catchSeconds(), readySeconds))
            .orElse(
                player.instrument().isHarp()
                    ? Math.max(PEDALS_SECONDS / margin.stretch(), readySeconds)
                    : readySeconds);
    return (long) Math.ceil(seconds * 1_000_000 - 1e-6);
  }
}
