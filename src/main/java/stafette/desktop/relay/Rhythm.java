package stafette.desktop.relay;

import javafx.scene.canvas.GraphicsContext;
import stafette.score.Line;

/**
 * The line's own rhythm under the bars: a tick for each stroke, longer the stronger its place in
 * the bar. Where strokes are closer than pixels only beats are left.
 */
final class Rhythm {
  private static final double FOOT = 5;
  private static final double[] HEIGHT = {17, 13, 9, 6};
  private static final double LEAST_APART = 2.2;
  private static final int BEAT = 1;

  private final double[] quarters;
  private final int[] ranks;

  Rhythm(Line line) {
    quarters =
        line.strokes().stream()
            .mapToDouble(stroke -> stroke.onset().quarters().toDouble())
            .toArray();
    ranks = new int[line.count()];
    for (int j = 0; j < ranks.length; j++) {
      ranks[j] = line.rank(j).ordinal();
    }
  }

  void paint(TimeScale time, GraphicsContext canvas, Inks inks) {
    canvas.setStroke(inks.full());
    canvas.setLineWidth(1.1);
    Viewport port = time.port();
    double foot = port.ruler() - port.px(FOOT);
    double drawn = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < quarters.length; j++) {
      double x = time.x(quarters[j]);
      boolean seen = x >= 0 && x <= time.width();
      if (seen && (x - drawn >= LEAST_APART || ranks[j] <= BEAT)) {
        canvas.strokeLine(x, foot - port.px(HEIGHT[ranks[j]]), x, foot);
        drawn = x;
      }
    }
    canvas.setStroke(inks.faint());
    double from = Math.max(0, time.x(time.start()));
    canvas.strokeLine(from, foot + 0.5, Math.min(time.width(), time.x(time.end())), foot + 0.5);
  }
}
