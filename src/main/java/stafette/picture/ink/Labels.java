package stafette.picture.ink;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sets words where nothing else stands, or leaves them out. */
public final class Labels {
  private static final double AIR = 1;

  private final Box room;
  private final List<Box> taken = new ArrayList<>();

  /** Words stay within a room. */
  public Labels(Box room) {
    this.room = room;
  }

  public void take(Box box) {
    taken.add(box);
  }

  /** The first of some words that fits; what it takes is taken from then on. */
  public Optional<Mark.Lettering> first(List<Mark.Lettering> choices) {
    for (Mark.Lettering words : choices) {
      Box box = words.bounds();
      if (room.holds(box) && taken.stream().noneMatch(box.grownBy(AIR)::overlaps)) {
        taken.add(box);
        return Optional.of(words);
      }
    }
    return Optional.empty();
  }
}
