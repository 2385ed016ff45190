package stafette.plan;

import java.util.OptionalInt;

/** What a plan must keep. Strokes are those of one relay's line; players are indices. */
public sealed interface Lock {
  /** Which relay it is about. */
  int relay();

  /** The first stroke it is about. */
  int first();

  /** The last one, included. */
  int last();

  /** Whom a lock is about; nobody, if it is about a handoff. */
  static OptionalInt player(Lock lock) {
    if (lock instanceof Exactly exactly) {
      return OptionalInt.of(exactly.player());
    }
    if (lock instanceof In in) {
      return OptionalInt.of(in.player());
    }
    return lock instanceof Out out ? OptionalInt.of(out.player()) : OptionalInt.empty();
  }

  /** Whether a lock is about just this segment: who plays it, and from where to where. */
  static boolean keeps(Lock lock, Segment segment) {
    boolean same =
        lock.relay() == segment.relay()
            && lock.first() == segment.first()
            && lock.last() == segment.last();
    return lock instanceof Exactly exactly
        ? same
            && exactly.player() == segment.player()
            && exactly.skill().stream().allMatch(skill -> skill == segment.skill())
        : same && lock instanceof In in && in.player() == segment.player();
  }

  /** Whether a lock is about just this handoff. */
  static boolean keeps(Lock lock, Handoff handoff) {
    return lock instanceof At at
        && at.relay() == handoff.enters().relay()
        && at.first() == handoff.enters().first()
        && at.last() == handoff.leaves().last();
  }

  /**
   * A handoff.
   *
   * @param first the first stroke of who enters
   * @param last the last stroke of who leaves; the one before {@code first} over a silence
   */
  record At(int relay, int first, int last) implements Lock {}

  /**
   * A segment with just these ends, played by one player alone.
   *
   * @param skill with which of the player's skills; any if empty
   */
  record Exactly(int relay, int player, OptionalInt skill, int first, int last) implements Lock {}

  /** Some segment of the player covers the stretch. */
  record In(int relay, int player, int first, int last) implements Lock {}

  /** No segment of the player touches the stretch. */
  record Out(int relay, int player, int first, int last) implements Lock {}
}
