package stafette.sound;

import java.util.Map;
import java.util.Random;
import stafette.check.Acoustics;
import stafette.check.OnsetSpread;
import stafette.plan.Player;
import stafette.plan.Seat;

/**
 * What people do not do to the millisecond: each enters a little early or late and keeps that up
 * for a segment, each stroke strays a little from it, and sound takes 2.91 ms a metre from the seat
 * to the front of the stage.
 *
 * <p>The spread of a player is that of {@link OnsetSpread}, the middle of its two figures; how much
 * of it belongs to the segment and how much to the stroke is not published: here a stroke's own
 * part is a quarter of it. Nothing strays beyond twice its spread.
 */
final class People {
  private static final double STROKE_SHARE = 0.25;
  private static final double MOST = 2;
  private static final Seat FRONT = new Seat(0, 0);

  private final boolean human;
  private final Map<String, Seat> seats;
  private final Random chance;
  private double segmentMillis;

  People(Manner manner, long seed) {
    this.human = manner.human();
    this.seats = manner.seats();
    this.chance = new Random(seed);
  }

  /** A player begins a segment. */
  void enter(Player player) {
    double own = spreadMillis(player) * Math.sqrt(1 - STROKE_SHARE * STROKE_SHARE);
    segmentMillis = own * draw();
  }

  /** How late the next stroke of the segment reaches the front of the stage. */
  long lateMicros(Player player) {
    double strokeMillis = STROKE_SHARE * spreadMillis(player) * draw();
    return human ? Math.round((segmentMillis + strokeMillis + delayMillis(player)) * 1000) : 0;
  }

  private double delayMillis(Player player) {
    Seat seat = seats.get(player.name());
    return seat == null ? 0 : Acoustics.delayMillis(seat.metresTo(FRONT));
  }

  private static double spreadMillis(Player player) {
    OnsetSpread spread = OnsetSpread.of(player.instrument());
    return (spread.leastMillis() + spread.mostMillis()) / 2;
  }

  private double draw() {
    return Math.max(-MOST, Math.min(MOST, chance.nextGaussian()));
  }
}
