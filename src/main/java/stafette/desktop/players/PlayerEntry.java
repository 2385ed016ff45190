package stafette.desktop.players;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.limits.Saying;
import stafette.limits.Skill;
import stafette.plan.Seat;

/**
 * A player as the panel shows it.
 *
 * @param instrument its name; empty while it is not known
 * @param skills with the limits in force
 * @param said what the player says to manage, by technique
 * @param extras techniques of its instrument that not everybody has
 * @param locked whether what it plays is kept
 * @param hasOther whether the score gives it something in these bars
 * @param countsOther whether that is kept clear
 * @param segments how many it plays in the plan
 */
public record PlayerEntry(
    String name,
    Optional<String> instrument,
    List<Skill> skills,
    Map<String, Saying> said,
    List<Extra> extras,
    boolean locked,
    boolean hasOther,
    boolean countsOther,
    Optional<Seat> seat,
    int segments) {
  /** A technique that not everybody has. */
  public record Extra(String technique, boolean allowed) {}

  public PlayerEntry {
    skills = List.copyOf(skills);
    said = Map.copyOf(said);
    extras = List.copyOf(extras);
  }
}
