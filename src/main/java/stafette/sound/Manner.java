package stafette.sound;

import java.util.Map;
import stafette.plan.Seat;

/**
 * How a plan is to be played.
 *
 * @param human whether onsets spread and sound takes its time from the seats, as with people
 * @param speed 1 for the planned tempo, 0.5 for half of it
 * @param seats of players whose seats are known, by name
 */
public record Manner(boolean human, double speed, Map<String, Seat> seats) {
  /**
   * @throws IllegalArgumentException if the speed is not above zero
   */
  public Manner {
    seats = Map.copyOf(seats);
    if (!(speed > 0)) {
      throw new IllegalArgumentException("no speed: " + speed);
    }
  }
}
