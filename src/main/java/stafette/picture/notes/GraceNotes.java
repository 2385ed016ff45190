package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stafette.notation.NoteShape;
import stafette.picture.ink.Box;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;
import stafette.score.Grace;
import stafette.score.Tone;

/** Small notes before a note, their stems up, several of them under two beams. */
final class GraceNotes {
  static final double SCALE = 0.62;

  /** From the left edge of one head to that of the next, in spaces. */
  static final double APART = 1.25;

  /** From the note before, beside what notes have between them anyway, in spaces. */
  static final double AIR = 0.4;

  private static final double STEM_LENGTH = 2.2;
  private static final NoteForm FORM = new NoteForm(new NoteShape("eighth", 0));

  private final Staff staff;
  private final List<Grace> graces;
  private final List<List<Optional<Integer>>> accidentals;

  /**
   * The notes.
   *
   * @param accidental what stands before a tone, asked in the order of time
   */
  GraceNotes(Staff staff, List<Grace> graces, Function<Tone, Optional<Integer>> accidental) {
    this.staff = staff;
    this.graces = graces;
    accidentals =
        graces.stream().map(grace -> grace.tones().stream().map(accidental).toList()).toList();
  }

  /** Their marks, ending at an x. */
  List<Mark> marks(double right) {
    List<Mark> marks = new ArrayList<>();
    double[] heads = heads(right);
    for (int i = 0; i < heads.length; i++) {
      addHeads(i, heads[i], marks);
    }
    if (heads.length > 0) {
      addStems(heads, marks);
    }
    return marks;
  }

  private double[] heads(double right) {
    double[] heads = new double[graces.size()];
    double at = right;
    for (int i = heads.length - 1; i >= 0; i--) {
      at -= APART * staff.space();
      heads[i] = at;
      at -= accidentalWidth(i) * staff.space();
    }
    return heads;
  }

  private double accidentalWidth(int index) {
    return accidentals.get(index).stream()
        .flatMap(Optional::stream)
        .mapToDouble(alter -> Signs.accidentalWidth(alter) * SCALE)
        .max()
        .orElse(0);
  }

  private void addHeads(int index, double x, List<Mark> marks) {
    List<Tone> tones = graces.get(index).tones();
    List<Integer> steps = tones.stream().map(staff::step).toList();
    double width = Signs.HEAD * SCALE * staff.space();
    Heads.ledgers(staff, steps, x, width).ifPresent(marks::add);
    for (int i = 0; i < tones.size(); i++) {
      double y = staff.y(steps.get(i));
      marks.add(Signs.head(staff, FORM, x, y, SCALE));
      Optional<Integer> alter = accidentals.get(index).get(i);
      if (alter.isPresent()) {
        double left = x - Signs.accidentalWidth(alter.get()) * SCALE * staff.space();
        marks.add(Signs.accidental(staff, alter.get(), left, y, SCALE));
      }
    }
  }

  private void addStems(double[] heads, List<Mark> marks) {
    double space = staff.space();
    int highest = graces.stream().mapToInt(grace -> step(grace, true)).max().orElseThrow();
    double end = staff.y(highest) - STEM_LENGTH * space;
    Path.Pen pen = new Path.Pen();
    double toStem = (Signs.HEAD * SCALE - 0.06) * space;
    for (int i = 0; i < heads.length; i++) {
      pen.move(heads[i] + toStem, staff.y(step(graces.get(i), false))).line(heads[i] + toStem, end);
    }
    marks.add(new Mark.Outline(pen.path(), 0.1 * space, Ink.FULL));
    double first = heads[0] + toStem;
    if (heads.length == 1) {
      marks.add(Signs.flag(first, end, 1, space * 0.6));
    } else {
      double last = heads[heads.length - 1] + toStem;
      marks.add(beam(first, last, end));
      marks.add(beam(first, last, end + 0.5 * space));
    }
    if (graces.get(0).slashed()) {
      Path slash =
          Path.line(
              first - 0.5 * space, end + 1.3 * space, first + 0.45 * space, end + 0.5 * space);
      marks.add(new Mark.Outline(slash, 0.1 * space, Ink.FULL));
    }
  }

  private Mark beam(double from, double to, double y) {
    double half = 0.05 * staff.space();
    Box box = new Box(from - half, y, to + half, y + 0.3 * staff.space());
    return new Mark.Fill(Path.box(box), Ink.FULL);
  }

  private int step(Grace grace, boolean highest) {
    var steps = grace.tones().stream().mapToInt(staff::step);
    return (highest ? steps.max() : steps.min()).orElseThrow();
  }
}
