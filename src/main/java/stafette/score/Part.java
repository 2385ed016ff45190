package stafette.score;

import java.util.List;

/**
 * One part of the score.
 *
 * @param id the score's own, such as "P1"
 * @param name as printed
 * @param instruments other names by which its instrument may be known, best first: an instrument
 *     sound's id, an instrument's name
 * @param voices by staff, then in order of appearance
 * @param keys its key signatures, as they sound
 * @param marks what stands beside its notes
 */
public record Part(
    String id,
    String name,
    List<String> instruments,
    List<Voice> voices,
    Keys keys,
    PartMarks marks) {
  /** A part without key signatures, and nothing but notes. */
  public Part(String id, String name, List<String> instruments, List<Voice> voices) {
    this(id, name, instruments, voices, Keys.NONE, PartMarks.NONE);
  }

  public Part {
    instruments = List.copyOf(instruments);
    voices = List.copyOf(voices);
  }
}
