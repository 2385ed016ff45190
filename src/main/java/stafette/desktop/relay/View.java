package stafette.desktop.relay;

import stafette.score.Line;
import stafette.time.BarBeat;
import stafette.time.Span;

/** What is seen at a moment: a plan, and where it stands on the screen. */
record View(ShownPlan shown, TimeScale time, LaneScale lanes) {
  Line line(int relay) {
    return shown.plan().brief().line(relay);
  }

  /** "bar 12, beat 1" of a stroke. */
  BarBeat place(int relay, int stroke) {
    Line line = line(relay);
    return line.bars().nameOf(line.stroke(stroke).onset());
  }

  boolean sees(Span span) {
    return time.x(span.end()) > 0 && time.x(span.start()) < time.width();
  }

  View resized(double width, double height) {
    return new View(shown, time.resized(width), lanes.resized(height));
  }

  View with(TimeScale other) {
    return new View(shown, other, lanes);
  }

  View with(LaneScale other) {
    return new View(shown, time, other);
  }
}
