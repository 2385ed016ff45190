package stafette.desktop.playing;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;

/**
 * Who is heard, by the players' names, so that it outlives a change of the plan. A player is heard
 * unless silenced, and only if no others are heard alone; of both wishes the later one holds.
 *
 * @param silenced who is not heard
 * @param alone who is heard without the others; everybody if nobody is named
 */
public record Balance(Set<String> silenced, Set<String> alone) {
  /** All players are heard. */
  public static final Balance EVERYBODY = new Balance(Set.of(), Set.of());

  public Balance {
    silenced = Set.copyOf(silenced);
    alone = Set.copyOf(alone);
  }

  public boolean hears(String player) {
    return !silenced.contains(player) && (alone.isEmpty() || alone.contains(player));
  }

  /** A player is silenced, or no longer if that is so already. */
  public Balance silencing(String player) {
    return silenced.contains(player)
        ? new Balance(without(silenced, player), alone)
        : new Balance(with(silenced, player), without(alone, player));
  }

  /** A player is heard without the others, or no longer if that is so already. */
  public Balance alone(String player) {
    return alone.contains(player)
        ? new Balance(silenced, without(alone, player))
        : new Balance(without(silenced, player), with(alone, player));
  }

  /** What is wished of some players; who has left silences nobody. */
  public Balance among(Collection<String> players) {
    Set<String> silencedHere = new HashSet<>(silenced);
    Set<String> aloneHere = new HashSet<>(alone);
    silencedHere.retainAll(players);
    aloneHere.retainAll(players);
    return new Balance(silencedHere, aloneHere);
  }

  private static Set<String> with(Set<String> names, String name) {
    Set<String> more = new HashSet<>(names);
    more.add(name);
    return more;
  }

  private static Set<String> without(Set<String> names, String name) {
    Set<String> fewer = new HashSet<>(names);
    fewer.remove(name);
    return fewer;
  }
}
