package stafette.sound;

import java.util.List;
import stafette.plan.Player;
import stafette.score.Dynamic;
import stafette.score.Stroke;

/**
 * Dynamics and levels as MIDI has them. General MIDI makes a sound's amplitude go with the square
 * of volume and velocity: 40 · log10(value / 127) decibels (MIDI Manufacturers Association,
 * "General MIDI System Level 1 Developer Guidelines", from memory).
 */
final class Loudness {
  private static final int FULL_VOLUME = 100;
  private static final int ACCENT = 14;
  private static final int MOST = 127;

  private Loudness() {}

  /** The velocity of a stroke; the steps from dynamic to dynamic are our own choice. */
  static int velocity(Stroke stroke) {
    return Math.min(MOST, plain(stroke.dynamic()) + (stroke.accented() ? ACCENT : 0));
  }

  private static int plain(Dynamic dynamic) {
    return switch (dynamic) {
      case PPP -> 28;
      case PP -> 40;
      case P -> 52;
      case MP -> 64;
      case MF -> 76;
      case F -> 90;
      case FF -> 104;
      case FFF -> 116;
    };
  }

  /** The volume of a player's channel, by the level of the instrument beside the loudest one's. */
  static int volume(Player player, List<Player> all) {
    double loudest = all.stream().mapToDouble(p -> p.instrument().levelDecibel()).max().orElse(0);
    double below = player.instrument().levelDecibel() - loudest;
    return (int) Math.max(1, Math.round(FULL_VOLUME * Math.pow(10, below / 40)));
  }
}
