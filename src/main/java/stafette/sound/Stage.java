package stafette.sound;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Seat;

/**
 * The players of a plan as voices, each at its place between left and right: by seat if any seat is
 * known, and then in the middle those without one; else from left to right in the brief's order.
 *
 * @param players the numbers of those who have something to play, rising
 * @param voices one for each
 */
record Stage(List<Integer> players, List<SoundingVoice> voices) {
  /** How far from the middle the outermost players of a roster, or seats, are placed. */
  private static final double REACH = 44;

  /** Seats closer to the middle than this are not pulled apart further. */
  private static final double LEAST_WIDTH_METRES = 3;

  static Stage of(Plan plan, Map<String, Seat> seats) {
    List<Integer> numbers =
        plan.segments().stream().map(segment -> segment.player()).distinct().sorted().toList();
    List<Player> players = numbers.stream().map(plan.brief().players()::get).toList();
    boolean seated = players.stream().anyMatch(player -> seats.containsKey(player.name()));
    return new Stage(
        numbers,
        IntStream.range(0, players.size())
            .mapToObj(
                i -> {
                  Player player = players.get(i);
                  double side =
                      seated
                          ? side(player, seats)
                          : players.size() == 1 ? 0 : 2.0 * i / (players.size() - 1) - 1;
                  return SoundingVoice.of(player.name(), player.instrument(), pan(side), false);
                })
            .toList());
  }

  /** The number of a player's voice. */
  int voice(int player) {
    return players.indexOf(player);
  }

  private static double side(Player player, Map<String, Seat> seats) {
    double width =
        seats.values().stream()
            .mapToDouble(seat -> Math.abs(seat.acrossMetres()))
            .reduce(LEAST_WIDTH_METRES, Math::max);
    Seat seat = seats.get(player.name());
    return seat == null ? 0 : seat.acrossMetres() / width;
  }

  /**
   * @param side from -1, left, to 1
   */
  private static int pan(double side) {
    return SoundingVoice.MIDDLE + (int) Math.round(REACH * side);
  }
}
