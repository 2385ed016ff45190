package stafette.check;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import stafette.plan.Lock;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.Segment;
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
    return lock.match(this::isHandedOver, this::isPlayed, this::isCovered, this::isLeftOut);
  }

  private boolean isHandedOver(Lock.At lock) {
    return plan.handoffs().stream().anyMatch(handoff -> Lock.keeps(lock, handoff));
  }

  private boolean isPlayed(Lock.Exactly lock) {
    return segments(lock)
        .anyMatch(segment -> segment.pattern() == Pattern.ALL && Lock.keeps(lock, segment));
  }

  private boolean isCovered(Lock.In lock) {
    return segments(lock)
        .anyMatch(
            s ->
                s.player() == lock.player()
                    && s.first() <= lock.first()
                    && s.last() >= lock.last());
  }

  private boolean isLeftOut(Lock.Out lock) {
    return segments(lock)
        .noneMatch(
            s ->
                s.player() == lock.player()
                    && s.first() <= lock.last()
                    && s.last() >= lock.first());
  }

  private Stream<Segment> segments(Lock lock) {
    return plan.segments().stream().filter(segment -> segment.relay() == lock.relay());
  }

  private Finding finding(Lock lock) {
    return lock.match(
        at -> finding(at, Sentence.of("the handoff locked here is not kept")),
        exactly -> finding(exactly, notPlayed(exactly)),
        in -> finding(in, notPlayed(in)),
        out ->
            finding(
                out,
                Sentence.of(
                    "was to be left out from here to {0}, and that is not kept", end(out))));
  }

  private Sentence notPlayed(Lock lock) {
    return Sentence.of("was to play from here to {0}, and that is not kept", end(lock));
  }

  private BarBeat end(Lock lock) {
    return plan.brief().line(lock.relay()).placeOf(lock.last()).at();
  }

  /** At the player's place in the line; a handoff is at the line's own. */
  private Finding finding(Lock lock, Sentence what) {
    Place from = plan.brief().line(lock.relay()).placeOf(lock.first());
    OptionalInt player = Lock.player(lock);
    Place place =
        player.isPresent()
            ? new Place(plan.brief().players().get(player.getAsInt()).name(), from.at())
            : from;
    return Finding.at(Finding.FindingKind.LOCK, place, what);
  }
}
