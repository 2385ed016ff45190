package stafette.split;

import static stafette.split.ReferenceShares.MOST;
import static stafette.split.ReferenceShares.WHOLE;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.check.Tiredness;
import stafette.limits.Breath;
import stafette.limits.Capability;
import stafette.limits.Skill;
import stafette.plan.GivenStretch;
import stafette.plan.Player;

/**
 * What the score gives one player, in the constraint model. A passage can't spend more than there
 * is; where it asks for more even without a plan, the plan is not to blame.
 */
final class ReferenceGiven {
  private final CpModel model;
  private final Player player;
  private final Skill skill;
  private final List<Passage> passages = new ArrayList<>();
  private double tiredAlone;
  private double airAlone;

  /**
   * One passage.
   *
   * @param tired after each stroke
   * @param firstCapped see {@link ReferencePart.Taken}
   * @param airBefore spent before it, for winds; {@code airAfter} at its end
   */
  private record Passage(
      GivenStretch busy,
      List<IntVar> tired,
      Optional<Literal> firstCapped,
      Optional<IntVar> airBefore,
      Optional<IntVar> airAfter) {}

  /** For a player with at least one skill; each passage has a stroke. */
  ReferenceGiven(CpModel model, Player player) {
    this.model = model;
    this.player = player;
    this.skill = player.leastTiringSkill().orElseThrow();
    for (int i = 0; i < player.busy().size(); i++) {
      passages.add(passage(i));
    }
  }

  /** How the player goes into a passage. */
  ReferencePart.Taken taken(int index) {
    Passage passage = passages.get(index);
    return new ReferencePart.Taken(
        false,
        passage.busy().strokeMicros().get(0),
        passage.busy().fromMicros(),
        skill.capability().sustainedMilli(),
        skill.capability(),
        0,
        passage.tired().get(0),
        passage.airBefore(),
        passage.firstCapped());
  }

  /** How the player comes out of it. */
  ReferencePart.Brought brought(int index) {
    Passage passage = passages.get(index);
    int last = passage.tired().size() - 1;
    return new ReferencePart.Brought(
        passage.busy().strokeMicros().get(last),
        passage.tired().get(last),
        passage.busy().toMicros(),
        passage.busy().changeMicros(),
        passage.airAfter(),
        1);
  }

  private Passage passage(int index) {
    GivenStretch busy = player.busy().get(index);
    Capability capability = skill.capability();
    List<IntVar> tired = new ArrayList<>();
    Optional<Literal> firstCapped = Optional.empty();
    for (int k = 0; k < busy.strokeMicros().size(); k++) {
      IntVar now = model.newIntVar(0, MOST, "tired by what is given");
      Optional<Literal> capped =
          isBeyondAlone(index, k) ? Optional.of(capped(now)) : Optional.empty();
      if (k == 0) {
        firstCapped = capped;
      } else {
        long gap = busy.strokeMicros().get(k) - busy.strokeMicros().get(k - 1);
        long change = ReferenceShares.change(gap, capability.sustainedMilli(), capability);
        atLeast(now, LinearExpr.affine(tired.get(k - 1), 1, change), capped);
      }
      tired.add(now);
    }
    Optional<IntVar> before = player.instrument().breath().map(this::airBefore);
    Optional<IntVar> after =
        before.map(air -> airAfter(index, air, player.instrument().breath().orElseThrow()));
    return new Passage(busy, tired, firstCapped, before, after);
  }

  private IntVar airBefore(Breath breath) {
    double most =
        breath.use().values().stream().reduce(1.0, (one, other) -> one * Math.max(1, other));
    long shortSilence =
        ReferenceShares.spent((long) (breath.catchSeconds() * 1e6), most, breath.capacitySeconds());
    return model.newIntVar(0, MOST + shortSilence, "air before what is given");
  }

  private IntVar airAfter(int index, IntVar before, Breath breath) {
    IntVar after = model.newIntVar(0, MOST, "air after what is given");
    GivenStretch busy = player.busy().get(index);
    long spent =
        ReferenceShares.spent(busy.toMicros() - busy.fromMicros(), 1, breath.capacitySeconds());
    Optional<Literal> capped =
        isBreathlessAlone(index, breath) ? Optional.of(capped(after)) : Optional.empty();
    atLeast(after, LinearExpr.affine(before, 1, spent), capped);
    return after;
  }

  /** A literal that may be true only where all is spent. */
  private Literal capped(IntVar spent) {
    BoolVar capped = model.newBoolVar("capped");
    model.addGreaterOrEqual(spent, WHOLE).onlyEnforceIf(capped);
    return capped;
  }

  private void atLeast(IntVar spent, LinearExpr least, Optional<Literal> capped) {
    Literal[] when = capped.map(c -> new Literal[] {c.not()}).orElse(new Literal[0]);
    model.addGreaterOrEqual(spent, least).onlyEnforceIf(when);
  }

  /** Takes the passages in turn, stroke by stroke. */
  private boolean isBeyondAlone(int index, int stroke) {
    GivenStretch busy = player.busy().get(index);
    if (index == 0 && stroke == 0) {
      tiredAlone = 0;
    } else {
      GivenStretch before = stroke > 0 ? busy : player.busy().get(index - 1);
      int previous = stroke > 0 ? stroke - 1 : before.strokeMicros().size() - 1;
      long gap = busy.strokeMicros().get(stroke) - before.strokeMicros().get(previous);
      int sustained = skill.capability().sustainedMilli();
      tiredAlone = Tiredness.after(tiredAlone, gap, sustained, 0, skill.capability());
    }
    boolean beyond = tiredAlone > 1;
    tiredAlone = Math.min(1, tiredAlone);
    return beyond;
  }

  /** Takes the passages in turn. */
  private boolean isBreathlessAlone(int index, Breath breath) {
    GivenStretch busy = player.busy().get(index);
    if (index > 0) {
      double silence = (busy.fromMicros() - player.busy().get(index - 1).toMicros()) / 1e6;
      airAlone =
          silence >= breath.catchSeconds()
              ? Math.max(0, airAlone - silence / breath.fullSeconds())
              : airAlone + silence / breath.capacitySeconds();
    }
    airAlone += (busy.toMicros() - busy.fromMicros()) / 1e6 / breath.capacitySeconds();
    boolean beyond = airAlone > 1;
    airAlone = Math.min(1, airAlone);
    return beyond;
  }
}
