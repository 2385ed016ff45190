package stafette.desktop.relay;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import stafette.plan.Handoff;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.time.Span;

/**
 * What is locked is held in clamps: two strokes across both ends of a stretch, joined by a line at
 * its foot, or across the neck of a handoff. A stretch that a player must not touch has its clamps
 * too, joined by a line through the empty lane.
 */
final class Clamps {
  private static final double THICK = 2.6;
  private static final double THIN = 1.2;
  private static final double APART = 4;
  private static final double BEYOND = 3.5;
  private static final double HALO = 1.2;

  /** From the ribbon that is left to the clamp on its way to the next. */
  private static final double NECK = 12;

  private final ShownPlan shown;
  private final Plan plan;
  private final TimeScale time;
  private final LaneScale lanes;
  private final Viewport port;
  private final GraphicsContext canvas;
  private final Inks inks;

  Clamps(View view, GraphicsContext canvas, Inks inks) {
    shown = view.shown();
    plan = shown.plan();
    time = view.time();
    lanes = view.lanes();
    port = time.port();
    this.canvas = canvas;
    this.inks = inks;
  }

  void paint() {
    List<Lock> locks = plan.brief().rules().locks();
    for (Lock lock : locks) {
      Lock.player(lock).ifPresent(player -> stretch(lock, player));
    }
    shown
        .handoffs()
        .filter(i -> locks.stream().anyMatch(lock -> Lock.keeps(lock, plan.handoffs().get(i))))
        .forEach(this::neck);
  }

  /** Where the lock itself is, which is where its player may no longer play. */
  private void stretch(Lock lock, int player) {
    Line line = plan.brief().line(lock.relay());
    double left = time.x(line.stroke(lock.first()).onset());
    double right = time.x(line.stroke(lock.last()).span().end());
    if (right < 0 || left > port.width()) {
      return;
    }
    double middle = lanes.middle(player);
    double beyond = lanes.half() + port.px(BEYOND);
    double foot =
        Lock.playing(lock).isPresent() ? middle + lanes.half() + port.px(BEYOND - 1) : middle;
    canvas.setLineWidth(port.px(THIN));
    canvas.setStroke(inks.join());
    canvas.strokeLine(Math.max(-APART, left), foot, Math.min(port.width() + APART, right), foot);
    bars(left, 1, middle - beyond, middle + beyond);
    bars(right, -1, middle - beyond, middle + beyond);
  }

  /** A thick stroke at an end, and a thin one inside. */
  private void bars(double x, int inward, double top, double bottom) {
    double thick = port.px(THICK);
    double thin = port.px(THIN);
    double inner = x + inward * port.px(APART);
    block(x - thick / 2, top, thick, bottom - top, inks.join());
    block(inner - thin / 2, top, thin, bottom - top, inks.join());
  }

  /** Two strokes across the way from lane to lane. */
  private void neck(int index) {
    Handoff handoff = plan.handoffs().get(index);
    Span span = shown.pieces().handoffSpan(index);
    double left = time.x(span.start()) - port.px(BEYOND + 2);
    double wide = time.x(span.end()) + port.px(BEYOND + 2) - left;
    double from = lanes.middle(player(handoff.leaves().segments()));
    double to = lanes.middle(player(handoff.enters().segments()));
    double y = from + Math.signum(to - from) * (lanes.half() + port.px(NECK));
    double thick = port.px(THICK);
    double high = 2 * thick + port.px(APART) / 2;
    block(left, y - high / 2, wide, high, inks.paper());
    block(left, y - high / 2, wide, thick, inks.full());
    block(left, y + high / 2 - thick, wide, thick, inks.full());
  }

  private static int player(List<Segment> segments) {
    return segments.get(0).player();
  }

  /** With paper around it, so that it shows on any ink. */
  private void block(double x, double y, double width, double height, Color ink) {
    double halo = port.px(HALO);
    canvas.setFill(inks.paper());
    canvas.fillRect(x - halo, y - halo, width + 2 * halo, height + 2 * halo);
    canvas.setFill(ink);
    canvas.fillRect(x, y, width, height);
  }
}
