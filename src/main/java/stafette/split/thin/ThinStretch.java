package stafette.split.thin;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import stafette.check.alone.ThinnedStroke;
import stafette.check.alone.Thinning;

/**
 * A stretch that has one pattern, and what each keeps of it.
 *
 * @param first number of its first stroke in the line
 * @param last number of its last, included
 * @param wholeBar whether it is a bar that is not cut
 * @param hindered whether the player has something else to play there or lacks a note: then what is
 *     kept of it is no pattern of the part's own, and the one before goes on after it
 * @param place where it begins, for a change of pattern
 * @param kept the strokes that each pattern keeps, from full to empty
 */
record ThinStretch(
    int first,
    int last,
    boolean wholeBar,
    boolean hindered,
    ChangePlace place,
    Map<Thinning, List<ThinnedStroke>> kept) {
  ThinStretch {
    kept = Collections.unmodifiableMap(new EnumMap<>(kept));
  }

  /** How many strokes a pattern leaves out. */
  int leftOut(Thinning pattern) {
    return last - first + 1 - kept(pattern).size();
  }

  List<ThinnedStroke> kept(Thinning pattern) {
    return kept.getOrDefault(pattern, List.of());
  }
}
