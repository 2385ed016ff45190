package stafette.desktop.players;

import java.util.Optional;
import stafette.limits.Saying;
import stafette.plan.Seat;

/** What somebody settles about players. */
public interface PlayerGestures {
  /** One more; its instrument is taken from its name. */
  void add(String name);

  /** Whether the score or the name tells what a player plays. */
  boolean isTold(String name);

  void remove(String name);

  /**
   * Another place among the players, of whom the first are preferred.
   *
   * @param places downward; above if below zero
   */
  void move(String name, int places);

  /** What a player plays, where the name doesn't say. */
  void plays(String name, String instrument);

  /** Whether what it plays in the plan is kept. */
  void lock(String name, boolean kept);

  /** Whether what the score gives it is kept clear. */
  void countOther(String name, boolean counts);

  /** Whether it may use a technique that not everybody has. */
  void allow(String name, String technique, boolean allowed);

  void sit(String name, Optional<Seat> seat);

  /**
   * A player's own limits.
   *
   * @param peak for a moment, in strokes per second
   * @param sustained what can go on
   * @param staminaStrokes beyond what can go on, from fresh to spent
   */
  void measured(
      String name, String technique, double peak, double sustained, double staminaStrokes);

  /**
   * What a player says to manage with a technique.
   *
   * @param saying nothing any more if empty
   */
  void says(String name, String technique, Optional<Saying> saying);
}
