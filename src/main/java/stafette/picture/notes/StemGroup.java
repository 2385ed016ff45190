package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import stafette.notation.TremoloSign;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;

/**
 * Notes under one beam, or a single note: which way its stems go, where they end, and their beams
 * or flags.
 */
final class StemGroup {
  private static final int UNMEASURED = 3;
  private static final double STEM = 0.13;
  private static final double STEM_LENGTH = 3.3;
  private static final double SHORTEST_STEM = 2.3;
  private static final double BEAM = 0.46;
  private static final double BEAM_STEP = 0.72;
  private static final double MOST_SLANT = 1;
  private static final double STUB = 1.1;

  /** What beams do at a note, as items say it. */
  private static final String BEGIN = "begin";

  private static final String CONTINUE = "continue";
  private static final String END = "end";
  private static final String FORWARD = "forward hook";
  private static final String BACKWARD = "backward hook";

  private final Staff staff;
  private final List<NotatedItem> notes;
  private final BarRow row;
  private final boolean up;
  private final double[] ends;

  StemGroup(Staff staff, List<NotatedItem> notes, BarRow row) {
    this.staff = staff;
    this.notes = List.copyOf(notes);
    this.row = row;
    int highest = notes.stream().mapToInt(note -> highest(staff, note)).max().orElseThrow();
    int lowest = notes.stream().mapToInt(note -> lowest(staff, note)).min().orElseThrow();
    up = highest + lowest < 8;
    ends = ends();
  }

  /** All notes, those of a beam together. */
  static List<StemGroup> of(List<NotatedItem> written, Staff staff, BarRow row) {
    List<StemGroup> groups = new ArrayList<>();
    List<NotatedItem> open = new ArrayList<>();
    for (NotatedItem next : written) {
      if (!next.isRest()) {
        open.add(next);
        if (!next.hasBeam(BEGIN) && !next.hasBeam(CONTINUE)) {
          groups.add(new StemGroup(staff, open, row));
          open.clear();
        }
      }
    }
    return groups;
  }

  static int highest(Staff staff, NotatedItem note) {
    return note.sound().tones().stream().mapToInt(staff::step).max().orElseThrow();
  }

  static int lowest(Staff staff, NotatedItem note) {
    return note.sound().tones().stream().mapToInt(staff::step).min().orElseThrow();
  }

  List<NotatedItem> notes() {
    return notes;
  }

  boolean up() {
    return up;
  }

  boolean isBeamed() {
    return notes.size() > 1;
  }

  /** Where the stem, beams included, ends. */
  double end(int index) {
    return ends[index];
  }

  /** The head farthest from the stem's end. */
  double far(int index) {
    NotatedItem note = notes.get(index);
    return staff.y(up ? lowest(staff, note) : highest(staff, note));
  }

  double stemX(int index) {
    NotatedItem note = notes.get(index);
    double inset = STEM / 2 * staff.space();
    double left = row.x(note.onset());
    return up ? left + note.form().headWidth() * staff.space() - inset : left + inset;
  }

  /** The middle of the stem. */
  double middle(int index) {
    return (near(index) + ends[index]) / 2;
  }

  /** How far below the middle of all one of some slashes lies. */
  double slashOffset(int slash, int count) {
    return (slash - (count - 1) / 2.0) * BEAM_STEP * staff.space();
  }

  private double near(int index) {
    NotatedItem note = notes.get(index);
    return staff.y(up ? highest(staff, note) : lowest(staff, note));
  }

  private int direction() {
    return up ? -1 : 1;
  }

  private double naturalEnd(int index) {
    double extra = Math.max(0, notes.get(index).form().beams() - 2) * BEAM_STEP;
    double end = near(index) + direction() * (STEM_LENGTH + extra) * staff.space();
    return up ? Math.min(end, staff.middle()) : Math.max(end, staff.middle());
  }

