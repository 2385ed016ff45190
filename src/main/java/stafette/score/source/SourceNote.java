package stafette.score.source;

import java.util.Optional;
import stafette.score.Tone;
import stafette.time.Position;

/**
 * A note of the page from which a line was taken.
 *
 * @param at where it is struck
 * @param tone as it sounds
 * @param staff counted from 1
 * @param voice its voice's name
 * @param became what it has become
 * @param octaves by how many it was moved, upwards; 0 if it was not
 * @param by the name of the part that has it instead, if some other has it
 */
public record SourceNote(
    Position at,
    Tone tone,
    int staff,
    String voice,
    Became became,
    int octaves,
    Optional<String> by) {
  /** What becomes of a note. */
  public enum Became {
    /** It is a note of the line. */
    TAKEN,
    /** It is a note of the line in another octave. */
    MOVED,
    /** It is none of the line; another part strikes it there. */
    GIVEN,
    /** Nobody has it. */
    OMITTED
  }
}
