package stafette.score;

/**
 * One voice of one staff, from which a line takes notes.
 *
 * @param staff counted from 1
 * @param voice its name
 */
public record Strand(int staff, String voice) {
  static Strand of(Voice voice) {
    return new Strand(voice.staff(), voice.name());
  }
}
