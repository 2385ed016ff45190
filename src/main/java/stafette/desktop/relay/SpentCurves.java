package stafette.desktop.relay;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import stafette.check.SpentReadings;
import stafette.picture.notes.BarRow;

/**
 * How spent a player is, under the ribbon: tiredness a full line, air a dashed one, from fresh at
 * the bottom to spent at the top of a strip whose upper edge is the limit.
 */
final class SpentCurves {
  private static final double SHARE = 0.5;
  private static final double MOST = 26;
  private static final double FOOT = 5;

  private final ShownPlan shown;
  private final TimeScale time;
  private final BarRow row;
  private final LaneScale lanes;
  private final GraphicsContext canvas;
  private final Inks inks;

  SpentCurves(
      ShownPlan shown,
      TimeScale time,
      BarRow row,
      LaneScale lanes,
      GraphicsContext canvas,
      Inks inks) {
    this.shown = shown;
    this.time = time;
    this.row = row;
    this.lanes = lanes;
    this.canvas = canvas;
    this.inks = inks;
  }

  void paint(int lane) {
    SpentReadings reserves = shown.reserves().get(lane);
    double foot = lanes.top(lane) + lanes.laneHeight() - lanes.port().px(FOOT);
    double high =
        Math.min(
            lanes.port().px(MOST) * Math.max(1, lanes.zoom()),
            (lanes.laneHeight() - lanes.shape().middle()) * SHARE);
    if (reserves.tiredness().isEmpty() && reserves.breath().isEmpty()) {
      return;
    }
    canvas.setLineWidth(0.6);
    canvas.setStroke(inks.faint());
    canvas.strokeLine(row.left(), foot, row.right(), foot);
    canvas.setLineDashes(1, 3);
    canvas.strokeLine(row.left(), foot - high, row.right(), foot - high);
    canvas.setLineWidth(1.1);
    canvas.setStroke(inks.soft());
    canvas.setLineDashes(4, 3);
    curve(reserves.breath(), foot, high);
    canvas.setLineDashes();
    canvas.setStroke(inks.full());
    curve(reserves.tiredness(), foot, high);
  }

  private void curve(List<SpentReadings.ReserveReading> readings, double foot, double high) {
    if (readings.isEmpty()) {
      return;
    }
    canvas.beginPath();
    for (int i = 0; i < readings.size(); i++) {
      double x = time.x(shown.clock().quarters(readings.get(i).micros()));
      double y = foot - high * Math.min(1.15, readings.get(i).spent());
      if (i == 0) {
        canvas.moveTo(x, y);
      } else {
        canvas.lineTo(x, y);
      }
    }
    canvas.stroke();
  }
}
