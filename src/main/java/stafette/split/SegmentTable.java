package stafette.split;

import java.util.IntSummaryStatistics;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import stafette.check.TechniqueRules;
import stafette.limits.Demand;
import stafette.plan.Player;
import stafette.plan.Skill;
import stafette.plan.Weights;
import stafette.score.Line;

/**
 * The segments that one kind of player can play with one technique when it comes fresh, with their
 * costs; worked out as asked for. None where the technique is not used on the line, which in a
 * hocket is the player's own strokes.
 */
final class SegmentTable {
  private final StrokeFigures figures;
  private final SegmentsMaker maker;
  private final @Nullable SegmentsFromStart[] rows;
  private final int leastSustained;
  private final int mostSustained;
  private final boolean serves;

  SegmentTable(Line line, Player player, Skill skill, Weights weights) {
    figures = new StrokeFigures(line, player, skill, weights);
    maker = new SegmentsMaker(figures);
    serves = TechniqueRules.serves(skill.technique(), line);
    rows = new SegmentsFromStart[line.count()];
    IntSummaryStatistics sustained =
        IntStream.range(0, line.count()).map(demand()::sustainedMilli).summaryStatistics();
    leastSustained = sustained.getMin();
    mostSustained = Math.max(sustained.getMax(), skill.capability().sustainedMilli());
  }

  Line line() {
    return figures.line();
  }

  Skill skill() {
    return figures.skill();
  }

  Demand demand() {
    return figures.demand();
  }

  /** What multiplies the use of air at a stroke. */
  double useOfAir(int stroke) {
    return figures.useOfAir(stroke);
  }

  int graces(int stroke) {
    return figures.graces(stroke);
  }

  /** The lowest sustained rate at any stroke of the line. */
  int leastSustainedMilli() {
    return leastSustained;
  }

  /** The highest sustained rate at any stroke of the line or in a given passage. */
  int mostSustainedMilli() {
    return mostSustained;
  }

  SegmentsFromStart row(int first) {
    SegmentsFromStart row = rows[first];
    if (row == null) {
      row = serves ? maker.row(first) : SegmentsFromStart.EMPTY;
      rows[first] = row;
    }
    return row;
  }
}
