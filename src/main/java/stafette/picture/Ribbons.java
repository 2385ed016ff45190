package stafette.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import stafette.plan.Handoff;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.time.Position;

/** The pieces of the ribbon that one segment has in a row: one for each run without a silence. */
final class Ribbons {
  private static final double HAIR = 0.01;

  private final Relay relay;
  private final Row row;
  private final double half;

  Ribbons(Relay relay, Row row, double half) {
    this.relay = relay;
    this.row = row;
    this.half = half;
  }

  /**
   * The pieces of one segment.
   *
   * @param index its place among the plan's segments
   * @param y the middle of its lane
   * @param middle the middle of any segment's lane
   */
  List<Ribbon> of(int index, double y, ToDoubleFunction<Segment> middle) {
    Segment segment = relay.plan().segments().get(index);
    List<Ribbon> ribbons = new ArrayList<>();
    int first = segment.first();
    for (int j = first; j <= segment.last(); j++) {
      if (j == segment.last() || relay.line().restsBefore(j + 1)) {
        Ribbon.End start = first == segment.first() ? entry(index, y, middle) : Ribbon.End.TIP;
        Ribbon.End end = j == segment.last() ? exit(index, y, middle) : Ribbon.End.TIP;
        piece(index, first, j, y, start, end).ifPresent(ribbons::add);
        first = j + 1;
      }
    }
    return ribbons;
  }

  private Ribbon.End entry(int index, double y, ToDoubleFunction<Segment> middle) {
    return handoffTo(index)
        .map(handoff -> bend(middle.applyAsDouble(handoff.leaves()), y))
        .orElse(Ribbon.End.TIP);
  }

  private Ribbon.End exit(int index, double y, ToDoubleFunction<Segment> middle) {
    return handoffFrom(index)
        .map(handoff -> bend(middle.applyAsDouble(handoff.enters()), y))
        .orElse(Ribbon.End.TIP);
  }

  private static Ribbon.End bend(double other, double y) {
    return other == y ? Ribbon.End.TIP : other < y ? Ribbon.End.UP : Ribbon.End.DOWN;
  }

  private Optional<Handoff> handoffTo(int index) {
    return relay.plan().handoffs().stream()
        .filter(handoff -> handoff.enters().equals(relay.plan().segments().get(index)))
        .filter(handoff -> handoff.shared() > 0)
        .findFirst();
  }

  private Optional<Handoff> handoffFrom(int index) {
    return relay.plan().handoffs().stream()
        .filter(handoff -> handoff.leaves().equals(relay.plan().segments().get(index)))
        .filter(handoff -> handoff.shared() > 0)
        .findFirst();
  }

  private Optional<Ribbon> piece(
      int index, int first, int last, double y, Ribbon.End start, Ribbon.End end) {
    Line line = relay.line();
    Position from = line.stroke(first).onset();
    Position to = line.stroke(last).span().end();
    if (!from.isBefore(row.span().end()) || !row.span().start().isBefore(to)) {
      return Optional.empty();
    }
    boolean begins = !from.isBefore(row.span().start());
    boolean ends = !to.isAfter(row.span().end());
    List<Ribbon.Knot> knots = new ArrayList<>();
    for (int j = first; j <= last; j++) {
      double left = row.x(line.stroke(j).onset());
      double right = row.x(j == last ? to : line.stroke(j + 1).onset());
      if (right > row.left() && left < row.right()) {
        addKnots(index, j, Math.max(row.left(), left), Math.min(row.right(), right), knots);
      }
    }
    return Optional.of(
        new Ribbon(
            y,
            half,
            Ribbon.thinned(knots),
            begins ? start : Ribbon.End.OPEN,
            ends ? end : Ribbon.End.OPEN));
  }

  private void addKnots(int index, int stroke, double left, double right, List<Ribbon.Knot> knots) {
    double darkness = darkness(index, stroke);
    knots.add(new Ribbon.Knot(left, darkness));
    knots.add(new Ribbon.Knot(Math.max(left, right - HAIR), darkness));
  }

  /** The first stroke has no rate of its own; it is as dark as the second. */
  private double darkness(int index, int stroke) {
    Segment segment = relay.plan().segments().get(index);
    if (isShared(segment, stroke)) {
      return Ribbon.SOLID;
    }
    List<Double> course = relay.courses().get(index);
    int k = stroke - segment.first();
    double strain = course.get(k);
    if (k == 0 && course.size() > 1) {
      strain = Math.max(strain, course.get(1));
    }
    return Ribbon.darkness(strain);
  }

  private boolean isShared(Segment segment, int stroke) {
    return relay.plan().handoffs().stream()
        .anyMatch(
            handoff ->
                (handoff.leaves().equals(segment) || handoff.enters().equals(segment))
                    && handoff.enters().first() <= stroke
                    && stroke <= handoff.leaves().last());
  }
}
