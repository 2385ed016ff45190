package stafette.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import stafette.plan.Halves;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.plan.Turn;
import stafette.words.Sentence;
import stafette.words.Settable;

/**
 * What pairs who take turns must keep to: by strokes or groups they can interlock only where those
 * are far enough apart ({@link Halves#LEAST_APART_MICROS}). And where several relays go on at once,
 * who takes part in a hocket plays in no other relay from the hocket's first note to its last; that
 * is a rule of this planning model, not of the trade: it lets turns be planned in the order in
 * which they begin.
 */
final class HocketRules {
  private HocketRules() {}

  static List<Finding> findings(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Segment hocket : plan.segments()) {
      if (hocket.pattern() != Pattern.ALL) {
        plan.segments().stream()
            .filter(other -> meets(plan, hocket, other))
            .map(other -> finding(plan, other))
            .forEach(findings::add);
      }
    }
    return findings;
  }

  /** Where the two of a pair can't interlock, all times stretched by a factor. */
  static List<Finding> interlocking(Plan plan, double stretch) {
    List<Finding> findings = new ArrayList<>();
    for (Turn turn : plan.turns()) {
      if (turn.isHocket()) {
        tooClose(turn, plan.brief().halves(turn.relay()), stretch)
            .ifPresent(stroke -> findings.add(tooClose(plan, turn, stroke, stretch)));
      }
    }
    return findings;
  }

  /** Up to which factor of the present tempo all pairs interlock. */
  static double interlockUpToFactor(Plan plan) {
    return plan.turns().stream()
        .filter(Turn::isHocket)
        .flatMapToDouble(turn -> apart(turn, plan.brief().halves(turn.relay())))
        .map(micros -> micros / Halves.LEAST_APART_MICROS)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static DoubleStream apart(Turn turn, Halves halves) {
    return IntStream.rangeClosed(turn.first(), turn.last()).mapToDouble(halves::apartMicros);
  }

  private static OptionalInt tooClose(Turn turn, Halves halves, double stretch) {
    return IntStream.rangeClosed(turn.first(), turn.last())
        .filter(
            stroke ->
                !Tolerance.reaches(stretch * halves.apartMicros(stroke), Halves.LEAST_APART_MICROS))
        .findFirst();
  }

  private static Finding tooClose(Plan plan, Turn turn, int stroke, double stretch) {
    double millis = stretch * plan.brief().halves(turn.relay()).apartMicros(stroke) / 1000;
    double least = Halves.LEAST_APART_MICROS / 1000.0;
    return Finding.at(
        Finding.FindingKind.INTERLOCKING,
        Whereabouts.of(
            plan.player(turn.segments().get(0)), plan.line(turn.segments().get(0)), stroke),
        Sentence.of(
            "takes notes in turn with another that lie {0} ms apart, and two players interlock only"
                + " from {1} ms on; let them take beats in turn{2}, or play slower",
            Sentence.decimal(millis, 1), Sentence.decimal(least, 1), Settable.HOCKET));
  }

  private static boolean meets(Plan plan, Segment hocket, Segment other) {
    return hocket.relay() != other.relay()
        && hocket.player() == other.player()
        && begin(plan, hocket) <= end(plan, other)
        && begin(plan, other) <= end(plan, hocket);
  }

  private static long begin(Plan plan, Segment segment) {
    return plan.line(segment).onsetMicros(segment.first());
  }

  private static long end(Plan plan, Segment segment) {
    return plan.line(segment).onsetMicros(segment.last());
  }

  private static Finding finding(Plan plan, Segment other) {
    return Finding.at(
        Finding.FindingKind.REST,
        Whereabouts.of(plan.player(other), plan.line(other), other.first()),
        Sentence.of(
            "takes part in a hocket of another relay meanwhile; let somebody else play here"));
  }
}
