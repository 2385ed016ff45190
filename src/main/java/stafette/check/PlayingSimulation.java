package stafette.check;

import java.util.ArrayList;
import java.util.List;
import stafette.limits.Breath;
import stafette.limits.Capability;

/**
 * How a player's tiredness, or the share of air spent, runs through a whole part: one list of
 * readings for each stint, 1 the most that goes. A given passage can't spend more than there is:
 * what it asks beyond that shows in its readings and is not carried on.
 *
 * <p>Times of the part may be stretched, as a slower tempo does; recovery and breathing are not.
 */
public final class PlayingSimulation {
  private PlayingSimulation() {}

  /** Tiredness after each stroke that loads. */
  public static double[][] tiredness(WholePart part, double stretch) {
    List<Stint> stints = part.stints();
    double[][] readings = new double[stints.size()][];
    boolean untouched = true;
    double tiredness = 0;
    long previous = 0;
    for (int i = 0; i < readings.length; i++) {
      Stint stint = stints.get(i);
      readings[i] = new double[stint.loads().size()];
      for (int k = 0; k < readings[i].length; k++) {
        Stint.Load load = stint.loads().get(k);
        Capability capability = load.capability();
        double gap = Math.max(0, load.onsetMicros() - previous) * stretch;
        tiredness =
            untouched
                ? Tiredness.atFirst(load.graces(), capability)
                : Tiredness.after(tiredness, gap, load.sustainedMilli(), load.graces(), capability);
        readings[i][k] = tiredness;
        tiredness = stint.isGiven() ? Math.min(1, tiredness) : tiredness;
        previous = load.onsetMicros();
        untouched = false;
      }
    }
    return readings;
  }

  /** The share of the air spent at the end of each sound. */
  public static double[][] breath(WholePart part, Breath breath, double stretch) {
    List<Air> airs = Air.of(part, breath);
    double[][] readings = new double[part.stints().size()][];
    double spent = 0;
    int next = 0;
    for (int i = 0; i < readings.length; i++) {
      Stint stint = part.stints().get(i);
      readings[i] = new double[stint.sounds().size()];
      for (int k = 0; k < readings[i].length; k++) {
        Air air = airs.get(next++);
        spent += air.spends() * stretch;
        readings[i][k] = spent;
        spent = stint.isGiven() ? Math.min(1, spent) : spent;
        spent =
            Tolerance.reaches(air.silence() * stretch, breath.catchSeconds())
                ? Math.max(0, spent - air.givesBack() * stretch)
                : spent + air.spendsInSilence() * stretch;
      }
    }
    return readings;
  }

  /**
   * What one sound and the silence after it do to the air, as shares of the capacity.
   *
   * @param spends what the sound takes
   * @param silence its length in seconds
   * @param spendsInSilence what the silence takes if it is too short to breathe
   * @param givesBack what it gives back if it is long enough
   */
  public record Air(double spends, double silence, double spendsInSilence, double givesBack) {
    /** For each sound of the part, in order; a sound ends where the player's next one begins. */
    public static List<Air> of(WholePart part, Breath breath) {
      List<Stint.StintSound> sounds =
          part.stints().stream().flatMap(stint -> stint.sounds().stream()).toList();
      List<Air> result = new ArrayList<>();
      for (int i = 0; i < sounds.size(); i++) {
        Stint.StintSound sound = sounds.get(i);
        long next = i + 1 < sounds.size() ? sounds.get(i + 1).onsetMicros() : Long.MAX_VALUE;
        long end = Math.min(sound.endMicros(), Math.max(sound.onsetMicros(), next));
        double seconds = (end - sound.onsetMicros()) / 1e6;
        double silence = next == Long.MAX_VALUE ? 0 : Math.max(0, next - end) / 1e6;
        result.add(
            new Air(
                seconds * sound.use() / breath.capacitySeconds(),
                silence,
                silence * sound.use() / breath.capacitySeconds(),
                silence / breath.fullSeconds()));
      }
      return result;
    }
  }
}
