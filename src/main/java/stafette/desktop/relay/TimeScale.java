package stafette.desktop.relay;

import java.util.List;
import stafette.picture.notes.BarRow;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;

/**
 * Where musical time stands on the screen: evenly, so many pixels to a quarter note, scrolled.
 *
 * @param start quarters from the beginning of the score to the first bar shown
 * @param end quarters to the end of the last
 * @param pixelsPerQuarter the zoom
 * @param scrolled quarters between {@code start} and where the view begins
 * @param lead room left of the music in pixels, for a clef and a key signature
 */
record TimeScale(
    double start,
    double end,
    double pixelsPerQuarter,
    double scrolled,
    double lead,
    Viewport port) {
  private static final double MOST_PIXELS_PER_QUARTER = 640;

  /** The least room left of the music, and what is left on its right. */
  static final double MARGIN = 44;

  private static final double MAGNET = 5;
  private static final double HAIR = 1e-9;

  TimeScale {
    lead = Math.max(lead, port.px(MARGIN));
    double room = room(lead, port);
    double least = room / (end - start);
    double most = Math.max(least, port.px(MOST_PIXELS_PER_QUARTER));
    pixelsPerQuarter = Math.max(least, Math.min(most, pixelsPerQuarter));
    scrolled = Math.max(0, Math.min(end - start - room / pixelsPerQuarter, scrolled));
  }

  private static double room(double lead, Viewport port) {
    return Math.max(1, port.width() - lead - port.px(MARGIN));
  }

  /** The whole of some bars within a view. */
  static TimeScale whole(List<Bar> bars, double lead, Viewport port) {
    double start = quarters(bars.get(0).span().start());
    double end = quarters(bars.get(bars.size() - 1).span().end());
    return new TimeScale(start, end, 0, 0, lead, port);
  }

  TimeScale whole() {
    return new TimeScale(start, end, 0, 0, lead, port);
  }

  private static double quarters(Position position) {
    return position.quarters().toDouble();
  }

  double x(Position position) {
    return x(quarters(position));
  }

  double x(double quarters) {
    return lead + (quarters - start - scrolled) * pixelsPerQuarter;
  }

  /** The time at a place on the screen, in quarters from the beginning of the score. */
  double quartersAt(double x) {
    return start + scrolled + (x - lead) / pixelsPerQuarter;
  }

  /** How near to a beat a place on the screen is taken for it. */
  double magnetQuarters() {
    return port.px(MAGNET) / pixelsPerQuarter;
  }

  double width() {
    return port.width();
  }

  /** Zoomed by a factor; the time at a place of the screen stays where it is. */
  TimeScale zoomed(double factor, double aroundX) {
    double kept = quartersAt(aroundX);
    TimeScale zoomed = new TimeScale(start, end, pixelsPerQuarter * factor, scrolled, lead, port);
    return zoomed.scrolledTo(kept - start - (aroundX - lead) / zoomed.pixelsPerQuarter);
  }

  TimeScale scrolledTo(double quarters) {
    return new TimeScale(start, end, pixelsPerQuarter, quarters, lead, port);
  }

  TimeScale scrolledBy(double pixels) {
    return scrolledTo(scrolled + pixels / pixelsPerQuarter);
  }

  /** In another view, or with other room on the left; where all was seen, all still is. */
  TimeScale within(double newLead, Viewport other) {
    double zoom = share() >= 1 ? 0 : pixelsPerQuarter;
    return new TimeScale(start, end, zoom, scrolled, newLead, other);
  }

  /** Scrolled as little as it takes to see a stretch; its beginning, if it is too long. */
  TimeScale showing(Span span) {
    double left = x(span.start());
    double right = x(span.end());
    if (left < lead || right - left > room(lead, port)) {
      return scrolledBy(left - lead);
    }
    double edge = lead + room(lead, port);
    return right > edge ? scrolledBy(right - edge) : this;
  }

  /** How much of the whole is seen, at most 1. */
  double share() {
    double share = room(lead, port) / pixelsPerQuarter / (end - start);
    return share > 1 - HAIR ? 1 : share;
  }

  /** The bars of which something is seen, placed. */
  BarRow row(List<Bar> bars) {
    double from = quartersAt(0);
    double to = quartersAt(width());
    List<Bar> seen =
        bars.stream()
            .filter(bar -> quarters(bar.span().end()) > from && quarters(bar.span().start()) < to)
            .toList();
    List<Bar> shown = seen.isEmpty() ? bars.subList(0, 1) : seen;
    return new BarRow(shown, x(shown.get(0).span().start()), pixelsPerQuarter, 0);
  }
}
