package stafette.picture.ribbon;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import stafette.picture.ink.Path;

/**
 * A piece of the ribbon in one lane: five strands side by side that thicken with strain until they
 * close. Where it begins or ends it tapers, or bends towards the lane that it comes from or goes
 * to.
 *
 * @param y the middle of the lane
 * @param half half the ribbon's height
 * @param knots from left to right, at least two; darkness runs straight from one to the next
 */
record Ribbon(double y, double half, List<Knot> knots, RibbonEnd start, RibbonEnd end) {
  /** Strands overlap their neighbours by a little, so that no light shows between. */
  static final double SOLID = 1.08;

  private static final int STRANDS = 5;
  private static final double TIP_POINTS = 11;
  private static final double TIP_SHARE = 0.24;
  private static final double BEND_POINTS = 7;
  private static final double[] CURVE = {0, 0.25, 0.5, 0.7, 0.85, 0.95, 1};

  Ribbon {
    knots = List.copyOf(knots);
  }

  /**
   * How dark it is at a place.
   *
   * @param darkness the share of it that is ink, from 0 to {@link #SOLID}
   */
  record Knot(double x, double darkness) {}

  /** How a ribbon begins or ends. */
  enum RibbonEnd {
    /** To a point. */
    TIP,
    /** Towards a lane above. */
    UP,
    /** Towards a lane below. */
    DOWN,
    /** Goes on in the row before or after. */
    OPEN
  }

  /**
   * How dark strain is drawn: five thin strands up to 70 % of a limit, nearly closed at 100 %,
   * closed beyond.
   */
  static double darkness(double strain) {
    if (strain > 1 + 1e-9) {
      return SOLID;
    }
    return strain <= 0.7 ? 0.16 + 0.12 * strain / 0.7 : 0.28 + 0.6 * (strain - 0.7) / 0.3;
  }

  double left() {
    return knots.get(0).x();
  }

  double right() {
    return knots.get(knots.size() - 1).x();
  }

  Path path() {
    double[] xs = places();
    Path.Pen pen = new Path.Pen();
    for (int strand = 0; strand < STRANDS; strand++) {
      for (int i = 0; i < xs.length; i++) {
        double edge = edge(xs[i], strand, -1);
        pen = i == 0 ? pen.move(xs[i], edge) : pen.line(xs[i], edge);
      }
      for (int i = xs.length - 1; i >= 0; i--) {
        pen.line(xs[i], edge(xs[i], strand, 1));
      }
      pen.close();
    }
    return pen.path();
  }

  /** Where the outline turns: at knots, and along the curves of both ends. */
  private double[] places() {
    TreeSet<Double> xs = new TreeSet<>();
    knots.forEach(knot -> xs.add(knot.x()));
    for (double share : CURVE) {
      if (start != RibbonEnd.OPEN) {
        xs.add(left() + share * reach(start));
      }
      if (end != RibbonEnd.OPEN) {
        xs.add(right() - share * reach(end));
      }
    }
    return xs.stream().mapToDouble(x -> x).toArray();
  }

  private double edge(double x, int strand, int side) {
    double top = top(x);
    double height = bottom(x) - top;
    double middle = top + height * (strand + 0.5) / STRANDS;
    return middle + side * darknessAt(x) * height / STRANDS / 2;
  }

  private double top(double x) {
    double down =
        Math.max(bent(start, RibbonEnd.DOWN, x - left()), bent(end, RibbonEnd.DOWN, right() - x));
    return y - half * open(x) + 2 * half * down;
  }

  private double bottom(double x) {
    double up =
        Math.max(bent(start, RibbonEnd.UP, x - left()), bent(end, RibbonEnd.UP, right() - x));
    return y + half * open(x) - 2 * half * up;
  }

  /** What share of its height a tip leaves. */
  private double open(double x) {
    double share = 1;
    if (start == RibbonEnd.TIP) {
      share = Math.min(share, pointed((x - left()) / reach(start)));
    }
    if (end == RibbonEnd.TIP) {
      share = Math.min(share, pointed((right() - x) / reach(end)));
    }
    return share;
  }

  private static double pointed(double way) {
    double left = 1 - Math.min(1, Math.max(0, way));
    return 1 - left * left;
  }

  /** What share of its height a bend takes away, on a quarter of an ellipse. */
  private double bent(RibbonEnd present, RibbonEnd wanted, double way) {
    if (present != wanted) {
      return 0;
    }
    double in = 1 - Math.min(1, Math.max(0, way / reach(present)));
    return 1 - Math.sqrt(Math.max(0, 1 - in * in));
  }

  private double reach(RibbonEnd kind) {
    double most = kind == RibbonEnd.TIP ? TIP_POINTS : BEND_POINTS;
    double share = kind == RibbonEnd.TIP ? TIP_SHARE : 0.5;
    return Math.max(0.01, Math.min(most, (right() - left()) * share));
  }

  private double darknessAt(double x) {
    int next = 1;
    while (next < knots.size() - 1 && knots.get(next).x() < x) {
      next++;
    }
    Knot from = knots.get(next - 1);
    Knot to = knots.get(next);
    double way = to.x() - from.x();
    double share = way <= 0 ? 1 : Math.min(1, Math.max(0, (x - from.x()) / way));
    return from.darkness() + share * (to.darkness() - from.darkness());
  }

  /** The same knots without those that change nothing to speak of. */
  static List<Knot> thinned(List<Knot> knots) {
    double enough = 0.025;
    List<Knot> kept = new ArrayList<>();
    for (int i = 0; i < knots.size(); i++) {
      boolean edge = i == 0 || i == knots.size() - 1;
      Knot knot = knots.get(i);
      if (edge
          || Math.abs(knot.darkness() - kept.get(kept.size() - 1).darkness()) > enough
          || Math.abs(knots.get(i + 1).darkness() - knot.darkness()) > enough) {
        kept.add(knot);
      }
    }
    return kept;
  }
}
