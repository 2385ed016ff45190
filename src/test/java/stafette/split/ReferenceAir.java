package stafette.split;

import static stafette.split.ReferenceShares.MOST;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.List;
import java.util.function.BiPredicate;
import stafette.limits.Breath;
import stafette.limits.Demand;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.split.ReferenceModel.Choice;

/** The air of one wind player in the constraint model. */
final class ReferenceAir {
  private final CpModel model;
  private final Line line;
  private final Player player;
  private final Breath breath;
  private final IntVar[] before;
  private final IntVar[] after;

  ReferenceAir(CpModel model, Line line, Player player, Breath breath) {
    this.model = model;
    this.line = line;
    this.player = player;
    this.breath = breath;
    before = new IntVar[line.count()];
    after = new IntVar[line.count()];
    for (int j = 0; j < before.length; j++) {
      before[j] = model.newIntVar(0, MOST, "air before " + j);
      after[j] = model.newIntVar(0, MOST, "air after " + j);
    }
  }

  /** Spent before the sound of a stroke. */
  IntVar before(int stroke) {
    return before[stroke];
  }

  /** Spent at the end of its sound. */
  IntVar after(int stroke) {
    return after[stroke];
  }

  /** What multiplies the use of air at a stroke. */
  double use(int stroke) {
    return Demand.conditionsAt(player.instrument(), line, stroke).stream()
        .mapToDouble(condition -> breath.use().getOrDefault(condition, 1.0))
        .reduce(1, (one, other) -> one * other);
  }

  /** Carries air over a rest. */
  void rest(Literal rests, ReferencePart.Brought from, ReferencePart.Taken to) {
    long change = silence(to.soundMicros() - from.soundEndMicros(), from.use());
    IntVar spent = from.air().orElseThrow();
    model
        .addGreaterOrEqual(to.air().orElseThrow(), LinearExpr.affine(spent, 1, change))
        .onlyEnforceIf(rests);
  }

  void breatheInside(List<Choice> own) {
    for (int j = 0; j < line.count(); j++) {
      int stroke = j;
      ifAny(own, (first, last) -> first <= stroke && stroke <= last, stroke, this::sounds);
      ifAny(own, (first, last) -> first <= stroke && stroke < last, stroke, this::goesOn);
    }
  }

  private interface Rule {
    void hold(int stroke, Literal plays);
  }

  private void ifAny(
      List<Choice> own, BiPredicate<Integer, Integer> covers, int stroke, Rule rule) {
    List<Choice> some =
        own.stream().filter(c -> covers.test(c.segment().first(), c.segment().last())).toList();
    if (!some.isEmpty()) {
      rule.hold(stroke, ReferenceModel.anyOf(model, some));
    }
  }

  private void sounds(int j, Literal plays) {
    long sound = line.endMicros(j) - line.onsetMicros(j);
    long spent = ReferenceShares.spent(sound, use(j), breath.capacitySeconds());
    model.addGreaterOrEqual(after[j], LinearExpr.affine(before[j], 1, spent)).onlyEnforceIf(plays);
  }

  private void goesOn(int j, Literal plays) {
    long change = silence(line.onsetMicros(j + 1) - line.endMicros(j), use(j));
    model
        .addGreaterOrEqual(before[j + 1], LinearExpr.affine(after[j], 1, change))
        .onlyEnforceIf(plays);
  }

  private long silence(long micros, double use) {
    return micros >= breath.catchSeconds() * 1e6
        ? -ReferenceShares.givenBack(micros, breath.fullSeconds())
        : ReferenceShares.spent(micros, use, breath.capacitySeconds());
  }
}
