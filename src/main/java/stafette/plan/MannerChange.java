package stafette.plan;

import stafette.score.Attack;
import stafette.score.Manner;

/**
 * How long a player needs between one way of playing that the score asks for and another. The times
 * are a judgement (common practice, no source).
 */
final class MannerChange {
  private static final long FINGER_AND_BOW_MICROS = 700_000;
  private static final long MUTE_OFF_MICROS = 3_000_000;
  private static final long MUTE_ON_MICROS = 4_000_000;

  private MannerChange() {}

  /** The least silence between the two; 0 where nothing changes. */
  static long micros(Manner before, Manner after) {
    long attack = attack(before).equals(attack(after)) ? 0 : FINGER_AND_BOW_MICROS;
    long mute = before.muted() ? MUTE_OFF_MICROS : MUTE_ON_MICROS;
    return before.muted() == after.muted() ? attack : Math.max(attack, mute);
  }

  /** A trill and flutter-tonguing need no change of grip. */
  private static Attack attack(Manner manner) {
    return switch (manner.attack()) {
      case PLUCKED, STRUCK_WITH_WOOD, DRAWN_WITH_WOOD -> manner.attack();
      case PLAIN, FLUTTERED, TRILLED -> Attack.PLAIN;
    };
  }
}
