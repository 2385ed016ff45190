package stafette.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.check.Wording;
import stafette.limits.Burst;
import stafette.limits.Demand;
import stafette.limits.Skill;
import stafette.plan.Brief;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.words.Sentence;
import stafette.words.Settable;

/** Why there is no plan, from the plainest reason to the least plain one. */
final class Explanation {
  /** Overlaps and rests cost so much of what players can keep up. */
  private static final double MARGIN = 1.3;

  private final Brief brief;
  private final Line line;
  private final List<PlayerKind> kinds;

  Explanation(Brief brief, List<PlayerKind> kinds) {
    this.brief = brief;
    this.line = brief.line();
    this.kinds = kinds;
  }

  List<Reason> reasons() {
    List<Reason> reasons = new ArrayList<>();
    withoutSkill(reasons);
    unreached(reasons);
    if (reasons.isEmpty()) {
      crowded(reasons);
    }
    if (reasons.isEmpty()) {
      spent(reasons);
    }
    if (reasons.isEmpty()) {
      reasons.add(
          new Reason(
              Optional.empty(),
              Sentence.of(
                  "every note can be played, but no chain of handoffs holds from the first to the"
                      + " last: overlaps, rests before entries or breaths don't fit together;"
                      + " add a player, allow wider overlaps{0}, less rest{1} or a slower tempo",
                  Settable.OVERLAP, Settable.REST)));
    }
    return reasons;
  }

  private void withoutSkill(List<Reason> reasons) {
    for (Player player : brief.players()) {
      if (player.skills().isEmpty()) {
        reasons.add(
            new Reason(
                Optional.empty(),
                Sentence.of(
                    "{0} has no technique at all; allow one that not everybody has{1}, or name"
                        + " another player",
                    player.name(), Settable.TECHNIQUES)));
      }
    }
  }

  /**
   * Strokes that nobody can play with a neighbour: out of everybody's range, or too fast for all.
   */
  private void unreached(List<Reason> reasons) {
    for (int j = 0; j < line.count(); j++) {
      int stroke = j;
      boolean ranged =
          brief.players().stream()
              .anyMatch(
                  p -> line.stroke(stroke).tones().stream().allMatch(p.instrument()::reaches));
      if (!ranged) {
        reasons.add(
            new Reason(
                Optional.of(line.placeOf(j)),
                Sentence.of(
                    "{0}: {1} is out of the range of all these players; add one who has it",
                    line.placeOf(j), line.stroke(j).tones().get(0))));
        return;
      }
      if (j > 0 && !anybodyJoins(j)) {
        reasons.add(tooFast(j));
        return;
      }
    }
  }

  /** Whether some player can play this stroke with those before it that a burst takes in. */
  private boolean anybodyJoins(int j) {
    int from = Math.max(0, j - Burst.MOST_GAPS);
    return IntStream.rangeClosed(from + 1, j).anyMatch(line::restsBefore)
        || kinds.stream()
            .flatMap(kind -> kind.tables().stream())
            .filter(table -> table.line().equals(line))
            .anyMatch(table -> table.row(from).last() >= j || startsBefore(table, from, j));
  }

  private static boolean startsBefore(SegmentTable table, int from, int j) {
    return IntStream.range(Math.max(0, from - 3), from)
        .anyMatch(first -> table.row(first).last() >= j);
  }

  private Reason tooFast(int j) {
    int from = Math.max(0, j - Burst.MOST_GAPS);
    double rate = (j - from) * 1e6 / Math.max(1, line.onsetMicros(j) - line.onsetMicros(from));
    double fastest =
        brief.players().stream()
            .flatMap(player -> player.skills().stream())
            .mapToDouble(skill -> skill.capability().peakPerSecond())
            .max()
            .orElse(0);
    Sentence sentence =
        rate > fastest
            ? Sentence.of(
                "{0} notes a second are beyond the peak of all these players ({1} at most); lower"
                    + " the tempo, allow a faster technique{2}, or choose other instruments",
                Wording.above(rate, fastest), Wording.below(rate, fastest), Settable.TECHNIQUES)
            : Sentence.of(
                "nobody can play this note together with those before it: who is in range is too"
                    + " slow or plays something else; add a player who has them all");
    return new Reason(
        Optional.of(line.placeOf(j)), Sentence.of("{0}: {1}", line.placeOf(j), sentence));
  }

  /** Nobody free at some place of the line. */
  private void crowded(List<Reason> reasons) {
    for (int j = 0; j < line.count(); j++) {
      long onset = line.onsetMicros(j);
      long end = line.endMicros(j);
      boolean free =
          brief.players().stream()
              .anyMatch(
                  p ->
                      p.busy().stream()
                          .allMatch(b -> b.toMicros() <= onset || b.fromMicros() >= end));
      if (!free) {
        reasons.add(
            new Reason(
                Optional.of(line.placeOf(j)),
                Sentence.of(
                    "{0}: the score gives all these players something else to play here; add one"
                        + " who is free",
                    line.placeOf(j))));
        return;
      }
    }
  }

  /** All players together can't keep the rate up. */
  private void spent(List<Reason> reasons) {
    double rate = Demand.usualRatePerSecond(line);
    double together =
        brief.players().stream()
            .mapToDouble(
                player ->
                    player.skills().stream()
                        .map(Skill::capability)
                        .filter(c -> c.peakPerSecond() >= rate)
                        .mapToDouble(c -> c.sustainedPerSecond())
                        .max()
                        .orElse(0))
            .sum();
    if (together < rate * MARGIN) {
      reasons.add(
          new Reason(
              Optional.empty(),
              Sentence.of(
                  "these players can't relieve each other fast enough: together they keep up {0}"
                      + " notes a second, the line has {1} and every overlap is played twice; add a"
                      + " player, or lower the tempo",
                  Sentence.decimal(together, 1), Sentence.decimal(rate, 1))));
    }
  }
}
