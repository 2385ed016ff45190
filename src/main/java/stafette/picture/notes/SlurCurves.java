package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import stafette.picture.ink.Mark;

/** Ties and slurs; where they come from the row before, or go on in the next, half of them. */
final class SlurCurves {
  /** How far half a tie reaches beyond its note, in spaces. */
  private static final double HALF_TIE = 1.3;

  private final Staff staff;
  private final BarRow row;
  private final List<NotatedItem> written;
  private final Reaches reaches;

  SlurCurves(Staff staff, BarRow row, List<NotatedItem> written, Reaches reaches) {
    this.staff = staff;
    this.row = row;
    this.written = written;
    this.reaches = reaches;
  }

  List<Mark> ties() {
    List<Mark> ties = new ArrayList<>();
    double space = staff.space();
    for (int i = 0; i < written.size(); i++) {
      NotatedItem note = written.get(i);
      if (note.isRest()) {
        continue;
      }
      double left = row.x(note.onset());
      if (i == 0 && !note.attacks()) {
        ties.add(tie(note, left - HALF_TIE * space, left - 0.1 * space));
      }
      if (note.tiedOn()) {
        double from = left + (note.form().headWidth() + 0.1) * space;
        double to = Math.min(row.right() + 0.3 * space, row.x(note.span().end()) - 0.1 * space);
        ties.add(tie(note, from, Math.max(to, from + space)));
      }
    }
    return ties;
  }

  private Mark tie(NotatedItem note, double left, double right) {
    Reaches.InkReach reach = reaches.of(note);
    double away = 0.15 * staff.space();
    double y = reach.up() ? reach.bottom() + away : reach.top() - away;
    return Signs.arc(left, right, y, reach.up() ? 1 : -1, staff.space());
  }

  List<Mark> slurs() {
    List<Mark> slurs = new ArrayList<>();
    List<NotatedItem> open = new ArrayList<>();
    for (NotatedItem note : written) {
      if (note.isRest() || (note.attacks() && !note.sound().slurred())) {
        addSlur(open, slurs);
        open.clear();
      }
      if (!note.isRest() && (note.sound().slurred() || note.sound().slurContinues())) {
        open.add(note);
      }
    }
    addSlur(open, slurs);
    return slurs;
  }

  private void addSlur(List<NotatedItem> notes, List<Mark> slurs) {
    if (notes.size() < 2) {
      return;
    }
    List<Reaches.InkReach> all = notes.stream().map(reaches::of).toList();
    boolean below = all.stream().allMatch(Reaches.InkReach::up);
    double away = 0.3 * staff.space();
    double y =
        below
            ? all.stream().mapToDouble(Reaches.InkReach::bottom).max().orElseThrow() + away
            : all.stream().mapToDouble(Reaches.InkReach::top).min().orElseThrow() - away;
    double half = Signs.HEAD / 2 * staff.space();
    double left = row.x(notes.get(0).onset()) + half;
    double right = row.x(notes.get(notes.size() - 1).onset()) + half;
    Mark slur = Signs.arc(left, right, y, below ? 1 : -1, staff.space());
    notes.forEach(note -> reaches.grow(note, List.of(slur)));
    slurs.add(slur);
  }
}
