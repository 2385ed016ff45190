package stafette.repertoire;

import java.util.ArrayList;
import java.util.List;
import stafette.limits.Demand;
import stafette.score.Attack;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Score;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.score.Voice;
import stafette.time.Span;

/**
 * The fast stretches of a part by a fixed rule that no table of limits has a say in: maximal runs
 * in one voice, attacked alike, of at least eight strokes, every gap under a sixth of a second,
 * half of them no longer than a seventh.
 */
final class FastStretches {
  private static final int LEAST_STROKES = 8;
  private static final double LONGEST_GAP_SECONDS = 1 / 6.0;
  private static final double LEAST_USUAL_PER_SECOND = 7;

  private FastStretches() {}

  static List<Line> of(Score score, Part part) {
    List<Line> found = new ArrayList<>();
    for (Voice voice : part.voices()) {
      List<Stroke> strokes = voice.strokes();
      int first = 0;
      for (int j = 1; j <= strokes.size(); j++) {
        if (j == strokes.size() || !goesOn(score, strokes.get(j - 1), strokes.get(j))) {
          if (j - first >= LEAST_STROKES && strokes.get(first).measured()) {
            found.add(score.line(part, voice, strokes.subList(first, j), new ToneChoice.All()));
          }
          first = j;
        }
      }
    }
    found.removeIf(line -> Demand.usualRatePerSecond(line) < LEAST_USUAL_PER_SECOND - 1e-6);
    return found;
  }

  private static boolean goesOn(Score score, Stroke before, Stroke stroke) {
    return before.measured()
        && stroke.measured()
        && attack(before) == attack(stroke)
        && score.tempo().secondsOf(new Span(before.onset(), stroke.onset())).toDouble()
            < LONGEST_GAP_SECONDS
        && score
            .bars()
            .movementOf(score.bars().at(before.onset()))
            .equals(score.bars().movementOf(score.bars().at(stroke.onset())));
  }

  private static Attack attack(Stroke stroke) {
    return stroke.manner().attack();
  }
}
