package stafette.desktop.playing;

import java.util.Optional;
import java.util.OptionalInt;
import stafette.plan.Plan;

/**
 * What somebody wants to hear of a plan.
 *
 * @param fromMicros from where, on the line's clock
 * @param handoff the one that was chosen, by its number in the plan; empty if the next one from
 *     there is meant
 * @param again whether only that handoff is heard, again and again
 * @param percent how fast, of the plan's own tempo
 * @param behind whether the rest of the score is heard softly behind the players
 * @param byOne whether the line is heard as if one player could play all of it
 * @param balance which players are heard
 */
public record HearingWish(
    long fromMicros,
    OptionalInt handoff,
    boolean again,
    int percent,
    boolean behind,
    boolean byOne,
    Balance balance) {
  public static final int SLOWEST_PERCENT = 25;
  public static final int FASTEST_PERCENT = 150;

  /** All players from the beginning at the plan's own tempo. */
  public static final HearingWish PLAIN =
      new HearingWish(0, OptionalInt.empty(), false, 100, false, false, Balance.EVERYBODY);

  /**
   * @throws IllegalArgumentException if it is slower or faster than offered
   */
  public HearingWish {
    if (percent < SLOWEST_PERCENT || percent > FASTEST_PERCENT) {
      throw new IllegalArgumentException(percent + " per cent is not offered");
    }
  }

  /** From another place, and with the handoff that comes next from there. */
  public HearingWish from(long lineMicros) {
    return new HearingWish(lineMicros, OptionalInt.empty(), again, percent, behind, byOne, balance);
  }

  public HearingWish withHandoff(int number) {
    return new HearingWish(
        fromMicros, OptionalInt.of(number), again, percent, behind, byOne, balance);
  }

  public HearingWish again(boolean now) {
    return new HearingWish(fromMicros, handoff, now, percent, behind, byOne, balance);
  }

  public HearingWish at(int otherPercent) {
    return new HearingWish(fromMicros, handoff, again, otherPercent, behind, byOne, balance);
  }

  public HearingWish behind(boolean now) {
    return new HearingWish(fromMicros, handoff, again, percent, now, byOne, balance);
  }

  public HearingWish byOne(boolean now) {
    return new HearingWish(fromMicros, handoff, again, percent, behind, now, balance);
  }

  public HearingWish with(Balance other) {
    return new HearingWish(fromMicros, handoff, again, percent, behind, byOne, other);
  }

  /** The handoff that would be heard again and again; empty if the plan has none. */
  public OptionalInt handoffIn(Plan plan) {
    return handoff.isPresent() && handoff.getAsInt() < plan.handoffs().size()
        ? handoff
        : LoopStretch.handoffFrom(plan, fromMicros);
  }

  /** What is heard again and again, if that is wished. */
  public Optional<LoopStretch> stretch(Plan plan) {
    OptionalInt number = handoffIn(plan);
    return again && number.isPresent()
        ? Optional.of(LoopStretch.round(plan, number.getAsInt()))
        : Optional.empty();
  }
}
