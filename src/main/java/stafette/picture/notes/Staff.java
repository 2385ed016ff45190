package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;
import stafette.score.Drum;
import stafette.score.Pitch;
import stafette.score.Tone;
import stafette.score.Transposition;

/**
 * Five lines on which one player's notes are written.
 *
 * @param top the highest line, in points
 * @param space from line to line, in points
 * @param clef what the lines mean
 * @param transposition of the instrument, from written to sounding
 */
public record Staff(double top, double space, Clef clef, Transposition transposition) {
  static final double LINE = 0.11;

  /** White before each sign of the music face, as a share of its size. */
  static final double BEARING = 0.05;

  /** The size of music type that fits. */
  double size() {
    return 4 * space;
  }

  public double bottom() {
    return top + 4 * space;
  }

  double middle() {
    return top + 2 * space;
  }

  /** Steps above the bottom line at which a tone is written: 0 on it, 8 on the top line. */
  int step(Tone tone) {
    if (tone instanceof Pitch pitch) {
      return written(pitch).diatonic() - clef.bottomLine();
    }
    Drum drum = (Drum) tone;
    return 7 * drum.displayOctave() + drum.displayStep().ordinal() - clef.bottomLine();
  }

  Pitch written(Pitch sounding) {
    return sounding.movedBy(transposition.inverse());
  }

  /** The same lines for tones that are spelled as they are written. */
  Staff ofWritten() {
    return new Staff(top, space, clef, Transposition.NONE);
  }

  double y(int step) {
    return bottom() - step * space / 2;
  }

  public List<Mark> lines(double left, double right) {
    Path.Pen pen = new Path.Pen();
    for (int i = 0; i < 5; i++) {
      pen.move(left, top + i * space).line(right, top + i * space);
    }
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Outline(pen.path(), LINE * space, Ink.SOFT));
    return marks;
  }

  /** A sign of the music face whose left edge is at x. */
  Mark.Lettering sign(String sign, double x, double baseline, double scale) {
    double size = size() * scale;
    return new Mark.Lettering(sign, x - BEARING * size, baseline, size, Face.MUSIC, Ink.FULL);
  }
}
