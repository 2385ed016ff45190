package stafette.check.alone;

import java.util.Set;
import java.util.stream.Collectors;
import stafette.score.Line;
import stafette.score.Tone;

/**
 * Where the harmony of a line of repeated notes changes: where tones that were repeated give way to
 * others that are repeated. In figuration, where every note is new, none does.
 */
final class Harmony {
  private Harmony() {}

  static boolean changesAt(Line line, int j) {
    return j > 0
        && j + 1 < line.count()
        && !same(line, j - 1, j)
        && same(line, j, j + 1)
        && (j == 1 || same(line, j - 2, j - 1));
  }

  /** The latest stroke up to {@code j} in its beat that begins the beat or a new harmony. */
  static int countedFrom(Line line, int j) {
    int from = j;
    while (!changesAt(line, from) && line.sameBeat(from)) {
      from--;
    }
    return from;
  }

  private static boolean same(Line line, int one, int other) {
    return keys(line, one).equals(keys(line, other));
  }

  private static Set<Integer> keys(Line line, int j) {
    return line.stroke(j).tones().stream().map(Tone::key).collect(Collectors.toSet());
  }
}
