package stafette.desktop.relay;

import java.util.OptionalInt;

/**
 * Where lanes stand on the screen: one for each player of the brief, below the ruler, scrolled.
 *
 * @param count how many
 * @param laneHeight in pixels
 * @param scrolled pixels of lanes above the view
 * @param height of the view with the ruler
 */
record LaneScale(int count, double laneHeight, double scrolled, double height) {
  /** Room above the lanes for bar numbers, tempi and the rhythm of the line. */
  static final double RULER = 58;

  /** Half the ribbon's height, as a share of the lane's. */
  private static final double HALF_SHARE = 0.15;

  private static final double MOST_HALF = 14;

  /** Lanes as high as this have room for a staff. */
  static final double NOTED_LANE = 164;

  /** How much larger than on paper notes are drawn. */
  static final double MUSIC = 1.5;

  private static final double NOTED_MIDDLE = 32;

  /** How high lanes are where there is no room to spare. */
  static final double PLAIN_LANE = 76;

  private static final double MOST_PLAIN = 112;

  LaneScale {
    double most = Math.max(0, count * laneHeight - (height - RULER));
    scrolled = Math.max(0, Math.min(most, scrolled));
  }

  /** Lanes that share what room there is, within reason. */
  static LaneScale plain(int count, double scrolled, double height) {
    double share = (height - RULER) / count;
    double laneHeight = Math.max(PLAIN_LANE, Math.min(MOST_PLAIN, share));
    return new LaneScale(count, laneHeight, scrolled, height);
  }

  double top(int lane) {
    return RULER + lane * laneHeight - scrolled;
  }

  /** The middle of the ribbon; below it is room for curves. */
  double middle(int lane) {
    return top(lane) + (isNoted() ? NOTED_MIDDLE : laneHeight * 0.4);
  }

  /** Whether a lane has room for a staff. */
  boolean isNoted() {
    return laneHeight >= NOTED_LANE;
  }

  double half() {
    return Math.min(MOST_HALF, laneHeight * HALF_SHARE);
  }

  double bottom() {
    return top(count);
  }

  /** The lane at a place, if it is one. */
  OptionalInt laneAt(double y) {
    int lane = (int) Math.floor((y - RULER + scrolled) / laneHeight);
    return y < RULER || lane < 0 || lane >= count ? OptionalInt.empty() : OptionalInt.of(lane);
  }

  LaneScale scrolledTo(double pixels) {
    return new LaneScale(count, laneHeight, pixels, height);
  }

  LaneScale resized(double newHeight) {
    return isNoted()
        ? new LaneScale(count, laneHeight, scrolled, newHeight)
        : plain(count, scrolled, newHeight);
  }

  LaneScale plain() {
    return plain(count, scrolled, height);
  }

  LaneScale noted() {
    return new LaneScale(count, NOTED_LANE, scrolled, height);
  }

  /** How much of the lanes is seen, at most 1. */
  double share() {
    return Math.min(1, Math.max(0, height - RULER) / (count * laneHeight));
  }
}
