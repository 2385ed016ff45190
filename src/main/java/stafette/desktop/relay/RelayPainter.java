package stafette.desktop.relay;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.canvas.GraphicsContext;
import stafette.picture.Box;
import stafette.picture.Face;
import stafette.picture.Ink;
import stafette.picture.Mark;
import stafette.picture.RelayPieces;
import stafette.picture.Row;
import stafette.plan.Busy;
import stafette.plan.Segment;
import stafette.time.Span;

/** Draws what is seen of a relay: lanes, what the score gives, bridges, ribbons, curves, music. */
final class RelayPainter {
  /** From the ribbon's middle to the top line of a staff below it. */
  private static final double STAFF_DOWN = 42;

  /** The clef stays in sight at the left edge, over a strip of paper as wide as this. */
  private static final double CLEF_ROOM = 20;

  private static final double CLEF_AIR = 8;
  private static final double STAFF = 16;
  private static final double LABEL_SIZE = 9.5;
  private static final double LABEL_INDENT = 12;
  private static final double LABEL_AIR = 4;
  private static final double HATCHED_BEYOND = 20;

  private final ShownPlan shown;
  private final TimeScale time;
  private final LaneScale lanes;
  private final GraphicsContext canvas;
  private final Inks inks;
  private final Row row;
  private final CanvasHand hand;

  RelayPainter(
      ShownPlan shown, TimeScale time, LaneScale lanes, GraphicsContext canvas, Inks inks) {
    this.shown = shown;
    this.time = time;
    this.lanes = lanes;
    this.canvas = canvas;
    this.inks = inks;
    row = time.row(shown.bars());
    hand = new CanvasHand(canvas, inks);
  }

  void paint() {
    canvas.setFill(inks.paper());
    canvas.fillRect(0, 0, time.width(), lanes.height());
    Grid grid = new Grid(shown, row, lanes, canvas, inks);
    canvas.save();
    canvas.beginPath();
    canvas.rect(0, LaneScale.RULER, time.width(), lanes.height() - LaneScale.RULER);
    canvas.clip();
    grid.lines();
    visibleLanes().forEach(this::paintLane);
    shown.handoffs().forEach(handoff -> show(ways(handoff)));
    paintRibbons();
    visibleLanes().forEach(this::paintCurves);
    canvas.restore();
    grid.ruler();
    shown.rhythm().paint(time, canvas, inks);
  }

  private IntStream visibleLanes() {
    return IntStream.range(0, lanes.count())
        .filter(
            lane ->
                lanes.top(lane) < lanes.height()
                    && lanes.top(lane) + lanes.laneHeight() > LaneScale.RULER);
  }

  private void paintLane(int lane) {
    double y = lanes.middle(lane);
    canvas.setStroke(inks.faint());
    canvas.setLineWidth(0.7);
    canvas.strokeLine(row.left(), y, row.right(), y);
    for (Busy busy : shown.plan().brief().players().get(lane).busy()) {
      double from = time.x(shown.clock().quarters(busy.fromMicros()));
      double to = time.x(shown.clock().quarters(busy.toMicros()));
      from = Math.max(-HATCHED_BEYOND, from);
      to = Math.min(time.width() + HATCHED_BEYOND, to);
      if (to > from) {
        double half = lanes.half() * 0.8;
        show(RelayPieces.hatching(new Box(from, y - half, to, y + half)));
      }
    }
  }

  private List<Mark> ways(int handoff) {
    return shown.pieces().handoffSpan(handoff).start().isAfter(row.span().end())
            || row.span().start().isAfter(shown.pieces().handoffSpan(handoff).end())
        ? List.of()
        : shown.pieces().ways(handoff, row, lanes.half(), this::middle, hasMusic());
  }

  private void paintRibbons() {
    for (int segment = 0; segment < shown.segments().size(); segment++) {
      if (shown.pieces().segmentSpan(segment).overlaps(row.span())) {
        show(shown.pieces().ribbon(segment, row, lanes.half(), this::middle));
        paintLabel(segment);
      }
    }
  }

  /** How near its limit, and with which technique, where a segment begins and words fit. */
  private void paintLabel(int segment) {
    Span span = shown.pieces().segmentSpan(segment);
    double left = Math.max(0, time.x(shown.free(segment))) + LABEL_INDENT;
    double room = time.x(span.end()) - left;
    double y = middle(shown.segments().get(segment)) - lanes.half() - LABEL_AIR;
    shown.labels(segment).stream()
        .filter(text -> Face.PLAIN.width(text, LABEL_SIZE) <= room)
        .findFirst()
        .map(text -> new Mark.Words(text, left, y, LABEL_SIZE, Face.PLAIN, Ink.SOFT))
        .ifPresent(hand::words);
  }

  private double middle(Segment segment) {
    return lanes.middle(segment.player());
  }

  private void paintCurves(int lane) {
    if (hasMusic()) {
      paintMusic(lane);
    }
    new Curves(shown, time, row, lanes, canvas, inks).paint(lane);
  }

  /** Notes are drawn larger than on paper, which is held nearer to the eye. */
  private void paintMusic(int lane) {
    double larger = LaneScale.MUSIC;
    double top = (lanes.middle(lane) + STAFF_DOWN) / larger;
    Row smaller = new Row(row.bars(), row.left() / larger, row.pointsPerQuarter() / larger, 0);
    List<Mark> music = shown.pieces().music(lane, smaller, top);
    canvas.save();
    canvas.scale(larger, larger);
    show(music);
    if (!music.isEmpty()) {
      canvas.setFill(inks.paper());
      canvas.fillRect(0, top - CLEF_AIR, CLEF_ROOM, 2 * CLEF_AIR + STAFF);
      show(shown.pieces().clef(lane, top, 2));
    }
    canvas.restore();
  }

  private boolean hasMusic() {
    return lanes.isNoted() && shown.hasRoomForMusic(time);
  }

  private void show(List<Mark> marks) {
    marks.forEach(mark -> mark.show(hand));
  }
}
