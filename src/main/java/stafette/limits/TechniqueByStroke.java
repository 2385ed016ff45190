package stafette.limits;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import stafette.score.Attack;
import stafette.score.Line;
import stafette.score.Stroke;

/**
 * Which technique each stroke of a line is made with. It is chosen once for a line and a player, on
 * the tables' means at the line's tempo, so that no share of the population and no segment changes
 * it: of those that apply to a stroke one that takes precedence, else the one with the highest
 * sustained rate, then the highest peak, then one for groups of three, then the first in the table.
 */
final class TechniqueByStroke {
  static final int NONE = -1;

  private final List<Technique> techniques;
  private final Line line;

  private TechniqueByStroke(List<Technique> techniques, Line line) {
    this.techniques = techniques;
    this.line = line;
  }

  /** For each stroke the index of its technique, {@link #NONE} where none applies. */
  static int[] of(List<Technique> techniques, Line line) {
    TechniqueByStroke choice = new TechniqueByStroke(techniques, line);
    return IntStream.range(0, line.count()).map(choice::best).toArray();
  }

  private int best(int j) {
    OptionalInt best =
        IntStream.range(0, techniques.size())
            .filter(index -> applies(techniques.get(index), line, j))
            .reduce(
                (one, other) -> isBetter(techniques.get(other), techniques.get(one)) ? other : one);
    return best.orElse(NONE);
  }

  private static boolean isBetter(Technique one, Technique other) {
    if (one.takesPrecedence() != other.takesPrecedence()) {
      return one.takesPrecedence();
    }
    Limit limit = one.limit();
    int bySustained =
        Double.compare(limit.sustainedPerSecond(), other.limit().sustainedPerSecond());
    int byPeak = Double.compare(limit.peakPerSecond(), other.limit().peakPerSecond());
    if (bySustained != 0 || byPeak != 0) {
      return bySustained != 0 ? bySustained > 0 : byPeak > 0;
    }
    return one.groups() == Groups.THREES && other.groups() != Groups.THREES;
  }

  /** Whether a stroke can be made with a technique at all. */
  static boolean applies(Technique technique, Line line, int j) {
    return mannerFits(technique.act(), line.stroke(j))
        && pitchesFit(technique.pitches(), line, j)
        && slursFit(technique.slurs(), line.stroke(j))
        && (technique.groups() != Groups.THREES || line.goesInThrees(j))
        && isFastEnough(technique.lowestPerSecond(), line, j);
  }

  /** What is plucked is not bowed; the wood strikes only where the score says so. */
  private static boolean mannerFits(Act act, Stroke stroke) {
    return switch (act) {
      case BOW -> !stroke.manner().isPlucked();
      case WOOD -> stroke.manner().attack() == Attack.STRUCK_WITH_WOOD;
      default -> true;
    };
  }

  private static boolean pitchesFit(Technique.Pitches pitches, Line line, int j) {
    return switch (pitches) {
      case ANY -> true;
      case REPEATED -> isRepeated(line, j);
      case MOVING -> !isRepeated(line, j);
      case ALTERNATING -> alternates(line, j);
    };
  }

  /** Whether a stroke is one of four that go to and fro between two notes. */
  private static boolean alternates(Line line, int j) {
    return IntStream.rangeClosed(Math.max(0, j - 3), Math.min(j, line.count() - 4))
        .anyMatch(
            i ->
                line.stroke(i).leapsTo(line.stroke(i + 1))
                    && line.stroke(i).isLike(line.stroke(i + 2))
                    && line.stroke(i + 1).isLike(line.stroke(i + 3)));
  }

  /** Whether a stroke is like the one before or after it. */
  private static boolean isRepeated(Line line, int j) {
    return (j > 0 && line.stroke(j).isLike(line.stroke(j - 1)))
        || (j + 1 < line.count() && line.stroke(j).isLike(line.stroke(j + 1)));
  }

  private static boolean slursFit(Technique.SlurUse slurs, Stroke stroke) {
    return slurs == Technique.SlurUse.ANY || (slurs == Technique.SlurUse.ALL) == stroke.slurred();
  }

  /** By the gap that the stroke ends; of the first one, the gap that it begins. */
  private static boolean isFastEnough(double lowestPerSecond, Line line, int j) {
    if (lowestPerSecond == 0) {
      return true;
    }
    int from = Math.max(0, j - 1);
    return from + 1 < line.count()
        && (line.onsetMicros(from + 1) - line.onsetMicros(from)) * lowestPerSecond
            <= 1e6 * (1 + 1e-9);
  }
}
