package stafette.check.alone;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stafette.score.Line;
import stafette.score.Tone;

/**
 * Where the harmony of a line changes, read from the line alone: where tones that were repeated
 * give way to others that are repeated, and, as far as bars go, where a bar has other notes than
 * the bar before.
 */
public final class Harmony {
  private static final int OCTAVE = 12;

  private Harmony() {}

  /**
   * Whether a stroke begins a new harmony: repeated tones, or a bar of other notes than the line's
   * bar before, octaves aside. Within a bar of figuration, where every note is new, none does.
   */
  public static boolean beginsAt(Line line, int j) {
    return changesAt(line, j) || (j > 0 && !same(line, j - 1, j) && barHasOtherNotes(line, j));
  }

  private static boolean barHasOtherNotes(Line line, int j) {
    return bar(line, j) != bar(line, j - 1) && !notesOfBar(line, j).equals(notesOfBar(line, j - 1));
  }

  private static Set<Integer> notesOfBar(Line line, int j) {
    return IntStream.range(0, line.count())
        .filter(other -> bar(line, other) == bar(line, j))
        .boxed()
        .flatMap(other -> keys(line, other).stream())
        .map(key -> key < 0 ? key : key % OCTAVE)
        .collect(Collectors.toSet());
  }

  private static int bar(Line line, int j) {
    return line.bars().at(line.stroke(j).onset()).index();
  }

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
