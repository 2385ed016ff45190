package stafette.desktop.relay;

/**
 * What somebody does to a plan on the screen. Segments and handoffs are numbered as in the plan;
 * strokes as in the line of their relay.
 */
public interface RelayGestures {
  /** The two ends of an overlap. */
  enum HandoffEnd {
    /** Where the overlap begins: the first stroke of who enters. */
    ENTERS,
    /** Where it ends: the landing note of who leaves. */
    LEAVES,
    /** Both together. */
    BOTH
  }

  /**
   * An end of a handoff is dragged.
   *
   * @param end which; for both, {@code stroke} is the landing note
   * @param done false while dragging: the plan is shown but not yet kept
   */
  void moveHandoff(int handoff, HandoffEnd end, int stroke, boolean done);

  /** A drag is given up. */
  void cancelMove();

  /** A segment is given to another player. */
  void give(int segment, int player);

  /** A segment is divided before a stroke. */
  void split(int segment, int stroke);

  /** The two turns of a handoff become one. */
  void join(int handoff);

  void lockHandoff(int handoff);

  void lockSegment(int segment);

  /** A segment is dealt out between two players in turn, or played by one again. */
  void hocket(int segment);

  /**
   * It is to play from here.
   *
   * @param lineMicros on the line's clock
   */
  void playFrom(long lineMicros);

  /** A segment is chosen; others follow. */
  void chosen(int segment);

  /** A handoff is chosen. */
  void chosenHandoff(int handoff);

  /**
   * What does not work is to be mended.
   *
   * @param finding as the judge numbers them, from 0
   */
  void mend(int finding);

  /** All that is to be said of the plan is to be seen. */
  void askWhy();
}
