package stafette.picture;

import java.util.List;

/**
 * The lanes of a row.
 *
 * @param lanes from top to bottom
 * @param half half the ribbon's height
 * @param top where bar lines begin
 * @param height of the whole row
 */
record Lanes(List<Lane> lanes, double half, double top, double height) {
  /** Room above the lanes for tempi and bar numbers. */
  static final double RULER = 23;

  Lanes {
    lanes = List.copyOf(lanes);
  }

  double first() {
    return lanes.get(0).y();
  }

  double last() {
    return lanes.get(lanes.size() - 1).y();
  }
}
