package stafette.desktop.relay;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.scene.canvas.GraphicsContext;
import stafette.picture.ink.Box;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.notes.BarRow;
import stafette.picture.ribbon.RelayPieces;
import stafette.plan.GivenStretch;
import stafette.plan.Segment;
import stafette.time.Span;

/** Draws what is seen of a relay: lanes, what the score gives, bridges, ribbons, curves, music. */
final class RelayPainter {
  private static final double LABEL_SIZE = 9.5;
  private static final double LABEL_INDENT = 12;
  private static final double LABEL_AIR = 7;
  private static final double HATCHED_BEYOND = 20;
  private static final double MOST_HATCHED = 11;
  private static final double LEAST_APART = 5;

  private final View view;
  private final ShownPlan shown;
  private final TimeScale time;
  private final LaneScale lanes;
  private final Viewport port;
  private final GraphicsContext canvas;
  private final Inks inks;
  private final BarRow row;
  private final CanvasInk hand;

  RelayPainter(View view, GraphicsContext canvas, Inks inks) {
    this.view = view;
    shown = view.shown();
    time = view.time();
    lanes = view.lanes();
    port = time.port();
    this.canvas = canvas;
    this.inks = inks;
    row = time.row(shown.bars());
    hand = new CanvasInk(canvas, inks);
  }

  void paint() {
    canvas.setFill(inks.paper());
    canvas.fillRect(0, 0, port.width(), port.height());
    BeatGrid grid = new BeatGrid(shown, row, lanes, canvas, inks);
    canvas.save();
    canvas.beginPath();
    canvas.rect(0, port.ruler(), port.width(), port.height() - port.ruler());
    canvas.clip();
    paintLanes(grid);
    canvas.restore();
    grid.ruler();
    shown.rhythm().paint(time, canvas, inks);
  }

  private void paintLanes(BeatGrid grid) {
    boolean noted = lanes.shape().isNoted();
    visibleLanes().forEach(this::paintThread);
    StaffLanePainter music = new StaffLanePainter(view, row, canvas, inks);
    if (noted) {
      seen().forEach(music::ground);
    }
    grid.lines();
    visibleLanes().forEach(this::paintGiven);
    Optional<List<Box>> ink =
        noted ? Optional.of(visibleLanes().boxed().flatMap(music::ink).toList()) : Optional.empty();
    shown.handoffs().forEach(handoff -> show(ways(handoff, ink)));
    seen().forEach(noted ? music::rails : this::paintRibbon);
    if (noted) {
      visibleLanes().forEach(music::notes);
    }
    seen().forEach(this::paintLabel);
    SpentCurves curves = new SpentCurves(shown, time, row, lanes, canvas, inks);
    visibleLanes().forEach(curves::paint);
    new Clamps(view, canvas, inks).paint();
  }

  private IntStream visibleLanes() {
    return IntStream.range(0, lanes.count())
        .filter(
            lane ->
                lanes.top(lane) < port.height()
                    && lanes.top(lane) + lanes.laneHeight() > port.ruler());
  }

  /** The segments of which something is seen. */
  private IntStream seen() {
    return IntStream.range(0, shown.segments().size())
        .filter(segment -> shown.pieces().segmentSpan(segment).overlaps(row.span()));
  }

  private void paintThread(int lane) {
    double y = lanes.middle(lane);
    canvas.setStroke(inks.faint());
    canvas.setLineWidth(0.7);
    canvas.strokeLine(row.left(), y, row.right(), y);
  }

  private void paintGiven(int lane) {
    double half = Math.min(port.px(MOST_HATCHED), lanes.half() * 0.8);
    double top = lanes.middle(lane) - half;
    for (GivenStretch busy : shown.plan().brief().players().get(lane).busy()) {
      double left = Math.max(-HATCHED_BEYOND, x(busy.fromMicros()));
      double right = Math.min(port.width() + HATCHED_BEYOND, x(busy.toMicros()));
      if (right > left) {
        show(RelayPieces.hatching(new Box(left, top, right, top + 2 * half)));
        paintTicks(busy, top, half);
      }
    }
  }

  private double x(long micros) {
    return time.x(shown.clock().quarters(micros));
  }

  /** What the score gives somebody, stroke by stroke, where they can be told apart. */
  private void paintTicks(GivenStretch busy, double top, double high) {
    double thick = port.px(1.2);
    double drawn = Double.NEGATIVE_INFINITY;
    for (long micros : busy.strokeMicros()) {
      double x = x(micros);
      if (x >= 0 && x <= port.width() && x - drawn >= port.px(LEAST_APART)) {
        canvas.setFill(inks.paper());
        canvas.fillRect(x - 1, top, 2 * thick + 1, high + 1);
        canvas.setFill(inks.full());
        canvas.fillRect(x, top, thick, high);
        drawn = x;
      }
    }
  }

  private List<Mark> ways(int handoff, Optional<List<Box>> ink) {
    return shown.pieces().handoffSpan(handoff).start().isAfter(row.span().end())
            || row.span().start().isAfter(shown.pieces().handoffSpan(handoff).end())
        ? List.of()
        : shown.pieces().ways(handoff, row, lanes.half(), this::middle, ink);
  }

  private void paintRibbon(int segment) {
    show(shown.pieces().ribbon(segment, row, lanes.half(), this::middle));
  }

  /** How near its limit, and with which technique, where a segment begins and words fit. */
  private void paintLabel(int segment) {
    Span span = shown.pieces().segmentSpan(segment);
    double size = port.px(LABEL_SIZE);
    double left = Math.max(0, time.x(shown.free(segment))) + port.px(LABEL_INDENT);
    double room = time.x(span.end()) - left;
    double y = middle(shown.segments().get(segment)) - lanes.half() - port.px(LABEL_AIR);
    shown.labels(segment).stream()
        .filter(text -> Face.PLAIN.width(text, size) <= room)
        .findFirst()
        .map(text -> new Mark.Lettering(text, left, y, size, Face.PLAIN, Ink.SOFT))
        .ifPresent(hand::words);
  }

  private double middle(Segment segment) {
    return lanes.middle(segment.player());
  }

  private void show(List<Mark> marks) {
    marks.forEach(mark -> mark.show(hand));
  }
}
