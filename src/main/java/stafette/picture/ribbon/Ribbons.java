package stafette.picture.ribbon;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import stafette.picture.notes.BarRow;
import stafette.plan.Pattern;
import stafette.plan.Played;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.time.Position;
import stafette.time.Span;

/**
 * The pieces of the ribbon that one segment has in a row: one for each run without a silence, one
 * for each unit of a hocket.
 */
final class Ribbons {
  private static final double HAIR = 0.01;

  private final RelayContent relay;
  private final int index;
  private final Segment segment;
  private final Played played;
  private final List<Span> shared;
  private final BarRow row;
  private final double half;
  private final ToDoubleFunction<Segment> middle;

  /**
   * The pieces of a segment.
   *
   * @param index its place among the plan's segments
   * @param half half the ribbon's height
   * @param middle the middle of any segment's lane
   */
  Ribbons(
      RelayContent relay, int index, BarRow row, double half, ToDoubleFunction<Segment> middle) {
    this.relay = relay;
    this.index = index;
    this.row = row;
    this.half = half;
    this.middle = middle;
    segment = relay.plan().segments().get(index);
    played = relay.plan().played(segment);
    shared = relay.shared(segment);
  }

  List<Ribbon> pieces() {
    List<Ribbon> ribbons = new ArrayList<>();
    int first = played.first();
    for (int j = first; j <= played.last(); j++) {
      if (j == played.last() || breaksAfter(j)) {
        piece(first, j).ifPresent(ribbons::add);
        first = j + 1;
      }
    }
    return ribbons;
  }

  private boolean breaksAfter(int stroke) {
    Line line = played.line();
    return segment.pattern() == Pattern.ALL
        ? line.restsBefore(stroke + 1)
        : line.stroke(stroke).span().end().isBefore(line.stroke(stroke + 1).onset());
  }

  private Optional<Ribbon> piece(int first, int last) {
    Line line = played.line();
    Position from = line.stroke(first).onset();
    Position to = line.stroke(last).span().end();
    if (!from.isBefore(row.span().end()) || !row.span().start().isBefore(to)) {
      return Optional.empty();
    }
    List<Ribbon.Knot> knots = new ArrayList<>();
    for (int j = first; j <= last; j++) {
      double left = row.x(line.stroke(j).onset());
      double right = row.x(j == last ? to : line.stroke(j + 1).onset());
      if (right > row.left() && left < row.right()) {
        addKnots(j, Math.max(row.left(), left), Math.min(row.right(), right), knots);
      }
    }
    boolean begins = !from.isBefore(row.span().start());
    boolean ends = !to.isAfter(row.span().end());
    return Optional.of(
        new Ribbon(
            middle.applyAsDouble(segment),
            half,
            Ribbon.thinned(knots),
            begins ? entry(first) : Ribbon.RibbonEnd.OPEN,
            ends ? exit(last) : Ribbon.RibbonEnd.OPEN));
  }

  private Ribbon.RibbonEnd entry(int first) {
    return end(
        first == played.first(),
        relay.links().stream()
            .filter(link -> link.enters().equals(segment) && shares(link))
            .map(RelayContent.Link::leaves));
  }

  private Ribbon.RibbonEnd exit(int last) {
    return end(
        last == played.last(),
        relay.links().stream()
            .filter(link -> link.leaves().equals(segment) && shares(link))
            .map(RelayContent.Link::enters));
  }

  private boolean shares(RelayContent.Link link) {
    return relay.plan().handoffs().get(link.handoff()).shared() > 0;
  }

  /** A hocket's units are too short to bend. */
  private Ribbon.RibbonEnd end(boolean outermost, Stream<Segment> linked) {
    double here = middle.applyAsDouble(segment);
    return outermost && segment.pattern() == Pattern.ALL
        ? linked
            .map(
                other ->
                    middle.applyAsDouble(other) < here
                        ? Ribbon.RibbonEnd.UP
                        : Ribbon.RibbonEnd.DOWN)
            .findFirst()
            .orElse(Ribbon.RibbonEnd.TIP)
        : Ribbon.RibbonEnd.TIP;
  }

  private void addKnots(int stroke, double left, double right, List<Ribbon.Knot> knots) {
    double darkness = darkness(stroke);
    knots.add(new Ribbon.Knot(left, darkness));
    knots.add(new Ribbon.Knot(Math.max(left, right - HAIR), darkness));
  }

  /** The first stroke has no rate of its own; it is as dark as the second. */
  private double darkness(int stroke) {
    Position onset = played.line().stroke(stroke).onset();
    if (shared.stream().anyMatch(span -> span.contains(onset))) {
      return Ribbon.SOLID;
    }
    List<Double> course = relay.courses().get(index);
    int k = stroke - played.first();
    double strain = course.get(k);
    if (k == 0 && course.size() > 1) {
      strain = Math.max(strain, course.get(1));
    }
    return Ribbon.darkness(strain);
  }
}
