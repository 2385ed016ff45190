package stafette.musicxml.share;

import java.util.function.Function;
import stafette.plan.Joins;
import stafette.plan.Player;
import stafette.score.Part;

/**
 * How what players have is marked.
 *
 * @param shortName what others call a player in words over the staff
 * @param partName what a part of the score is called there
 * @param joins how the notes are marked that two players share
 * @param balanced whether louder instruments are marked softer
 * @param pedals whether harps are told how to set their pedals
 */
public record WritingStyle(
    Function<Player, String> shortName,
    Function<Part, String> partName,
    Joins joins,
    boolean balanced,
    boolean pedals) {
  /** As the line is written, with names in full. */
  public static final WritingStyle PLAIN =
      new WritingStyle(Player::name, Part::name, Joins.AS_WRITTEN, false, false);
}
