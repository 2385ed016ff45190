package stafette.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Skill;
import stafette.plan.GivenStretch;
import stafette.plan.Player;

/**
 * What the score gives a player beside the line, as steps of effort. Where a passage asks too much
 * of a player who does nothing else, it is excused.
 */
public final class GivenSpending {
  private final List<GivenStretch> passages;
  private final Optional<Capability> capability;
  private final Optional<Breath> lungs;
  private final List<List<Spent.Role>> strokes = new ArrayList<>();
  private final List<Spent.Role> sounds = new ArrayList<>();

  public GivenSpending(Player player) {
    passages = player.busy();
    capability = player.leastTiringSkill().map(Skill::capability);
    lungs = player.instrument().breath();
    excuse();
  }

  private void excuse() {
    Spent effort = Spent.FRESH;
    for (int i = 0; i < passages.size(); i++) {
      GivenStretch busy = passages.get(i);
      long next = i + 1 < passages.size() ? passages.get(i + 1).fromMicros() : Long.MAX_VALUE;
      List<Spent.Role> roles = new ArrayList<>();
      for (long micros : busy.strokeMicros()) {
        Spent loaded = load(effort, micros, Spent.Role.GIVEN);
        roles.add(role(loaded));
        effort = forgiven(loaded);
      }
      strokes.add(roles);
      effort = forgiven(effort.sound(sound(busy, Spent.Role.GIVEN), lungs));
      Spent ended = endedBefore(effort, next);
      sounds.add(role(ended));
    }
  }

  /** As the passage after ends this one: only whether the air lasts is of use. */
  private Spent endedBefore(Spent effort, long next) {
    return next == Long.MAX_VALUE
        ? effort.ended(lungs)
        : effort.sound(new Spent.SpentSound(next, next, 1, Spent.Role.GIVEN), lungs);
  }

  private static Spent.Role role(Spent effort) {
    return effort.holds() ? Spent.Role.GIVEN : Spent.Role.EXCUSED;
  }

  private static Spent forgiven(Spent effort) {
    return new Spent(
        effort.tiredness(), effort.loadedMicros(), effort.spent(), effort.sound(), true);
  }

  public int count() {
    return passages.size();
  }

  public GivenStretch get(int index) {
    return passages.get(index);
  }

  /** After a passage. */
  public Spent play(Spent before, int index) {
    GivenStretch busy = passages.get(index);
    Spent effort = before;
    for (int k = 0; k < busy.strokeMicros().size(); k++) {
      effort = load(effort, busy.strokeMicros().get(k), strokes.get(index).get(k));
    }
    return effort.sound(sound(busy, sounds.get(index)), lungs);
  }

  private Spent load(Spent effort, long micros, Spent.Role role) {
    return capability
        .map(able -> effort.load(micros, able.sustainedMilli(), 0, able, role))
        .orElse(effort);
  }

  private static Spent.SpentSound sound(GivenStretch busy, Spent.Role role) {
    return new Spent.SpentSound(busy.fromMicros(), busy.toMicros(), 1, role);
  }
}
