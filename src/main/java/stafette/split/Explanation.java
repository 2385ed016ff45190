package stafette.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.limits.Demand;
import stafette.plan.Brief;
import stafette.plan.Player;
import stafette.plan.Skill;
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
                    "{0} has no technique for such a line (its slurs, repeated notes or rate);"
                        + " allow one that not everybody has{1}, or name another player",
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

  /** Whether some player can play this stroke right after the one before. */
  private boolean anybodyJoins(int j) {
    return line.restsBefore(j)
        || kinds.stream()
            .flatMap(kind -> kind.tables().stream())
            .filter(table -> table.line().equals(line))
            .anyMatch(table -> table.row(j - 1).last() >= j || startsBefore(table, j));
  }

  private static boolean startsBefore(SegmentTable table, int j) {
    for (int first = j - 1; first >= Math.max(0, j - 3); first--) {
      if (table.row(first).last() >= j) {
        return true;
      }
    }
    return false;
  }

  private Reason tooFast(int j) {
    double rate = 1e6 / Math.max(1, line.onsetMicros(j) - line.onsetMicros(j - 1));
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
                Sentence.decimal(rate, 1), Sentence.decimal(fastest, 1), Settable.TECHNIQUES)
            : Sentence.of(
                "nobody can play this note together with the one before it: who is in range is too"
                    + " slow or plays something else; add a player who has both");
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
