package stafette.desktop.relay;

import java.util.OptionalInt;

/**
 * Where lanes stand on the screen: one for each player of the brief, below the ruler, scrolled.
 *
 * @param count how many
 * @param zoom by how much somebody wants them higher than usual
 * @param scrolled pixels of lanes above the view
 */
record LaneScale(int count, double zoom, LaneShape shape, double scrolled, Viewport port) {
  static final double LEAST_ZOOM = 0.65;
  static final double MOST_ZOOM = 2.5;

  LaneScale {
    zoom = Math.max(LEAST_ZOOM, Math.min(MOST_ZOOM, zoom));
    double most = Math.max(0, count * shape.height() - (port.height() - port.ruler()));
    scrolled = Math.max(0, Math.min(most, scrolled));
  }

  /** Lanes without notes. */
  static LaneScale plain(int count, Viewport port) {
    return new LaneScale(count, 1, LaneShape.plain(count, 1, port), 0, port);
  }

  double laneHeight() {
    return shape.height();
  }

  double top(int lane) {
    return port.ruler() + lane * shape.height() - scrolled;
  }

  /** The middle of the ribbon; below it is room for curves. */
  double middle(int lane) {
    return top(lane) + shape.middle();
  }

  /** Half the ribbon's height. */
  double half() {
    return shape.half();
  }

  double height() {
    return port.height();
  }

  double bottom() {
    return top(count);
  }

  /** The lane at a place, if it is one. */
  OptionalInt laneAt(double y) {
    int lane = (int) Math.floor((y - port.ruler() + scrolled) / shape.height());
    return y < port.ruler() || lane < 0 || lane >= count
        ? OptionalInt.empty()
        : OptionalInt.of(lane);
  }

  LaneScale scrolledTo(double pixels) {
    return new LaneScale(count, zoom, shape, pixels, port);
  }

  LaneScale zoomedTo(double newZoom) {
    return new LaneScale(count, newZoom, shape, scrolled, port);
  }

  /** Other lanes in another view; the same place stays at the top. */
  LaneScale of(int newCount, LaneShape other, Viewport newPort) {
    double kept = scrolled * other.height() / shape.height();
    return new LaneScale(newCount, zoom, other, kept, newPort);
  }

  /** How much of the lanes is seen, at most 1. */
  double share() {
    return Math.min(1, Math.max(0, port.height() - port.ruler()) / (count * shape.height()));
  }
}