  private double[] ends() {
    int last = notes.size() - 1;
    double[] result = new double[notes.size()];
    if (last == 0) {
      result[0] = naturalEnd(0);
      return result;
    }
    double most = Math.min(MOST_SLANT * staff.space(), 0.18 * (stemX(last) - stemX(0)));
    double slant = Math.max(-most, Math.min(most, naturalEnd(last) - naturalEnd(0)));
    double shift = 0;
    for (int i = 0; i <= last; i++) {
      double way = (stemX(i) - stemX(0)) / Math.max(0.01, stemX(last) - stemX(0));
      result[i] = naturalEnd(0) + slant * way;
      double beams = Math.max(0, notes.get(i).form().beams() - 1) * BEAM_STEP;
      double needed = near(i) + direction() * (SHORTEST_STEM + beams) * staff.space();
      shift = up ? Math.min(shift, needed - result[i]) : Math.max(shift, needed - result[i]);
    }
    for (int i = 0; i <= last; i++) {
      result[i] += shift;
    }
    return result;
  }

  List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    Path.Pen stems = new Path.Pen();
    for (int i = 0; i < notes.size(); i++) {
      if (notes.get(i).form().hasStem()) {
        stems.move(stemX(i), far(i)).line(stemX(i), ends[i]);
      }
    }
    if (!stems.isEmpty()) {
      marks.add(new Mark.Outline(stems.path(), STEM * staff.space(), Ink.FULL));
    }
    if (isBeamed()) {
      marks.add(new Mark.Fill(beams(), Ink.FULL));
    } else {
      addFlags(marks);
    }
    for (int i = 0; i < notes.size(); i++) {
      addSlashes(i, slashes(notes.get(i)), marks);
    }
    return marks;
  }

  private void addFlags(List<Mark> marks) {
    for (int flag = 0; flag < notes.get(0).form().beams(); flag++) {
      double y = ends[0] - direction() * flag * BEAM_STEP * staff.space();
      marks.add(Signs.flag(stemX(0), y, -direction(), staff.space()));
    }
  }

  private Path beams() {
    Path.Pen pen = new Path.Pen();
    int most = notes.stream().mapToInt(note -> note.item().beams().size()).max().orElse(0);
    for (int level = 1; level <= most; level++) {
      int first = 0;
      for (int i = 0; i < notes.size(); i++) {
        String beam = beam(i, level);
        first = beam.equals(BEGIN) ? i : first;
        if (beam.equals(END)) {
          addBeam(pen, stemX(first), stemX(i), level);
        } else if (beam.equals(FORWARD)) {
          addBeam(pen, stemX(i), stemX(i) + STUB * staff.space(), level);
        } else if (beam.equals(BACKWARD)) {
          addBeam(pen, stemX(i) - STUB * staff.space(), stemX(i), level);
        }
      }
    }
    return pen.path();
  }

  private String beam(int index, int level) {
    List<String> beams = notes.get(index).item().beams();
    return beams.size() < level ? "" : beams.get(level - 1);
  }

  private void addBeam(Path.Pen pen, double left, double right, int level) {
    double half = STEM / 2 * staff.space();
    double from = left - half;
    double to = right + half;
    double inward = -direction() * (level - 1) * BEAM_STEP * staff.space();
    double thick = -direction() * BEAM * staff.space();
    pen.move(from, beamY(from) + inward)
        .line(to, beamY(to) + inward)
        .line(to, beamY(to) + inward + thick)
        .line(from, beamY(from) + inward + thick)
        .close();
  }

  private double beamY(double at) {
    int last = notes.size() - 1;
    double way = (at - stemX(0)) / Math.max(0.01, stemX(last) - stemX(0));
    return ends[0] + way * (ends[last] - ends[0]);
  }

  /** How many go through the stem; three mean as fast as it goes. */
  private static int slashes(NotatedItem note) {
    return note.sound().isTremolo()
        ? UNMEASURED
        : note.tremolo().filter(sign -> !sign.isOfTwo()).map(TremoloSign::slashes).orElse(0);
  }

  private void addSlashes(int index, int count, List<Mark> marks) {
    double space = staff.space();
    double reach = 0.65 * space;
    for (int i = 0; i < count; i++) {
      double y = middle(index) + slashOffset(i, count);
      marks.add(
          new Mark.Outline(
              Path.line(
                  stemX(index) - reach, y + 0.22 * space, stemX(index) + reach, y - 0.22 * space),
              0.38 * space,
              Ink.FULL));
    }
  }
}
