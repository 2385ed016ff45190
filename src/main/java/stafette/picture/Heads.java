package stafette.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.score.Grace;
import stafette.score.Pitch;
import stafette.score.Tone;

/** Heads with their ledger lines, accidentals, dots and grace notes. */
final class Heads {
  private static final double LEDGER = 0.38;
  private static final double GRACE_SCALE = 0.62;
  private static final double GRACE_WIDTH = 1.25;
  private static final int CLASHING_STEPS = 6;

  private final Staff staff;
  private final AccidentalMemory memory;

  Heads(Staff staff, AccidentalMemory memory) {
    this.staff = staff;
    this.memory = memory;
  }

  /** What a note has at x, its stem left out; notes tied to the one before repeat no accidental. */
  List<Mark> of(Written note, double x, boolean stemUp) {
    List<Mark> marks = new ArrayList<>();
    List<Integer> steps = new ArrayList<>();
    double space = staff.space();
    double width = Signs.headWidth(note.form()) * space;
    double left = x;
    int lastAccidental = Integer.MAX_VALUE;
    List<Tone> tones = note.sound().tones();
    for (int i = tones.size() - 1; i >= 0; i--) {
      int step = staff.step(tones.get(i));
      steps.add(step);
      marks.add(
          Signs.head(staff, note.form(), x + shift(tones, i, stemUp) * width, staff.y(step), 1));
      Optional<Integer> alter = note.attacks() ? accidental(tones.get(i)) : Optional.empty();
      if (alter.isPresent()) {
        boolean clashes = lastAccidental - step < CLASHING_STEPS;
        left = (clashes ? left : x) - Signs.accidentalWidth(alter.get()) * space;
        marks.add(Signs.accidental(staff, alter.get(), left, staff.y(step)));
        lastAccidental = step;
      }
      addDots(note, step, x + width, marks);
    }
    addLedgers(steps, x, width, marks);
    if (note.attacks()) {
      addGraces(note, left, marks);
    }
    return marks;
  }

  private Optional<Integer> accidental(Tone tone) {
    return tone instanceof Pitch pitch ? memory.before(staff.written(pitch)) : Optional.empty();
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

  private void addDots(Written note, int step, double right, List<Mark> marks) {
    double space = staff.space();
    double y = staff.y(step % 2 == 0 ? step + 1 : step);
    for (int dot = 0; dot < note.form().dots(); dot++) {
      marks.add(Signs.dot(right + (0.5 + 0.55 * dot) * space, y, 0.2 * space));
    }
  }

  private void addLedgers(List<Integer> steps, double x, double width, List<Mark> marks) {
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
    if (!pen.isEmpty()) {
      marks.add(0, new Mark.Stroke(pen.path(), Staff.LINE * 1.2 * staff.space(), Ink.SOFT));
    }
  }

  private void addGraces(Written note, double right, List<Mark> marks) {
    double space = staff.space();
    List<Grace> graces = note.sound().graces();
    for (int i = 0; i < graces.size(); i++) {
      double x = right - (graces.size() - i) * GRACE_WIDTH * space;
      int top = Integer.MIN_VALUE;
      int bottom = Integer.MAX_VALUE;
      for (Tone tone : graces.get(i).tones()) {
        int step = staff.step(tone);
        top = Math.max(top, step);
        bottom = Math.min(bottom, step);
        marks.add(Signs.head(staff, new NoteForm(3, 0), x, staff.y(step), GRACE_SCALE));
      }
      double stem = x + (Signs.HEAD * GRACE_SCALE - 0.06) * space;
      double end = staff.y(top) - 2.2 * space;
      marks.add(
          new Mark.Stroke(Path.line(stem, staff.y(bottom), stem, end), 0.1 * space, Ink.FULL));
      marks.add(Signs.flag(stem, end, 1, space * 0.6));
      if (graces.get(i).slashed()) {
        marks.add(
            new Mark.Stroke(
                Path.line(
                    stem - 0.5 * space, end + 1.3 * space, stem + 0.7 * space, end + 0.3 * space),
                0.1 * space,
                Ink.FULL));
      }
    }
  }
}
