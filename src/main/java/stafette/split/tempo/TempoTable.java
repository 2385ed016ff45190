package stafette.split.tempo;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.IntFunction;
import stafette.plan.Brief;
import stafette.plan.Margin;
import stafette.plan.Weights;
import stafette.time.TempoMark;

/**
 * Tempo against number of players: what each number can do at each of some tempi, and the fastest
 * tempo of each number.
 *
 * <p>So many players are the best so many of those listed: the plan is the cheapest that uses at
 * most that many. The fastest tempo is looked for between the fastest mark of the table that has a
 * plan and the next, which has none: whole marks in between are bisected. If the fastest mark of
 * the table has a plan, the search goes on above it in growing steps, up to four times that tempo.
 * Slower tempi may still be impossible, since slow lines take more breath, and so may a much faster
 * one be possible: nothing is claimed beyond the two marks.
 *
 * @param rows one for each tempo, slowest first
 * @param present index of the row with the present tempo
 * @param fastest for one player, for two, and so on
 */
public record TempoTable(List<TempoRow> rows, int present, List<FastestTempo> fastest) {
  public TempoTable {
    rows = List.copyOf(rows);
    fastest = List.copyOf(fastest);
  }

  /** The row with the present tempo. */
  public TempoRow presentRow() {
    return rows.get(present);
  }

  /**
   * Fills the table.
   *
   * @param marks of one unit, increasing
   * @param present index of the present tempo among them
   * @param briefs the brief at a tempo
   * @param stops when a search shall stop, by how many may still come, itself included
   */
  public static TempoTable of(
      List<TempoMark> marks,
      int present,
      Function<TempoMark, Brief> briefs,
      IntFunction<BooleanSupplier> stops) {
    return new TempoSearch(marks, mark -> bare(briefs.apply(mark)), stops).table(present);
  }

  /** Without a margin of tempo, and with no price on players who are left out: they are counted. */
  public static Brief bare(Brief brief) {
    Weights weights = brief.rules().weights();
    Weights idleForNothing = weights.withPlayers(weights.player(), weights.used(), 0);
    return brief.with(brief.rules().with(idleForNothing).with(Margin.NONE));
  }
}
