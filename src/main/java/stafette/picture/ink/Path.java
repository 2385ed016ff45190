package stafette.picture.ink;

import java.util.ArrayList;
import java.util.List;

/** An outline of straight and curved lines, in points, y downward. */
public final class Path {
  private final List<PathStep> steps;

  private Path(List<PathStep> steps) {
    this.steps = List.copyOf(steps);
  }

  private interface PathStep {
    void trace(Tracer tracer);
  }

  /** Whoever follows a path. */
  public interface Tracer {
    void move(double x, double y);

    void line(double x, double y);

    /** A cubic curve by its two control points and its end. */
    void curve(double x1, double y1, double x2, double y2, double x, double y);

    void close();
  }

  public void trace(Tracer tracer) {
    steps.forEach(step -> step.trace(tracer));
  }

  /** A straight line. */
  public static Path line(double x1, double y1, double x2, double y2) {
    return new Pen().move(x1, y1).line(x2, y2).path();
  }

  public static Path box(Box box) {
    return new Pen()
        .move(box.left(), box.top())
        .line(box.right(), box.top())
        .line(box.right(), box.bottom())
        .line(box.left(), box.bottom())
        .close()
        .path();
  }

  /** The box round all its points, control points included. */
  public Box bounds() {
    PathReach reach = new PathReach();
    trace(reach);
    return reach.box();
  }

  /** Draws a path. */
  public static final class Pen {
    private final List<PathStep> steps = new ArrayList<>();

    public Pen move(double x, double y) {
      steps.add(tracer -> tracer.move(x, y));
      return this;
    }

    public Pen line(double x, double y) {
      steps.add(tracer -> tracer.line(x, y));
      return this;
    }

    public Pen curve(double x1, double y1, double x2, double y2, double x, double y) {
      steps.add(tracer -> tracer.curve(x1, y1, x2, y2, x, y));
      return this;
    }

    public Pen close() {
      steps.add(Tracer::close);
      return this;
    }

    public boolean isEmpty() {
      return steps.isEmpty();
    }

    public Path path() {
      return new Path(steps);
    }
  }

  private static final class PathReach implements Tracer {
    private double left = Double.POSITIVE_INFINITY;
    private double top = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double bottom = Double.NEGATIVE_INFINITY;

    @Override
    public void move(double x, double y) {
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }

    @Override
    public void line(double x, double y) {
      move(x, y);
    }

    @Override
    public void curve(double x1, double y1, double x2, double y2, double x, double y) {
      move(x1, y1);
      move(x2, y2);
      move(x, y);
    }

    @Override
    public void close() {}

    private Box box() {
      return left > right ? new Box(0, 0, 0, 0) : new Box(left, top, right, bottom);
    }
  }
}
