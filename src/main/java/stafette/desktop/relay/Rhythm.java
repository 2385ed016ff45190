package stafette.desktop.relay;

import javafx.scene.canvas.GraphicsContext;
import stafette.picture.Row;
import stafette.score.Line;
import stafette.score.Stroke;

/**
 * The line's own rhythm under the bars: a tick for each stroke, longer the stronger its place in
 * the bar; a bow over what is slurred. Where strokes are closer than pixels they become a band.
 */
final class Rhythm {
  private static final double FOOT = LaneScale.RULER - 5;
  private static final double[] HEIGHT = {17, 13, 9, 6};
  private static final double LEAST_APART = 2.2;

  private final Line line;
  private final Row row;
  private final GraphicsContext canvas;
  private final Inks inks;

  Rhythm(Line line, Row row, GraphicsContext canvas, Inks inks) {
    this.line = line;
    this.row = row;
    this.canvas = canvas;
    this.inks = inks;
  }

  void paint() {
    canvas.setStroke(inks.full());
    canvas.setLineWidth(1.1);
    double drawn = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < line.count(); j++) {
      Stroke stroke = line.stroke(j);
      if (row.span().contains(stroke.onset())) {
        double x = row.x(stroke.onset());
        double height = HEIGHT[line.rank(j).ordinal()];
        if (x - drawn >= LEAST_APART || line.rank(j).ordinal() <= 1) {
          canvas.strokeLine(x, FOOT - height, x, FOOT);
          drawn = x;
        }
      }
    }
    canvas.setStroke(inks.faint());
    canvas.strokeLine(row.left(), FOOT + 0.5, row.right(), FOOT + 0.5);
  }
}
