package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.notation.Accidentals;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;
import stafette.score.Grace;
import stafette.score.Pitch;
import stafette.score.Tone;

/** Heads with their ledger lines, accidentals, dots and grace notes. */
final class Heads {
  private static final double LEDGER = 0.38;
  private static final int CLASHING_STEPS = 6;

  private final Staff staff;
  private final Accidentals accidentals;

  Heads(Staff staff, Accidentals accidentals) {
    this.staff = staff;
    this.accidentals = accidentals;
  }

  /** What a note has at x, its stem left out; notes tied to the one before repeat no accidental. */
  List<Mark> of(NotatedItem note, double x, boolean stemUp) {
    List<Mark> marks = new ArrayList<>();
    List<Integer> steps = new ArrayList<>();
    double space = staff.space();
    List<Grace> graces = note.attacks() ? note.sound().graces() : List.of();
    GraceNotes before = new GraceNotes(staff, graces, this::accidental);
    double width = note.form().headWidth() * space;
    List<Integer> shifts = shifts(note.sound().tones(), stemUp);
    double left = shifts.contains(-1) ? x - width : x;
    double besideHeads = left;
    double right = shifts.contains(1) ? x + 2 * width : x + width;
    int lastAccidental = Integer.MAX_VALUE;
    List<Tone> tones = note.sound().tones();
    List<Optional<Integer>> alters =
        tones.stream()
            .map(tone -> note.attacks() ? accidental(tone) : Optional.<Integer>empty())
            .toList();
    for (int i = tones.size() - 1; i >= 0; i--) {
      int step = staff.step(tones.get(i));
      steps.add(step);
      marks.add(Signs.head(staff, note.form(), x + shifts.get(i) * width, staff.y(step), 1));
      Optional<Integer> alter = alters.get(i);
      if (alter.isPresent()) {
        boolean clashes = lastAccidental - step < CLASHING_STEPS;
        left = (clashes ? left : besideHeads) - Signs.accidentalWidth(alter.get()) * space;
        marks.add(Signs.accidental(staff, alter.get(), left, staff.y(step)));
        lastAccidental = step;
      }
      addDots(note, step, right, marks);
    }
    ledgers(staff, steps, x, width).ifPresent(lines -> marks.add(0, lines));
    marks.addAll(before.marks(left));
    return marks;
  }

  private Optional<Integer> accidental(Tone tone) {
    return tone instanceof Pitch pitch && accidentals.mustShow(pitch)
        ? Optional.of(pitch.alter())
        : Optional.empty();
  }

  private List<Integer> shifts(List<Tone> tones, boolean stemUp) {
    return IntStream.range(0, tones.size()).mapToObj(i -> shift(tones, i, stemUp)).toList();
  }

  /** In a second, one of the two heads stands on the other side of the stem. */
  private int shift(List<Tone> tones, int index, boolean stemUp) {
    int step = staff.step(tones.get(index));
    if (stemUp) {
      boolean second = index > 0 && step - staff.step(tones.get(index - 1)) == 1;
      return second && shift(tones, index - 1, true) == 0 ? 1 : 0;
    }
    boolean second = index + 1 < tones.size() && staff.step(tones.get(index + 1)) - step == 1;
    return second && shift(tones, index + 1, false) == 0 ? -1 : 0;
  }

  private void addDots(NotatedItem note, int step, double right, List<Mark> marks) {
    double space = staff.space();
    double y = staff.y(step % 2 == 0 ? step + 1 : step);
    for (int dot = 0; dot < note.form().dots(); dot++) {
      marks.add(Signs.dot(right + (0.5 + 0.55 * dot) * space, y, 0.2 * space));
    }
  }

  /** The ledger lines of heads at x, if they need any. */
  static Optional<Mark> ledgers(Staff staff, List<Integer> steps, double x, double width) {
    int highest = steps.stream().mapToInt(s -> s).max().orElse(4);
    int lowest = steps.stream().mapToInt(s -> s).min().orElse(4);
    double out = LEDGER * staff.space();
    Path.Pen pen = new Path.Pen();
    for (int step = 10; step <= highest; step += 2) {
      pen.move(x - out, staff.y(step)).line(x + width + out, staff.y(step));
    }
    for (int step = -2; step >= lowest; step -= 2) {
      pen.move(x - out, staff.y(step)).line(x + width + out, staff.y(step));
    }
    double thick = Staff.LINE * 1.2 * staff.space();
    return pen.isEmpty()
        ? Optional.empty()
        : Optional.of(new Mark.Outline(pen.path(), thick, Ink.SOFT));
  }
}
