package stafette.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sets words where nothing else stands, or leaves them out. */
final class Labels {
  private static final double AIR = 1;

  private final Box room;
  private final List<Box> taken = new ArrayList<>();

  /** Words stay within a room. */
  Labels(Box room) {
    this.room = room;
  }

  void take(Box box) {
    taken.add(box);
  }

  /** The first of some words that fits; what it takes is taken from then on. */
  Optional<Mark.Words> first(List<Mark.Words> choices) {
    for (Mark.Words words : choices) {
      Box box = words.bounds();
      if (room.holds(box) && taken.stream().noneMatch(box.grownBy(AIR)::overlaps)) {
        taken.add(box);
        return Optional.of(words);
      }
    }
    return Optional.empty();
  }
}
