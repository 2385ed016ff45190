package stafette.score;

import java.util.List;

/**
 * What is written in one voice of one staff.
 *
 * @param staff counted from 1
 * @param name as the score has it, mostly a number
 * @param strokes by onset
 */
public record Voice(int staff, String name, List<Stroke> strokes) {
  public Voice {
    strokes = List.copyOf(strokes);
  }
}
