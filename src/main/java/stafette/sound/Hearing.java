package stafette.sound;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stafette.plan.Seat;
import stafette.time.Rational;

/**
 * How a plan is to be heard.
 *
 * @param speed factor on all tempi, above zero
 * @param timing how exactly strokes come where they are written
 * @param seats of players whose seats are known, by name: they place players in the stereo picture,
 *     and delay them as an ensemble
 * @param heard the players that sound, by their numbers in the brief
 * @param rest the rest of the score, if it is to be heard behind the line
 */
public record Hearing(
    Rational speed,
    Timing timing,
    Map<String, Seat> seats,
    Set<Integer> heard,
    Optional<RestOfScore> rest) {
  /**
   * @throws IllegalArgumentException if the speed is not above zero
   */
  public Hearing {
    seats = Map.copyOf(seats);
    heard = Set.copyOf(heard);
    if (speed.signum() <= 0) {
      throw new IllegalArgumentException("a speed must be above zero: " + speed);
    }
  }

  Hearing with(Timing other) {
    return new Hearing(speed, other, seats, heard, rest);
  }
}
