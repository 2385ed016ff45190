package stafette.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stafette.check.alone.Ease;
import stafette.score.Line;
import stafette.time.Movement;
import stafette.time.TempoMark;
import stafette.words.Sentence;
import stafette.work.CheckScore.PassageVerdicts;

/**
 * What speaks against the tempo of a movement: that most of its fast passages are too fast for
 * those for whom they were written.
 */
final class TempoSuspicion {
  /** Fewer passages than that may well be as hard as they look. */
  private static final int LEAST = 4;

  private TempoSuspicion() {}

  /** A sentence for each movement whose tempo may be wrong. */
  static List<Sentence> in(List<PassageVerdicts> reports) {
    Map<Integer, List<PassageVerdicts>> byMovement = new TreeMap<>();
    reports.stream()
        .filter(report -> !report.answers().isEmpty())
        .forEach(
            report ->
                byMovement
                    .computeIfAbsent(
                        movement(report.line()).map(Movement::number).orElse(0),
                        number -> new ArrayList<>())
                    .add(report));
    return byMovement.values().stream().flatMap(same -> about(same).stream()).toList();
  }

  private static Optional<Movement> movement(Line line) {
    return line.bars().movementOf(line.bars().get(line.source().firstBar()));
  }

  private static Optional<Sentence> about(List<PassageVerdicts> movement) {
    List<Line> tooFast =
        movement.stream().filter(TempoSuspicion::isTooFast).map(PassageVerdicts::line).toList();
    if (tooFast.size() < LEAST || 2 * tooFast.size() <= movement.size()) {
      return Optional.empty();
    }
    Sentence said =
        Sentence.of(
            "the tempo may be wrong: {0}, at which {1} of {2} fast passages are beyond their own"
                + " instruments or for the few",
            usual(tooFast), tooFast.size(), movement.size());
    return Optional.of(
        movement(tooFast.get(0)).map(which -> Sentence.of("{0}: {1}", which, said)).orElse(said));
  }

  private static boolean isTooFast(PassageVerdicts report) {
    return report.answers().stream()
        .filter(answer -> answer.ease() == Ease.FOR_THE_FEW || answer.ease() == Ease.BEYOND)
        .anyMatch(answer -> answer.fastestTempo().isPresent());
  }

  /** The tempo of most of them, the first of equals. */
  private static TempoMark usual(List<Line> lines) {
    Map<TempoMark, Integer> counts = new LinkedHashMap<>();
    lines.forEach(line -> counts.merge(line.tempo().at(line.stroke(0).onset()), 1, Integer::sum));
    return counts.entrySet().stream()
        .reduce((one, other) -> other.getValue() > one.getValue() ? other : one)
        .map(Map.Entry::getKey)
        .orElseThrow();
  }
}
