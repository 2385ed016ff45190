package stafette.picture.ink;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

/** Between our paths and Java's shapes. */
final class Outlines {
  private Outlines() {}

  static void trace(Shape shape, Path.Tracer tracer) {
    double[] at = new double[6];
    double x = 0;
    double y = 0;
    for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
      switch (i.currentSegment(at)) {
        case PathIterator.SEG_MOVETO -> tracer.move(at[0], at[1]);
        case PathIterator.SEG_LINETO -> tracer.line(at[0], at[1]);
        case PathIterator.SEG_QUADTO -> quadratic(tracer, x, y, at);
        case PathIterator.SEG_CUBICTO -> tracer.curve(at[0], at[1], at[2], at[3], at[4], at[5]);
        default -> tracer.close();
      }
      int end = i.currentSegment(at) == PathIterator.SEG_QUADTO ? 2 : 0;
      x = at[end];
      y = at[end + 1];
    }
  }

  /** The cubic that runs the same way as a quadratic curve. */
  private static void quadratic(Path.Tracer tracer, double x, double y, double[] at) {
    tracer.curve(
        x + (at[0] - x) * 2 / 3,
        y + (at[1] - y) * 2 / 3,
        at[2] + (at[0] - at[2]) * 2 / 3,
        at[3] + (at[1] - at[3]) * 2 / 3,
        at[2],
        at[3]);
  }

  static Shape shape(Path path) {
    Path2D shape = new Path2D.Double(Path2D.WIND_NON_ZERO);
    path.trace(
        new Path.Tracer() {
          @Override
          public void move(double x, double y) {
            shape.moveTo(x, y);
          }

          @Override
          public void line(double x, double y) {
            shape.lineTo(x, y);
          }

          @Override
          public void curve(double x1, double y1, double x2, double y2, double x, double y) {
            shape.curveTo(x1, y1, x2, y2, x, y);
          }

          @Override
          public void close() {
            shape.closePath();
          }
        });
    return shape;
  }
}
