package stafette.picture.ink;

/** An upright rectangle, in points, y downward. */
public record Box(double left, double top, double right, double bottom) {
  public double width() {
    return right - left;
  }

  public double height() {
    return bottom - top;
  }

  public Box grownBy(double margin) {
    return new Box(left - margin, top - margin, right + margin, bottom + margin);
  }

  /** The least box that holds both. */
  public Box with(Box other) {
    return new Box(
        Math.min(left, other.left),
        Math.min(top, other.top),
        Math.max(right, other.right),
        Math.max(bottom, other.bottom));
  }

  /** Whether the two share more than an edge. */
  public boolean overlaps(Box other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  /** Whether the other lies inside, edges included, give or take a thousandth of a point. */
  public boolean holds(Box other) {
    double hair = 0.001;
    return other.left >= left - hair
        && other.top >= top - hair
        && other.right <= right + hair
        && other.bottom <= bottom + hair;
  }
}
