package stafette.plan;

import java.util.OptionalInt;
import java.util.function.Function;

/** What a plan must keep. Strokes are those of one relay's line; players are indices. */
public sealed interface Lock {
  /** Which relay it is about. */
  int relay();

  /** The first stroke it is about. */
  int first();

  /** The last one, included. */
  int last();

  /** Applies the function of the kind at hand. */
  <T> T match(
      Function<? super At, ? extends T> at,
      Function<? super Exactly, ? extends T> exactly,
      Function<? super In, ? extends T> in,
      Function<? super Out, ? extends T> out);

  /** Whom a lock is about; nobody, if it is about a handoff. */
  static OptionalInt player(Lock lock) {
    return lock.match(
        at -> OptionalInt.empty(),
        exactly -> OptionalInt.of(exactly.player()),
        in -> OptionalInt.of(in.player()),
        out -> OptionalInt.of(out.player()));
  }

  /** Who must play by a lock; nobody, if it is about a handoff or leaves somebody out. */
  static OptionalInt playing(Lock lock) {
    return lock.match(
        at -> OptionalInt.empty(),
        exactly -> OptionalInt.of(exactly.player()),
        in -> OptionalInt.of(in.player()),
        out -> OptionalInt.empty());
  }

  /** Whether a lock is about just this segment: who plays it, and from where to where. */
  static boolean keeps(Lock lock, Segment segment) {
    return lock.relay() == segment.relay()
        && lock.first() == segment.first()
        && lock.last() == segment.last()
        && playing(lock).equals(OptionalInt.of(segment.player()))
        && lock.match(
            at -> false,
            exactly -> exactly.way().stream().allMatch(way -> way == segment.way()),
            in -> true,
            out -> false);
  }

  /** Whether a lock is about just this handoff. */
  static boolean keeps(Lock lock, Handoff handoff) {
    return lock.match(
        at ->
            at.relay() == handoff.enters().relay()
                && at.first() == handoff.enters().first()
                && at.last() == handoff.leaves().last(),
        exactly -> false,
        in -> false,
        out -> false);
  }

  /**
   * A handoff.
   *
   * @param first the first stroke of who enters
   * @param last the last stroke of who leaves; the one before {@code first} over a silence
   */
  record At(int relay, int first, int last) implements Lock {
    @Override
    public <T> T match(
        Function<? super At, ? extends T> at,
        Function<? super Exactly, ? extends T> exactly,
        Function<? super In, ? extends T> in,
        Function<? super Out, ? extends T> out) {
      return at.apply(this);
    }
  }

  /**
   * A segment with just these ends, played by one player alone.
   *
   * @param way with which of the player's ways; any if empty
   */
  record Exactly(int relay, int player, OptionalInt way, int first, int last) implements Lock {
    @Override
    public <T> T match(
        Function<? super At, ? extends T> at,
        Function<? super Exactly, ? extends T> exactly,
        Function<? super In, ? extends T> in,
        Function<? super Out, ? extends T> out) {
      return exactly.apply(this);
    }
  }

  /** Some segment of the player covers the stretch. */
  record In(int relay, int player, int first, int last) implements Lock {
    @Override
    public <T> T match(
        Function<? super At, ? extends T> at,
        Function<? super Exactly, ? extends T> exactly,
        Function<? super In, ? extends T> in,
        Function<? super Out, ? extends T> out) {
      return in.apply(this);
    }
  }

  /** No segment of the player touches the stretch. */
  record Out(int relay, int player, int first, int last) implements Lock {
    @Override
    public <T> T match(
        Function<? super At, ? extends T> at,
        Function<? super Exactly, ? extends T> exactly,
        Function<? super In, ? extends T> in,
        Function<? super Out, ? extends T> out) {
      return out.apply(this);
    }
  }
}
