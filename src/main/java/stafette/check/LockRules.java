package stafette.check;

import java.util.List;
import java.util.stream.Stream;
import stafette.plan.Handoff;
import stafette.plan.Lock;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Place;
import stafette.time.BarBeat;
import stafette.words.Sentence;

/** What was locked has been kept. */
final class LockRules {
  private final Plan plan;

  private LockRules(Plan plan) {
    this.plan = plan;
  }

  static List<Finding> findings(Plan plan) {
    LockRules rules = new LockRules(plan);
    return plan.brief().rules().locks().stream()
        .filter(lock -> !rules.keeps(lock))
        .map(rules::finding)
        .toList();
  }

  static boolean keeps(Plan plan, Lock lock) {
    return new LockRules(plan).keeps(lock);
  }

  private boolean keeps(Lock lock) {
    if (lock instanceof Lock.At at) {
      return plan.handoffs().stream().anyMatch(handoff -> isAt(at, handoff));
    }
    if (lock instanceof Lock.Exactly exactly) {
      return segments(lock).anyMatch(segment -> isExactly(exactly, segment));
    }
    if (lock instanceof Lock.In in) {
      return segments(lock)
          .anyMatch(
              s -> s.player() == in.player() && s.first() <= in.first() && s.last() >= in.last());
    }
    Lock.Out out = (Lock.Out) lock;
    return segments(lock)
        .noneMatch(
            s -> s.player() == out.player() && s.first() <= out.last() && s.last() >= out.first());
  }

  private Stream<Segment> segments(Lock lock) {
    return plan.segments().stream().filter(segment -> segment.relay() == lock.relay());
  }

  private static boolean isAt(Lock.At lock, Handoff handoff) {
    return handoff.enters().relay() == lock.relay()
        && handoff.enters().first() == lock.first()
        && handoff.leaves().last() == lock.last();
  }

  private static boolean isExactly(Lock.Exactly lock, Segment segment) {
    return segment.player() == lock.player()
        && segment.pattern() == Pattern.ALL
        && segment.first() == lock.first()
        && segment.last() == lock.last()
        && (lock.skill().isEmpty() || lock.skill().getAsInt() == segment.skill());
  }

  private Finding finding(Lock lock) {
    Line line = plan.brief().line(lock.relay());
    Place from = line.placeOf(lock.first());
    if (lock instanceof Lock.At) {
      return Finding.at(
          Finding.Kind.LOCK, from, Sentence.of("the handoff locked here is not kept"));
    }
    int player = Lock.player(lock).orElseThrow();
    BarBeat to = line.placeOf(lock.last()).at();
    return Finding.at(
        Finding.Kind.LOCK,
        new Place(plan.brief().players().get(player).name(), from.at()),
        lock instanceof Lock.Out
            ? Sentence.of("was to be left out from here to {0}, and that is not kept", to)
            : Sentence.of("was to play from here to {0}, and that is not kept", to));
  }
}
