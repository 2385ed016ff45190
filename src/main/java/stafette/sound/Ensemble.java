package stafette.sound;

import java.util.Map;
import stafette.check.ear.Acoustics;
import stafette.check.ear.OnsetSpread;
import stafette.plan.Player;
import stafette.plan.Seat;

/**
 * How far from its written place each stroke of a segment comes.
 *
 * <p>As an ensemble: one player's share of the spread published for trios ({@link OnsetSpread}, the
 * middle of its two figures), taken apart into one offset for the whole segment and a smaller one
 * for each stroke, whose variances add up to it. The division is our choice. Sound from a seat
 * comes later the further it is from the front of the stage's middle, where the conductor stands,
 * against the nearest seat.
 */
final class Ensemble {
  /** The deviation of single strokes as a share of the whole one. */
  private static final double STROKE_SHARE = 0.4;

  private static final double SEGMENT_SHARE = Math.sqrt(1 - STROKE_SHARE * STROKE_SHARE);
  private static final Seat CONDUCTOR = new Seat(0, 0);

  /** To either side. */
  private static final double TOGETHER_MICROS = 4000;

  private static final long WHOLE_SEGMENT = -1;

  private final Timing timing;
  private final Map<String, Seat> seats;
  private final double nearestMetres;

  Ensemble(Timing timing, Map<String, Seat> seats) {
    this.timing = timing;
    this.seats = seats;
    nearestMetres = seats.values().stream().mapToDouble(CONDUCTOR::metresTo).min().orElse(0);
  }

  /**
   * Microseconds after the written place, below zero before it.
   *
   * @param segment its number in the plan
   * @param stroke its number in what the segment plays
   */
  long lateMicros(Player player, int segment, int stroke) {
    return switch (timing) {
      case WRITTEN -> 0;
      case TOGETHER ->
          Math.round((2 * Chance.even(timing.ordinal(), segment, stroke) - 1) * TOGETHER_MICROS);
      case ENSEMBLE ->
          Math.round(
              deviationMicros(player)
                      * (SEGMENT_SHARE * Chance.normal(timing.ordinal(), segment, WHOLE_SEGMENT)
                          + STROKE_SHARE * Chance.normal(timing.ordinal(), segment, stroke))
                  + delayMicros(player));
    };
  }

  static double deviationMicros(Player player) {
    OnsetSpread spread = OnsetSpread.of(player.instrument());
    return (spread.leastMillis() + spread.mostMillis()) / 2 * 1000;
  }

  private double delayMicros(Player player) {
    Seat seat = seats.get(player.name());
    return seat == null
        ? 0
        : Acoustics.delayMillis(CONDUCTOR.metresTo(seat) - nearestMetres) * 1000;
  }
}
