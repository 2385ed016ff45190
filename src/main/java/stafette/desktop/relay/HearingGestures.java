package stafette.desktop.relay;

/** Where a plan is to be heard. */
public interface HearingGestures {
  /**
   * From here.
   *
   * @param lineMicros on the line's clock
   */
  void from(long lineMicros);

  /** From the beginning of a segment. */
  void choose(int segment);

  /** This handoff is the one to be heard again and again, if any is. */
  void chooseHandoff(int handoff);
}
