package stafette.tables;

import java.util.List;
import java.util.Optional;
import stafette.check.Verdict;
import stafette.plan.Brief;
import stafette.plan.Plan;
import stafette.time.TempoMark;

/**
 * Tempo against number of players, ready to be written down.
 *
 * @param score where the line stands
 * @param brief what was asked, at the present tempo
 * @param present the present tempo
 * @param rows one for each tempo, slowest first
 * @param fastest for one player, for two, and so on
 * @param fewest the least number of players at the present tempo; without a number if there is none
 * @param verdict on the plan of all players at the present tempo, if there is one
 * @param searchSeconds how long all searches took
 * @param remarks why there is no plan at the present tempo and what would help
 */
public record TempoReport(
    ScoreFile score,
    Brief brief,
    TempoMark present,
    List<Row> rows,
    List<Edge> fastest,
    Fewest fewest,
    Optional<Verdict> verdict,
    double searchSeconds,
    List<String> remarks) {
  public TempoReport {
    rows = List.copyOf(rows);
    fastest = List.copyOf(fastest);
    remarks = List.copyOf(remarks);
  }

  /** A tempo with one cell for each number of players. */
  public record Row(TempoMark tempo, List<Cell> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * What at most so many players can do.
   *
   * @param result "optimal", "none", or "stopped" where time ran out
   * @param plan the plan and its verdict, if there is one
   */
  public record Cell(String result, Optional<PlanReport.Judged> plan) {}

  /**
   * The fastest tempo of so many players.
   *
   * @param tempo empty if they have no plan at any tempo of the table
   * @param proven whether a faster one was proven to have no plan
   * @param plan a plan at that tempo
   */
  public record Edge(Optional<TempoMark> tempo, boolean proven, Optional<Plan> plan) {}

  /**
   * How few players are enough.
   *
   * @param players empty if none are
   * @param proven whether fewer were proven to be too few
   */
  public record Fewest(Optional<Integer> players, boolean proven) {}
}
