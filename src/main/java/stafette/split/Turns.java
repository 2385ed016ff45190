package stafette.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.score.Line;

/**
 * A line cut into turns of equal units, whoever takes them.
 *
 * @param firsts the first stroke of each turn
 * @param lasts the last stroke of each turn, included
 */
record Turns(List<Integer> firsts, List<Integer> lasts) {
  Turns {
    firsts = List.copyOf(firsts);
    lasts = List.copyOf(lasts);
  }

  /**
   * Turns of a unit, handed over with the same overlap everywhere: who enters is there {@code
   * early} strokes before the unit begins, who leaves stays {@code late} strokes longer than its
   * first one, the landing note. Over a silence nothing is shared. A unit in which nobody would
   * play anything that the player before does not play anyhow is left to that player.
   *
   * @return empty if such overlaps break the rules somewhere, or there is but one turn
   */
  static Optional<Turns> of(Line line, Handoffs handoffs, RotationUnit unit, int early, int late) {
    List<Integer> starts = worthATurn(line, handoffs, unit.starts(line), late);
    List<Integer> firsts = new ArrayList<>(List.of(0));
    List<Integer> lasts = new ArrayList<>();
    for (int start : starts.subList(1, starts.size())) {
      boolean silent = handoffs.overSilence(start - 1);
      firsts.add(silent ? start : start - early);
      lasts.add(silent ? start - 1 : start + late);
    }
    lasts.add(line.count() - 1);
    Turns turns = new Turns(firsts, lasts);
    return turns.count() > 1 && turns.keepRules(handoffs) ? Optional.of(turns) : Optional.empty();
  }

  private static List<Integer> worthATurn(
      Line line, Handoffs handoffs, List<Integer> starts, int late) {
    List<Integer> result = new ArrayList<>();
    for (int k = 0; k < starts.size(); k++) {
      int start = starts.get(k);
      int next = k + 1 < starts.size() ? starts.get(k + 1) : line.count();
      boolean lastBeforeSilence = next == line.count() || handoffs.overSilence(next - 1);
      boolean entersAfterSilence = start == 0 || handoffs.overSilence(start - 1);
      if (entersAfterSilence || !lastBeforeSilence || start + late < next - 1) {
        result.add(start);
      }
    }
    return result;
  }

  private boolean keepRules(Handoffs handoffs) {
    return IntStream.range(1, count()).allMatch(turn -> keepsRules(handoffs, turn));
  }

  private boolean keepsRules(Handoffs handoffs, int turn) {
    int first = first(turn);
    int end = last(turn - 1);
    boolean inOrder =
        first > first(turn - 1) && last(turn) > end && last(turn) <= last(count() - 1);
    boolean threeAtOnce = turn > 1 && first <= last(turn - 2);
    return inOrder
        && !threeAtOnce
        && (first > end || (first >= handoffs.earliest(end) && first <= handoffs.latest(end)));
  }

  int count() {
    return firsts.size();
  }

  int first(int turn) {
    return firsts.get(turn);
  }

  int last(int turn) {
    return lasts.get(turn);
  }
}
