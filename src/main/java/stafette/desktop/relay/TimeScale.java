package stafette.desktop.relay;

import java.util.List;
import stafette.picture.Row;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;

/**
 * Where musical time stands on the screen: evenly, so many pixels to a quarter note, scrolled.
 *
 * @param start quarters from the beginning of the score to the first bar shown
 * @param end quarters to the end of the last
 * @param pixelsPerQuarter the zoom
 * @param scrolled quarters between {@code start} and the left edge of the view
 * @param width of the view in pixels
 */
record TimeScale(double start, double end, double pixelsPerQuarter, double scrolled, double width) {
  static final double MOST_PIXELS_PER_QUARTER = 640;

  /** Room left and right of the music, enough for a clef and an accidental. */
  static final double MARGIN = 44;

  TimeScale {
    double least = leastPixelsPerQuarter(start, end, width);
    pixelsPerQuarter =
        Math.max(least, Math.min(Math.max(least, MOST_PIXELS_PER_QUARTER), pixelsPerQuarter));
    double visible = Math.max(0, width - 2 * MARGIN) / pixelsPerQuarter;
    scrolled = Math.max(0, Math.min(end - start - visible, scrolled));
  }

  /** The whole of some bars within a view. */
  static TimeScale whole(List<Bar> bars, double width) {
    double start = quarters(bars.get(0).span().start());
    double end = quarters(bars.get(bars.size() - 1).span().end());
    return new TimeScale(start, end, 0, 0, width);
  }

  private static double leastPixelsPerQuarter(double start, double end, double width) {
    return Math.max(1, width - 2 * MARGIN) / (end - start);
  }

  private static double quarters(Position position) {
    return position.quarters().toDouble();
  }

  double x(Position position) {
    return x(quarters(position));
  }

  double x(double quarters) {
    return MARGIN + (quarters - start - scrolled) * pixelsPerQuarter;
  }

  /** The time at a place on the screen, in quarters from the beginning of the score. */
  double quartersAt(double x) {
    return start + scrolled + (x - MARGIN) / pixelsPerQuarter;
  }

  /** Zoomed by a factor; the time at a place of the screen stays where it is. */
  TimeScale zoomed(double factor, double aroundX) {
    double kept = quartersAt(aroundX);
    TimeScale zoomed = new TimeScale(start, end, pixelsPerQuarter * factor, scrolled, width);
    return zoomed.scrolledTo(kept - start - (aroundX - MARGIN) / zoomed.pixelsPerQuarter);
  }

  TimeScale scrolledTo(double quarters) {
    return new TimeScale(start, end, pixelsPerQuarter, quarters, width);
  }

  TimeScale scrolledBy(double pixels) {
    return scrolledTo(scrolled + pixels / pixelsPerQuarter);
  }

  TimeScale resized(double newWidth) {
    return new TimeScale(start, end, pixelsPerQuarter, scrolled, newWidth);
  }

  /** Scrolled as little as it takes to see a stretch; its beginning, if it is too long. */
  TimeScale showing(Span span) {
    double left = x(span.start());
    double right = x(span.end());
    if (left < MARGIN || right - left > width - 2 * MARGIN) {
      return scrolledBy(left - MARGIN);
    }
    return right > width - MARGIN ? scrolledBy(right - width + MARGIN) : this;
  }

  /** How much of the whole is seen, at most 1. */
  double share() {
    return Math.min(1, (width - 2 * MARGIN) / pixelsPerQuarter / (end - start));
  }

  /** The bars of which something is seen, placed. */
  Row row(List<Bar> bars) {
    double from = quartersAt(0);
    double to = quartersAt(width);
    List<Bar> seen =
        bars.stream()
            .filter(bar -> quarters(bar.span().end()) > from && quarters(bar.span().start()) < to)
            .toList();
    List<Bar> shown = seen.isEmpty() ? bars.subList(0, 1) : seen;
    return new Row(shown, x(shown.get(0).span().start()), pixelsPerQuarter, 0);
  }
}
