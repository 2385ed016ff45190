package stafette.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.plan.Busy;
import stafette.plan.Player;
import stafette.plan.Skill;

/**
 * What the score gives a player beside the line, as steps of effort. Where a passage asks too much
 * of a player who does nothing else, it is excused.
 */
final class GivenEffort {
  private final List<Busy> passages;
  private final Optional<Capability> capability;
  private final Optional<Breath> lungs;
  private final List<List<Effort.Role>> strokes = new ArrayList<>();
  private final List<Effort.Role> sounds = new ArrayList<>();

  GivenEffort(Player player) {
    passages = player.busy();
    capability = player.leastTiringSkill().map(Skill::capability);
    lungs = player.instrument().breath();
    excuse();
  }

  private void excuse() {
    Effort effort = Effort.FRESH;
    for (int i = 0; i < passages.size(); i++) {
      Busy busy = passages.get(i);
      long next = i + 1 < passages.size() ? passages.get(i + 1).fromMicros() : Long.MAX_VALUE;
      List<Effort.Role> roles = new ArrayList<>();
      for (long micros : busy.strokeMicros()) {
        Effort loaded = load(effort, micros, Effort.Role.GIVEN);
        roles.add(role(loaded));
        effort = forgiven(loaded);
      }
      strokes.add(roles);
      effort = forgiven(effort.sound(sound(busy, Effort.Role.GIVEN), lungs));
      Effort ended = endedBefore(effort, next);
      sounds.add(role(ended));
    }
  }

  /** As the passage after ends this one: only whether the air lasts is of use. */
  private Effort endedBefore(Effort effort, long next) {
    return next == Long.MAX_VALUE
        ? effort.ended(lungs)
        : effort.sound(new Effort.Sound(next, next, 1, Effort.Role.GIVEN), lungs);
  }

  private static Effort.Role role(Effort effort) {
    return effort.holds() ? Effort.Role.GIVEN : Effort.Role.EXCUSED;
  }

  private static Effort forgiven(Effort effort) {
    return new Effort(
        effort.tiredness(), effort.loadedMicros(), effort.spent(), effort.sound(), true);
  }

  int count() {
    return passages.size();
  }

  Busy get(int index) {
    return passages.get(index);
  }

  /** After a passage. */
  Effort play(Effort before, int index) {
    Busy busy = passages.get(index);
    Effort effort = before;
    for (int k = 0; k < busy.strokeMicros().size(); k++) {
      effort = load(effort, busy.strokeMicros().get(k), strokes.get(index).get(k));
    }
    return effort.sound(sound(busy, sounds.get(index)), lungs);
  }

  private Effort load(Effort effort, long micros, Effort.Role role) {
    return capability
        .map(able -> effort.load(micros, able.sustainedMilli(), 0, able, role))
        .orElse(effort);
  }

  private static Effort.Sound sound(Busy busy, Effort.Role role) {
    return new Effort.Sound(busy.fromMicros(), busy.toMicros(), 1, role);
  }
}
