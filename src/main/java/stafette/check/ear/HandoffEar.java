package stafette.check.ear;

import java.util.Optional;
import stafette.plan.Handoff;

/**
 * What one handoff may do to the ear: an estimate, which no cost and no verdict rests on.
 *
 * @param handoff which
 * @param thenDecibel how much louder who enters is than who leaves, each alone
 * @param together what is heard while both play; empty where they share nothing
 * @param distance between their seats; empty unless both are known
 */
public record HandoffEar(
    Handoff handoff, double thenDecibel, Optional<Together> together, Optional<Distance> distance) {
  /**
   * While both play.
   *
   * @param aboveLeavingDecibel how much louder than who leaves alone
   * @param aboveLouderDecibel how much louder than the louder of the two alone
   * @param spread how far their onsets lie apart
   * @param noticeableMillis how far one onset in an even row of this rate must be displaced to be
   *     noticed
   */
  public record Together(
      double aboveLeavingDecibel,
      double aboveLouderDecibel,
      OnsetSpread spread,
      double noticeableMillis) {}

  /**
   * On the stage.
   *
   * @param metres from seat to seat
   * @param delayMillis how late each hears the other
   */
  public record Distance(double metres, double delayMillis) {}
}
