package stafette.plan.written;

import java.util.Optional;
import stafette.plan.LevelSteps;
import stafette.score.Dynamic;
import stafette.score.Line;
import stafette.score.Words;
import stafette.time.Position;

/**
 * What a player has read last, and still follows when it enters again.
 *
 * @param words for its character, if any
 * @param dynamic if it is one that stands written, not one to which a hairpin led
 * @param until where it has stopped playing
 */
record LastRead(Optional<Words> words, Optional<Dynamic> dynamic, Position until) {
  static final LastRead NOTHING = new LastRead(Optional.empty(), Optional.empty(), Position.START);

  /**
   * Whether a dynamic must be written where the player enters.
   *
   * @param beside where it has something else
   */
  boolean mustHear(Dynamic entering, WrittenPassage passage, Landings beside) {
    Position entry = passage.strokes().get(0).onset();
    return !dynamic.equals(Optional.of(entering))
        || LongRest.isBetween(until, entry, passage.line().bars())
        || beside.hasBetween(passage.line(), until, entry)
        || hasChanged(passage, entry);
  }

  /** Whether the line has had another dynamic since. */
  private boolean hasChanged(WrittenPassage passage, Position entry) {
    Line line = passage.line();
    return line.strokes().stream()
        .filter(stroke -> !stroke.onset().isBefore(until) && stroke.onset().isBefore(entry))
        .map(stroke -> LevelSteps.softer(stroke.dynamic(), passage.softer()))
        .anyMatch(meanwhile -> !dynamic.equals(Optional.of(meanwhile)));
  }
}
