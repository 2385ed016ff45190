package stafette.split;

import static stafette.split.ReferenceShares.MOST;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stafette.limits.Capability;
import stafette.limits.Demand;
import stafette.plan.Brief;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.split.ReferenceModel.Choice;

/**
 * One player's whole part in the constraint model: its segments and what the score gives it form a
 * chain whose links are rests; tiredness and air run along it stroke by stroke.
 *
 * <p>Both are bounded from below only: to be less tired never forbids anything and costs nothing.
 */
final class ReferencePart {
  private final CpModel model;
  private final Line line;
  private final Player player;
  private final long readyMicros;
  private final List<Choice> own;
  private final List<Demand> demands;
  private final Optional<ReferenceAir> lungs;
  private final IntVar[] tired;
  private final ReferenceGiven given;

  /**
   * How a player comes out of a segment or a given passage.
   *
   * @param tired after its last stroke that tires
   * @param air spent at the end of its last sound, for winds
   * @param changeMicros the least rest after it, where the manner changes
   * @param use what multiplies the use of air from there on
   */
  record Brought(
      long loadMicros,
      IntVar tired,
      long soundEndMicros,
      long changeMicros,
      Optional<IntVar> air,
      double use) {}

  /**
   * How a player goes into a segment or a given passage.
   *
   * @param tired after the first stroke
   * @param air spent before the first sound, for winds
   * @param capped true if the passage asks for more than there is, with or without the plan
   */
  record Taken(
      boolean entry,
      long onsetMicros,
      long soundMicros,
      int sustainedMilli,
      Capability capability,
      int graces,
      IntVar tired,
      Optional<IntVar> air,
      Optional<Literal> capped) {}

  /** One end of a rest: after so many given passages, in a plan for which the literal is true. */
  private record Side<T>(Literal present, int passages, Optional<T> state) {}

  private record Gap(int way, int from, int to) {}

  private record Ending(int last, int lastLoad) {}

  private record Start(int way, int first) {}

  ReferencePart(CpModel model, Brief brief, Player player, List<Choice> own) {
    this.model = model;
    this.line = brief.line();
    this.player = player;
    this.readyMicros = brief.rules().readyMicros(player);
    this.own = own;
    demands = player.ways().stream().map(way -> Demand.of(player.instrument(), way, line)).toList();
    lungs =
        player.instrument().breath().map(breath -> new ReferenceAir(model, line, player, breath));
    tired = new IntVar[line.count()];
    for (int j = 0; j < tired.length; j++) {
      tired[j] = model.newIntVar(0, MOST, "tired " + j);
    }
    given = new ReferenceGiven(model, player);
  }

  void carryOver() {
    List<Side<Brought>> leaving = leaving();
    List<Side<Taken>> coming = coming();
    Map<Side<?>, List<Literal>> links = new LinkedHashMap<>();
    for (Side<Brought> before : leaving) {
      for (Side<Taken> after : coming) {
        if (mayFollow(before, after)) {
          BoolVar rests = model.newBoolVar("rest");
          links.computeIfAbsent(before, b -> new ArrayList<>()).add(rests);
          links.computeIfAbsent(after, a -> new ArrayList<>()).add(rests);
          if (before.state().isPresent() && after.state().isPresent()) {
            rest(rests, before.state().get(), after.state().get());
          }
        }
      }
    }
    leaving.forEach(side -> chain(side, links));
    coming.forEach(side -> chain(side, links));
    tireInside();
    lungs.ifPresent(air -> air.breatheInside(own));
  }

  private void chain(Side<?> side, Map<Side<?>, List<Literal>> links) {
    Literal[] linked = links.getOrDefault(side, List.of()).toArray(new Literal[0]);
    model.addEquality(LinearExpr.sum(linked), side.present());
  }

  /** The given passages are links of every chain, so none can be passed over. */
  private boolean mayFollow(Side<Brought> before, Side<Taken> after) {
    if (before.passages() != after.passages()) {
      return false;
    }
    if (before.state().isEmpty() || after.state().isEmpty() || !after.state().get().entry()) {
      return true;
    }
    long silence = after.state().get().soundMicros() - before.state().get().soundEndMicros();
    return silence >= Math.max(readyMicros, before.state().get().changeMicros())
        && after.state().get().onsetMicros() > before.state().get().loadMicros();
  }

