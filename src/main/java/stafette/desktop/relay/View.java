package stafette.desktop.relay;

import stafette.desktop.texts.Texts;
import stafette.score.Line;
import stafette.time.Span;

/** What is seen at a moment: a plan, and where it stands on the screen. */
record View(ShownPlan shown, TimeScale time, LaneScale lanes) {
  /** All of a plan, in lanes as they usually are; of a line as written, so much as is readable. */
  static View first(ShownPlan shown, Viewport port) {
    return new View(shown, shown.firstTime(port), LaneScale.plain(shown.lanes(), port)).laid(port);
  }

  /** Another plan; where the view stands is kept while the same bars are shown for the same. */
  View showing(ShownPlan other) {
    Viewport port = time.port();
    boolean alike = shown.bars().equals(other.bars()) && shown.asWritten() == other.asWritten();
    TimeScale kept = alike ? time.within(other.lead(port), port) : other.firstTime(port);
    return new View(other.after(shown), kept, lanes).laid(port);
  }

  Line line(int relay) {
    return shown.plan().brief().line(relay);
  }

  /** "bar 12, beat 1" of a stroke. */
  String place(Texts texts, int relay, int stroke) {
    Line line = line(relay);
    return texts.say(line.bars().nameOf(line.stroke(stroke).onset()));
  }

  boolean sees(Span span) {
    return time.x(span.end()) > 0 && time.x(span.start()) < time.width();
  }

  View within(Viewport port) {
    return port.equals(time.port())
        ? this
        : new View(shown, time.within(shown.lead(port), port), lanes).laid(port);
  }

  View with(TimeScale other) {
    return new View(shown, other, lanes).laid(other.port());
  }

  View scrolledDownTo(double pixels) {
    return new View(shown, time, lanes.scrolledTo(pixels));
  }

  /** With higher or lower lanes. */
  View lanesZoomed(double factor) {
    return lanesZoomedTo(lanes.zoom() * factor);
  }

  View lanesZoomedTo(double zoom) {
    return new View(shown, time, lanes.zoomedTo(zoom)).laid(time.port());
  }

  /** Lanes grow where there is room in time for notes. */
  private View laid(Viewport port) {
    double zoom = lanes.zoom();
    double music = LaneShape.music(shown.roomForMusic(time), zoom, port);
    LaneShape shape =
        music > 0
            ? LaneShape.noted(shown.noteInk(), music, zoom, port)
            : LaneShape.plain(shown.lanes(), zoom, port);
    return new View(shown, time, lanes.of(shown.lanes(), shape, port));
  }
}
