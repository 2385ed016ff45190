package stafette.picture;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.check.StrainCourse;
import stafette.check.TempoWindow;
import stafette.check.Verdict;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.time.BarBeat;
import stafette.time.Span;

/**
 * What a picture shows.
 *
 * @param plan who plays what
 * @param verdict what the judge says of it
 * @param window the tempi between which it holds
 * @param courses for each segment the strain at each stroke
 */
record Relay(Plan plan, Verdict verdict, Optional<TempoWindow> window, List<List<Double>> courses) {
  static Relay of(Plan plan, Verdict verdict, Optional<TempoWindow> window) {
    return new Relay(plan, verdict, window, StrainCourse.of(plan));
  }

  Line line() {
    return plan.line();
  }

  /** The players who play something, in the brief's order. */
  List<Integer> playing() {
    return IntStream.range(0, plan.brief().players().size())
        .filter(player -> !plan.segmentsOf(player).isEmpty())
        .boxed()
        .toList();
  }

  List<String> idle() {
    return IntStream.range(0, plan.brief().players().size())
        .filter(player -> plan.segmentsOf(player).isEmpty())
        .mapToObj(this::name)
        .toList();
  }

  String name(int player) {
    return plan.brief().players().get(player).name();
  }

  Span span(Segment segment) {
    return new Span(
        line().stroke(segment.first()).onset(), line().stroke(segment.last()).span().end());
  }

  /** What both play at a handoff; where they share nothing, the silence between. */
  Span span(Handoff handoff) {
    return handoff.shared() > 0
        ? new Span(
            line().stroke(handoff.enters().first()).onset(),
            line().stroke(handoff.leaves().last()).span().end())
        : new Span(
            line().stroke(handoff.leaves().last()).span().end(),
            line().stroke(handoff.enters().first()).onset());
  }

  /** "8.1" or "8.1+2/3". */
  String at(int stroke) {
    BarBeat place = line().bars().nameOf(line().stroke(stroke).onset());
    return place.bar() + "." + place.beatText();
  }

  /** Rounded up, so that nothing beyond the limit shows as 100 %. */
  static String percent(double share) {
    return (int) Math.ceil(share * 100 - 1e-9) + " %";
  }

  static String oneDecimal(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