  private List<Side<Brought>> leaving() {
    List<Side<Brought>> result = new ArrayList<>();
    result.add(new Side<>(model.trueLiteral(), 0, Optional.empty()));
    for (int passage = 0; passage < player.busy().size(); passage++) {
      result.add(new Side<>(model.trueLiteral(), passage + 1, Optional.of(given.brought(passage))));
    }
    Map<Ending, List<Choice>> endings =
        grouped(own, s -> new Ending(s.last(), lastLoad(s, s.last())));
    endings.forEach(
        (ending, some) -> {
          long onset = line.onsetMicros(ending.last());
          Brought brought =
              new Brought(
                  line.onsetMicros(ending.lastLoad()),
                  tired[ending.lastLoad()],
                  line.endMicros(ending.last()),
                  0,
                  lungs.map(air -> air.after(ending.last())),
                  lungs.map(air -> air.use(ending.last())).orElse(1.0));
          result.add(new Side<>(anyOf(some), passagesBefore(onset), Optional.of(brought)));
        });
    return result;
  }

  private List<Side<Taken>> coming() {
    List<Side<Taken>> result = new ArrayList<>();
    int passages = player.busy().size();
    result.add(new Side<>(model.trueLiteral(), passages, Optional.empty()));
    for (int passage = 0; passage < passages; passage++) {
      result.add(new Side<>(model.trueLiteral(), passage, Optional.of(given.taken(passage))));
    }
    grouped(own, s -> new Start(s.way(), s.first()))
        .forEach(
            (start, some) -> {
              long onset = line.onsetMicros(start.first());
              Demand demand = demands.get(start.way());
              Capability capability = demand.capability(start.first());
              int sustained = demand.sustainedMilli(start.first());
              Taken taken =
                  new Taken(
                      true,
                      onset,
                      onset,
                      sustained,
                      capability,
                      graces(start.first()),
                      tired[start.first()],
                      lungs.map(air -> air.before(start.first())),
                      Optional.empty());
              Literal present = anyOf(some);
              atLeast(present, tired[start.first()], graces(start.first()), capability);
              result.add(new Side<>(present, passagesBefore(onset), Optional.of(taken)));
            });
    return result;
  }

  private int passagesBefore(long micros) {
    return (int) player.busy().stream().filter(busy -> busy.fromMicros() < micros).count();
  }

  private void rest(Literal rests, Brought before, Taken after) {
    Capability capability = after.capability();
    long gap = Math.max(0, after.onsetMicros() - before.loadMicros());
    long change =
        ReferenceShares.change(gap, after.sustainedMilli(), capability)
            + ReferenceShares.graces(after.graces(), capability);
    Literal[] when =
        after.capped().map(c -> new Literal[] {rests, c.not()}).orElse(new Literal[] {rests});
    model
        .addGreaterOrEqual(after.tired(), LinearExpr.affine(before.tired(), 1, change))
        .onlyEnforceIf(when);
    lungs.ifPresent(air -> air.rest(rests, before, after));
  }

  /** Tiredness from stroke to stroke inside segments. */
  private void tireInside() {
    Map<Gap, List<Choice>> gaps = new LinkedHashMap<>();
    for (Choice choice : own) {
      Segment segment = choice.segment();
      int previous = segment.first();
      for (int j = segment.first() + 1; j <= segment.last(); j++) {
        if (loads(segment, j)) {
          gaps.computeIfAbsent(new Gap(segment.way(), previous, j), g -> new ArrayList<>())
              .add(choice);
          previous = j;
        }
      }
    }
    gaps.forEach(
        (gap, some) -> {
          Literal plays = anyOf(some);
          Capability capability = demands.get(gap.way()).capability(gap.to());
          int sustained = demands.get(gap.way()).sustainedMilli(gap.to());
          long time = line.onsetMicros(gap.to()) - line.onsetMicros(gap.from());
          long change =
              ReferenceShares.change(time, sustained, capability)
                  + ReferenceShares.graces(graces(gap.to()), capability);
          model
              .addGreaterOrEqual(tired[gap.to()], LinearExpr.affine(tired[gap.from()], 1, change))
              .onlyEnforceIf(plays);
          atLeast(plays, tired[gap.to()], graces(gap.to()), capability);
        });
  }

  private void atLeast(Literal plays, IntVar tiredness, int graces, Capability capability) {
    if (graces > 0) {
      model
          .addGreaterOrEqual(tiredness, ReferenceShares.graces(graces, capability))
          .onlyEnforceIf(plays);
    }
  }

  private boolean loads(Segment segment, int j) {
    return demands.get(segment.way()).loads(segment.first(), j);
  }

  private int lastLoad(Segment segment, int last) {
    int j = last;
    while (!loads(segment, j)) {
      j--;
    }
    return j;
  }

  private int graces(int j) {
    return line.stroke(j).graces().size();
  }

  private Literal anyOf(List<Choice> some) {
    return ReferenceModel.anyOf(model, some);
  }

  private static <K> Map<K, List<Choice>> grouped(List<Choice> all, Function<Segment, K> by) {
    Map<K, List<Choice>> groups = new LinkedHashMap<>();
    all.forEach(c -> groups.computeIfAbsent(by.apply(c.segment()), k -> new ArrayList<>()).add(c));
    return groups;
  }
}
