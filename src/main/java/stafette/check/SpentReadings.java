package stafette.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import stafette.plan.Plan;

/**
 * How spent a player is at each moment of a plan, what the score gives included: readings in order
 * of time, between which it changes evenly.
 *
 * @param tiredness after each stroke that loads
 * @param breath the share of the air spent, at both ends of each sound; empty without breath
 */
public record SpentReadings(List<ReserveReading> tiredness, List<ReserveReading> breath) {
  public SpentReadings {
    tiredness = List.copyOf(tiredness);
    breath = List.copyOf(breath);
  }

  /**
   * One moment.
   *
   * @param micros on the line's clock
   * @param spent 0 fresh, 1 the most that goes
   */
  public record ReserveReading(long micros, double spent) {}

  /** One for each player of the brief, in order. */
  public static List<SpentReadings> of(Plan plan) {
    Demands demands = new Demands(plan.brief());
    return IntStream.range(0, plan.brief().players().size())
        .mapToObj(player -> of(WholePart.of(plan, player, demands)))
        .toList();
  }

  private static SpentReadings of(WholePart part) {
    return new SpentReadings(tiredness(part), breath(part));
  }

  private static List<ReserveReading> tiredness(WholePart part) {
    double[][] course = PlayingSimulation.tiredness(part, 1);
    List<ReserveReading> readings = new ArrayList<>();
    for (int i = 0; i < course.length; i++) {
      List<Stint.Load> loads = part.stints().get(i).loads();
      for (int k = 0; k < course[i].length; k++) {
        readings.add(new ReserveReading(loads.get(k).onsetMicros(), course[i][k]));
      }
    }
    return readings;
  }

  private static List<ReserveReading> breath(WholePart part) {
    return part.player()
        .instrument()
        .breath()
        .map(
            lungs ->
                breath(
                    part,
                    PlayingSimulation.breath(part, lungs, 1),
                    PlayingSimulation.Air.of(part, lungs)))
        .orElse(List.of());
  }

  private static List<ReserveReading> breath(
      WholePart part, double[][] course, List<PlayingSimulation.Air> airs) {
    List<ReserveReading> readings = new ArrayList<>();
    int next = 0;
    for (int i = 0; i < course.length; i++) {
      List<Stint.StintSound> sounds = part.stints().get(i).sounds();
      for (int k = 0; k < course[i].length; k++) {
        Stint.StintSound sound = sounds.get(k);
        double before = course[i][k] - airs.get(next++).spends();
        readings.add(new ReserveReading(sound.onsetMicros(), before));
        readings.add(new ReserveReading(sound.endMicros(), course[i][k]));
      }
    }
    return readings;
  }
}
