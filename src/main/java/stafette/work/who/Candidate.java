package stafette.work.who;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import stafette.ask.PlayerWish;
import stafette.chairs.Chair;
import stafette.plan.Player;
import stafette.words.Sentence;

/**
 * Somebody who might play a line, or some of it.
 *
 * @param wish how to ask for it
 * @param player with its limits, and what the score gives it
 * @param chair where it sits; empty for who is not in the score
 * @param stretches how many manage each stretch of the line, in order
 * @param within the strokes that are within its range
 * @param free those of them at which it has nothing else to play, and time to get ready
 * @param managed those of them in stretches that so many manage as were asked for
 * @param strain the share of the peak rate that the best technique needs for these; infinite
 *     without one
 * @param register where in its range the line lies, and how loud it is there
 * @param busy what it has to play in the bars of the line; empty if nothing
 * @param before what comes right before the line for it, if that matters
 * @param after what comes right after it, if that matters
 * @param levelDecibel how much louder it is in that register than the instrument that has the line;
 *     empty where that is not known
 * @param blend how far its sound is from that, in points of the weights; 0 where that is not known
 * @param written how it is written, if not as it sounds
 */
public record Candidate(
    PlayerWish wish,
    Player player,
    Optional<Chair> chair,
    List<StretchShare> stretches,
    BitSet within,
    BitSet free,
    BitSet managed,
    double strain,
    Sentence register,
    Optional<Sentence> busy,
    Optional<Sentence> before,
    Optional<Sentence> after,
    Optional<Double> levelDecibel,
    int blend,
    Optional<Sentence> written) {
  public Candidate {
    stretches = List.copyOf(stretches);
  }

  /**
   * A stretch of the line.
   *
   * @param bars "5-8", as printed
   * @param share how many of 100 manage those of its notes that are within the range
   * @param inRange whether all of its notes are within the range
   */
  public record StretchShare(String bars, int share, boolean inRange) {}

  /** Whether so many as were asked for manage something of the line. */
  public boolean isAble() {
    return !managed.isEmpty();
  }

  /** Whether it has nothing else to play in the bars of the line. */
  public boolean isFree() {
    return busy.isEmpty();
  }

  /** The bare name of what it plays: "clarinet" for one in whatever key. */
  String kind() {
    return player.instrument().bareName();
  }

  boolean isInScore() {
    return chair.isPresent();
  }
}
