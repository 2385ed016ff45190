package stafette.picture.notes;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import stafette.picture.ink.Mark;

/** How far the ink of each note reaches; it grows while signs are added to the notes. */
final class Reaches {
  private final IdentityHashMap<NotatedItem, InkReach> reaches = new IdentityHashMap<>();

  /**
   * How far one note reaches.
   *
   * @param top its highest ink, in points
   * @param bottom its lowest
   * @param up whether its stem goes up
   */
  record InkReach(double top, double bottom, boolean up) {}

  /** The reach of heads, stems and beams. */
  Reaches(List<StemGroup> groups, double space) {
    for (StemGroup group : groups) {
      for (int i = 0; i < group.notes().size(); i++) {
        double top = Math.min(group.end(i), group.far(i)) - space * 0.5;
        double bottom = Math.max(group.end(i), group.far(i)) + space * 0.5;
        reaches.put(group.notes().get(i), new InkReach(top, bottom, group.up()));
      }
    }
  }

  InkReach of(NotatedItem note) {
    return Optional.ofNullable(reaches.get(note)).orElseThrow();
  }

  /** From now on these marks are the note's too. */
  void grow(NotatedItem note, List<Mark> marks) {
    InkReach before = of(note);
    double top = before.top();
    double bottom = before.bottom();
    for (Mark mark : marks) {
      top = Math.min(top, mark.bounds().top());
      bottom = Math.max(bottom, mark.bounds().bottom());
    }
    reaches.put(note, new InkReach(top, bottom, before.up()));
  }
}
