package stafette.split.rotate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.plan.Lock;
import stafette.plan.OverlapRule;
import stafette.plan.Rules;
import stafette.plan.Segment;
import stafette.score.Line;

/**
 * A line cut into turns of equal units, whoever takes them.
 *
 * @param firsts the first stroke of each turn
 * @param lasts the last stroke of each turn, included
 */
public record EqualTurns(List<Integer> firsts, List<Integer> lasts) {
  public EqualTurns {
    firsts = List.copyOf(firsts);
    lasts = List.copyOf(lasts);
  }

  /**
   * Turns, handed over with the same overlap everywhere: who enters is there {@code early} strokes
   * before its unit begins, who leaves stays {@code late} strokes longer than its first one, the
   * landing note. Over a silence nothing is shared. A unit in which nobody would play anything that
   * the player before does not play anyhow is left to that player.
   *
   * @param units the first stroke of each unit
   * @return empty if such overlaps break the rules or a locked handoff, or there is but one turn
   */
  static Optional<EqualTurns> of(Line line, Rules rules, List<Integer> units, int early, int late) {
    List<Integer> starts = worthATurn(line, units, late);
    List<Integer> firsts = new ArrayList<>(List.of(0));
    List<Integer> lasts = new ArrayList<>();
    for (int start : starts.subList(1, starts.size())) {
      boolean silent = line.restsBefore(start);
      firsts.add(silent ? start : start - early);
      lasts.add(silent ? start - 1 : start + late);
    }
    lasts.add(line.count() - 1);
    EqualTurns turns = new EqualTurns(firsts, lasts);
    return turns.count() > 1 && turns.keepRules(line, rules)
        ? Optional.of(turns)
        : Optional.empty();
  }

  private static List<Integer> worthATurn(Line line, List<Integer> starts, int late) {
    List<Integer> result = new ArrayList<>();
    for (int k = 0; k < starts.size(); k++) {
      int start = starts.get(k);
      int next = k + 1 < starts.size() ? starts.get(k + 1) : line.count();
      boolean lastBeforeSilence = next == line.count() || line.restsBefore(next);
      boolean entersAfterSilence = start == 0 || line.restsBefore(start);
      if (entersAfterSilence || !lastBeforeSilence || start + late < next - 1) {
        result.add(start);
      }
    }
    return result;
  }

  private boolean keepRules(Line line, Rules rules) {
    return IntStream.range(1, count())
            .allMatch(turn -> inOrder(turn) && overlaps(line, rules.overlap(), turn))
        && rules.locks().stream().allMatch(this::keeps);
  }

  private boolean inOrder(int turn) {
    boolean threeAtOnce = turn > 1 && first(turn) <= last(turn - 2);
    return !threeAtOnce
        && first(turn) > first(turn - 1)
        && last(turn) > last(turn - 1)
        && last(turn) <= last(count() - 1);
  }

  private boolean overlaps(Line line, OverlapRule rule, int turn) {
    int first = first(turn);
    int landing = last(turn - 1);
    if (first > landing) {
      return true;
    }
    int shared = landing - first + 1;
    long beside = line.onsetMicros(landing) - line.onsetMicros(first);
    return shared >= rule.min()
        && (rule.max().isPresent()
            ? shared <= rule.max().getAsInt()
            : beside <= line.beatMicros(landing));
  }

  private boolean keeps(Lock lock) {
    return lock.match(
        at ->
            IntStream.range(1, count())
                .anyMatch(turn -> first(turn) == at.first() && last(turn - 1) == at.last()),
        exactly -> true,
        in -> true,
        out -> true);
  }

  public Segment segment(int turn, int player, int way) {
    return new Segment(player, way, first(turn), last(turn));
  }

  public int count() {
    return firsts.size();
  }

  int first(int turn) {
    return firsts.get(turn);
  }

  int last(int turn) {
    return lasts.get(turn);
  }
}
