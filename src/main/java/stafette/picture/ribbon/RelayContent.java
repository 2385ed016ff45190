package stafette.picture.ribbon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import stafette.check.StrainCourse;
import stafette.check.TempoWindow;
import stafette.check.Verdict;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Bar;
import stafette.time.BarBeat;
import stafette.time.Position;
import stafette.time.Span;
import stafette.words.Sayable;

/**
 * What a picture shows.
 *
 * @param plan who plays what
 * @param how what is marked for its players
 * @param verdict what the judge says of it
 * @param window the tempi between which it holds
 * @param courses for each segment the strain at each stroke that it really plays
 * @param links the ways from lane to lane
 * @param speech how anything is said
 */
public record RelayContent(
    Plan plan,
    WrittenAs how,
    Verdict verdict,
    Optional<TempoWindow> window,
    List<List<Double>> courses,
    List<Link> links,
    Function<Sayable, String> speech) {
  /** In English, as the line is written. */
  public static RelayContent of(Plan plan, Verdict verdict, Optional<TempoWindow> window) {
    List<Link> links = new ArrayList<>();
    List<Handoff> handoffs = plan.handoffs();
    for (int i = 0; i < handoffs.size(); i++) {
      links.addAll(links(i, handoffs.get(i)));
    }
    return new RelayContent(
        plan,
        WrittenAs.plain(SourceTreatment.KEEP),
        verdict,
        window,
        StrainCourse.of(plan),
        List.copyOf(links),
        what -> what.inWords().toString());
  }

  /** The same, said otherwise. */
  public RelayContent in(Function<Sayable, String> language) {
    return new RelayContent(plan, how, verdict, window, courses, links, language);
  }

  /** The same, marked otherwise. */
  public RelayContent marked(WrittenAs otherwise) {
    return new RelayContent(plan, otherwise, verdict, window, courses, links, speech);
  }

  String say(Sayable what) {
    return speech.apply(what);
  }

  /**
   * The way of the ribbon at a handoff, from one player's lane to another's.
   *
   * @param handoff which handoff of the plan
   */
  record Link(int handoff, Segment leaves, Segment enters) {}

  /**
   * Each player who enters comes from the nearest lane that is left, and each who leaves goes to
   * the nearest; who plays on needs no way.
   */
  private static List<Link> links(int index, Handoff handoff) {
    List<Link> links = new ArrayList<>();
    for (Segment enters : handoff.enters().segments()) {
      if (!handoff.leaves().has(enters.player())) {
        links.add(new Link(index, nearest(enters, handoff.leaves().segments()), enters));
      }
    }
    for (Segment leaves : handoff.leaves().segments()) {
      boolean linked = links.stream().anyMatch(link -> link.leaves().equals(leaves));
      if (!linked && !handoff.enters().has(leaves.player())) {
        links.add(new Link(index, leaves, nearest(leaves, handoff.enters().segments())));
      }
    }
    return links;
  }

  private static Segment nearest(Segment to, List<Segment> among) {
    return among.stream()
        .min(Comparator.comparingInt(segment -> Math.abs(segment.player() - to.player())))
        .orElseThrow();
  }

  public Line line() {
    return plan.line();
  }

  List<Bar> bars() {
    return plan.brief().bars();
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

  /** From the first stroke that the player really plays to the end of the last. */
  public Span span(Segment segment) {
    Played played = plan.played(segment);
    Line line = played.line();
    return new Span(line.stroke(played.first()).onset(), line.stroke(played.last()).span().end());
  }

  /** What both play at a handoff; where they share nothing, the silence between. */
  public Span span(Handoff handoff) {
    Line line = plan.brief().line(handoff.leaves().relay());
    Position enters = line.stroke(handoff.enters().first()).onset();
    Stroke landing = line.stroke(handoff.leaves().last());
    return handoff.shared() > 0
        ? new Span(enters, landing.span().end())
        : new Span(landing.span().end(), enters);
  }

  /** What others of its relay play too, at both ends of a segment. */
  List<Span> shared(Segment segment) {
    return plan.handoffs().stream()
        .filter(handoff -> handoff.shared() > 0)
        .filter(
            handoff ->
                handoff.leaves().segments().contains(segment)
                    || handoff.enters().segments().contains(segment))
        .map(this::span)
        .toList();
  }

  BarBeat at(Segment segment, int stroke) {
    return at(plan.line(segment), stroke);
  }

  BarBeat at(Handoff handoff, int stroke) {
    return at(plan.brief().line(handoff.leaves().relay()), stroke);
  }

  private static BarBeat at(Line line, int stroke) {
    return line.bars().nameOf(line.stroke(stroke).onset());
  }

  static String oneDecimal(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
