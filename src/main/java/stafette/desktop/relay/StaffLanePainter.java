package stafette.desktop.relay;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javafx.scene.canvas.GraphicsContext;
import stafette.picture.ink.Box;
import stafette.picture.ink.Mark;
import stafette.picture.notes.BarRow;
import stafette.picture.ribbon.RelayPieces;
import stafette.plan.Segment;
import stafette.time.Span;

/**
 * Lanes in which the ribbon is as high as a staff: its strain runs in two strips along its edges,
 * and the notes stand between. Clef and key signature stay in sight at the left.
 */
final class StaffLanePainter {
  private static final double CLEF_INDENT = 3;
  private static final double CLEF_AIR = 4;

  /** How pale the ground of the ribbon is. */
  private static final double TINT = 0.05;

  private final ShownPlan shown;
  private final RelayPieces pieces;
  private final TimeScale time;
  private final LaneScale lanes;
  private final GraphicsContext canvas;
  private final Inks inks;
  private final BarRow row;
  private final CanvasInk hand;
  private final double larger;
  private final Map<Integer, List<Mark>> written = new HashMap<>();

  StaffLanePainter(View view, BarRow row, GraphicsContext canvas, Inks inks) {
    shown = view.shown();
    pieces = shown.pieces();
    time = view.time();
    lanes = view.lanes();
    this.canvas = canvas;
    this.inks = inks;
    this.row = row;
    hand = new CanvasInk(canvas, inks);
    larger = lanes.shape().music();
  }

  private double rail() {
    return lanes.port().px(LaneShape.RAIL);
  }

  /** The paper of a segment's ribbon, so pale that notes can be read on it. */
  void ground(int segment) {
    Span span = pieces.segmentSpan(segment);
    double left = Math.max(0, time.x(span.start()));
    double wide = Math.min(time.width(), time.x(span.end())) - left;
    double top = lanes.middle(player(segment)) - lanes.half();
    if (wide > 0) {
      canvas.setFill(inks.paper());
      canvas.fillRect(left, top, wide, 2 * lanes.half());
      canvas.setGlobalAlpha(TINT);
      canvas.setFill(inks.full());
      canvas.fillRect(left, top, wide, 2 * lanes.half());
      canvas.setGlobalAlpha(1);
    }
  }

  /** The strain of a segment along both edges. */
  void rails(int segment) {
    double half = rail() / 2;
    double away = lanes.half() - half;
    for (double side : new double[] {-away, away}) {
      show(pieces.ribbon(segment, row, half, each -> middle(each) + side));
    }
  }

  private double middle(Segment segment) {
    return lanes.middle(segment.player());
  }

  private int player(int segment) {
    return shown.segments().get(segment).player();
  }

  /** Where something is written on a lane. */
  Stream<Box> ink(int lane) {
    return written(lane).stream()
        .map(Mark::bounds)
        .map(
            box ->
                new Box(
                    box.left() * larger,
                    box.top() * larger,
                    box.right() * larger,
                    box.bottom() * larger));
  }

  private List<Mark> written(int lane) {
    return written.computeIfAbsent(lane, each -> pieces.notes(each, smaller(), top(each) / larger));
  }

  void notes(int lane) {
    double top = top(lane) / larger;
    List<Mark> notes = written(lane);
    if (notes.isEmpty()) {
      return;
    }
    canvas.save();
    canvas.scale(larger, larger);
    for (int i = 0; i < shown.segments().size(); i++) {
      Span span = pieces.segmentSpan(i);
      if (player(i) == lane && span.overlaps(row.span())) {
        show(pieces.staff(lane, top, time.x(span.start()) / larger, time.x(span.end()) / larger));
      }
    }
    show(notes);
    canvas.restore();
    clef(lane, top);
  }

  private double top(int lane) {
    return lanes.middle(lane) - shown.staves().rise(lane) * larger;
  }

  /** Everything on paper's own scale, which the canvas makes larger. */
  private BarRow smaller() {
    return new BarRow(row.bars(), row.left() / larger, row.pointsPerQuarter() / larger, 0);
  }

  private void clef(int lane, double top) {
    double wide = pieces.clefAndKeyWidth(lane, row.bars().get(0)) * larger;
    double half = lanes.half() - rail() - 1;
    canvas.setFill(inks.paper());
    canvas.fillRect(
        0, lanes.middle(lane) - half, wide + lanes.port().px(CLEF_INDENT + CLEF_AIR), 2 * half);
    canvas.save();
    canvas.scale(larger, larger);
    show(pieces.clefAndKey(lane, row.bars().get(0), top, lanes.port().px(CLEF_INDENT) / larger));
    canvas.restore();
  }

  private void show(List<Mark> marks) {
    marks.forEach(mark -> mark.show(hand));
  }
}
