package stafette.desktop.relay;

/** What somebody does to a lane's name. */
public interface MuteSoloGestures {
  /** A player is silenced, or no longer. */
  void silence(String player);

  /** A player is heard without the others, or no longer. */
  void alone(String player);
}
