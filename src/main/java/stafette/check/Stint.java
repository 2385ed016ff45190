package stafette.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Condition;
import stafette.limits.Demand;
import stafette.limits.Skill;
import stafette.plan.GivenStretch;
import stafette.plan.Played;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;

/**
 * One stretch that a player plays without handing over: a segment of the plan, or a passage that
 * the score gives.
 *
 * @param segment which one; empty for a given passage
 * @param changeMicros the least rest after it before the player may play the line, where that is
 *     played in another manner
 * @param loads the strokes that tire
 * @param sounds in order, not overlapping; at least one
 */
public record Stint(
    Optional<Segment> segment, long changeMicros, List<Load> loads, List<StintSound> sounds) {
  public Stint {
    loads = List.copyOf(loads);
    sounds = List.copyOf(sounds);
  }

  /**
   * A stroke that tires.
   *
   * @param sustainedMilli the rate that can go on there, in thousandths of a stroke a second
   * @param capability what the player can do with the technique used there
   * @param graces grace notes before it
   */
  record Load(long onsetMicros, double sustainedMilli, Capability capability, int graces) {}

  /**
   * A sound that takes breath.
   *
   * @param use what multiplies the use of air
   */
  record StintSound(long onsetMicros, long endMicros, double use) {}

  public static Stint of(Player player, Demand demand, Played played, Segment segment) {
    Line line = played.line();
    List<Load> loads = new ArrayList<>();
    List<StintSound> sounds = new ArrayList<>();
    for (int j = played.first(); j <= played.last(); j++) {
      if (demand.loads(played.first(), j)) {
        loads.add(
            new Load(
                line.onsetMicros(j),
                demand.sustainedMilli(j),
                demand.capability(j),
                Tiredness.graces(line, j)));
      }
      long end =
          j < played.last()
              ? Math.min(line.endMicros(j), line.onsetMicros(j + 1))
              : line.endMicros(j);
      sounds.add(new StintSound(line.onsetMicros(j), end, useOfAir(player, line, j)));
    }
    return new Stint(Optional.of(segment), 0, loads, sounds);
  }

  /** A given passage, played with the skill that tires the player least. */
  static Stint given(GivenStretch busy, Optional<Skill> skill) {
    List<Load> loads =
        skill.stream()
            .map(Skill::capability)
            .flatMap(
                able ->
                    busy.strokeMicros().stream()
                        .map(onset -> new Load(onset, able.sustainedMilli(), able, 0)))
            .toList();
    return new Stint(
        Optional.empty(),
        busy.changeMicros(),
        loads,
        List.of(new StintSound(busy.fromMicros(), busy.toMicros(), 1)));
  }

  boolean isGiven() {
    return segment.isEmpty();
  }

  long startMicros() {
    return sounds.get(0).onsetMicros();
  }

  long endMicros() {
    return sounds.get(sounds.size() - 1).endMicros();
  }

  static double useOfAir(Player player, Line line, int j) {
    Map<Condition, Double> use = player.instrument().breath().map(Breath::use).orElse(Map.of());
    if (use.isEmpty()) {
      return 1;
    }
    return Demand.conditionsAt(player.instrument(), line, j).stream()
        .mapToDouble(condition -> use.getOrDefault(condition, 1.0))
        .reduce(1, (a, b) -> a * b);
  }

  /** Which of the lines it is about; what the score gives is told beside the first. */
  Line lineOf(List<Line> lines) {
    return lines.get(segment().map(Segment::relay).orElse(0));
  }
}
