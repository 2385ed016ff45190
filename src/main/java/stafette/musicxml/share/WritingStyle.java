package stafette.musicxml.share;

import java.util.function.Function;
import stafette.plan.Joins;
import stafette.plan.Player;
import stafette.plan.SourceTreatment;
import stafette.plan.WrittenAs;
import stafette.score.Part;

/**
 * How what players have is marked.
 *
 * @param shortName what others call a player in words over the staff
 * @param partName what a part of the score is called there
 * @param how what is marked for its players
 */
public record WritingStyle(
    Function<Player, String> shortName, Function<Part, String> partName, WrittenAs how) {
  /** As the line is written, with names in full. */
  public static final WritingStyle PLAIN =
      new WritingStyle(
          Player::name,
          Part::name,
          new WrittenAs(SourceTreatment.KEEP, Joins.AS_WRITTEN, false, false));
}
