package stafette.json;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stafette.json.Means.Least;
import stafette.json.Means.Missing;
import stafette.plan.Brief;
import stafette.plan.Lock;
import stafette.plan.Player;
import stafette.score.Line;

/** A lock by names. */
@Means(
    "A lock: of a handoff (first stroke of who enters, last of who leaves), of a segment with just these ends, of a stretch that one segment of the player must cover (in) or that none may touch (out).")
record LockJson(
    @Means("What must be kept.") Keep keep,
    @Means("Which relay.") @Least(0) int relay,
    @Means("First stroke.") @Least(0) int first,
    @Means("Last stroke, included.") @Least(0) int last,
    @Means("Whose.") @Missing Optional<String> player,
    @Means("On single strings or on twin strings of the harp, for a segment; any if missing.")
        @Missing
        Optional<WayJson> way) {
  /** What must be kept. */
  enum Keep {
    HANDOFF,
    SEGMENT,
    IN,
    OUT
  }

  static LockJson of(Lock lock, Brief brief) {
    Optional<Player> player = Lock.player(lock).stream().mapToObj(brief.players()::get).findFirst();
    OptionalInt way =
        lock.match(
            at -> OptionalInt.empty(),
            Lock.Exactly::way,
            in -> OptionalInt.empty(),
            out -> OptionalInt.empty());
    return new LockJson(
        lock.match(at -> Keep.HANDOFF, exactly -> Keep.SEGMENT, in -> Keep.IN, out -> Keep.OUT),
        lock.relay(),
        lock.first(),
        lock.last(),
        player.map(Player::name),
        way.stream()
            .mapToObj(index -> WayJson.of(player.orElseThrow().ways().get(index)))
            .findFirst());
  }

  /** The lock among these players and lines; empty if it names one, or a stroke, not there. */
  Optional<Lock> among(List<Player> players, List<Line> lines) {
    boolean ordered = first <= (keep == Keep.HANDOFF ? last + 1 : last);
    if (!ordered || relay >= lines.size() || Math.max(first, last) >= lines.get(relay).count()) {
      return Optional.empty();
    }
    if (keep == Keep.HANDOFF) {
      return Optional.of(new Lock.At(relay, first, last));
    }
    OptionalInt whose = PlayerJson.called(player.orElse(""), players);
    return whose.isEmpty() ? Optional.empty() : of(whose.getAsInt(), players.get(whose.getAsInt()));
  }

  private Optional<Lock> of(int index, Player whose) {
    if (keep == Keep.IN || keep == Keep.OUT) {
      return Optional.of(
          keep == Keep.IN
              ? new Lock.In(relay, index, first, last)
              : new Lock.Out(relay, index, first, last));
    }
    OptionalInt how = way.map(own -> own.of(whose)).orElse(OptionalInt.empty());
    return way.isPresent() && how.isEmpty()
        ? Optional.empty()
        : Optional.of(new Lock.Exactly(relay, index, how, first, last));
  }
}
