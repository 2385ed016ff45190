package stafette.split;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import stafette.limits.Capability;
import stafette.limits.Demand;
import stafette.plan.Weights;
import stafette.score.Line;

/**
 * The segments that one kind of player can play in one way when it comes fresh, with their costs;
 * worked out as asked for.
 */
final class SegmentTable {
  private final StrokeFigures figures;
  private final SegmentsMaker maker;
  private final @Nullable SegmentsFromStart[] rows;
  private final Map<Capability, SustainedRates> sustained = new HashMap<>();

  /** The lowest and the highest sustained rate at the strokes made with one technique. */
  record SustainedRates(int leastMilli, int mostMilli) {
    private SustainedRates with(SustainedRates other) {
      return new SustainedRates(
          Math.min(leastMilli, other.leastMilli), Math.max(mostMilli, other.mostMilli));
    }
  }

  /**
   * @param wholeLine whether turns are stretches of this line; in a hocket they are not
   */
  SegmentTable(Line line, PlayerWithinMargin player, int way, Weights weights, boolean wholeLine) {
    figures = new StrokeFigures(line, player, way, weights);
    maker = new SegmentsMaker(figures, wholeLine);
    rows = new SegmentsFromStart[line.count()];
    for (int j = 0; j < line.count(); j++) {
      int rate = demand().sustainedMilli(j);
      sustained.merge(demand().capability(j), new SustainedRates(rate, rate), SustainedRates::with);
    }
  }

  Line line() {
    return figures.line();
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

  /** The sustained rates by what the player can do with the techniques used on the line. */
  Map<Capability, SustainedRates> sustained() {
    return sustained;
  }

  SegmentsFromStart row(int first) {
    SegmentsFromStart row = rows[first];
    if (row == null) {
      row = maker.row(first);
      rows[first] = row;
    }
    return row;
  }
}
