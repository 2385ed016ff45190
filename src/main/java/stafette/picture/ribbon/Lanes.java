package stafette.picture.ribbon;

import java.util.List;

/**
 * The lanes of a row.
 *
 * @param lanes from top to bottom
 * @param half half the ribbon's height
 * @param top where bar lines begin
 * @param height of the whole row
 * @param signs room for clef, key and time before the first bar line, 0 where no music is written
 * @param staffHeight from the first line of a staff to the last
 */
record Lanes(
    List<Lane> lanes, double half, double top, double height, double signs, double staffHeight) {
  /** Room above the lanes for tempi and bar numbers. */
  static final double RULER = 25;

  Lanes {
    lanes = List.copyOf(lanes);
  }

  boolean haveMusic() {
    return signs > 0;
  }
}
