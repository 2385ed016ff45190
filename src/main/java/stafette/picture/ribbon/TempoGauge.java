package stafette.picture.ribbon;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import stafette.check.TempoWindow;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;
import stafette.score.Line;
import stafette.words.Sayable;
import stafette.words.Sentence;

/** A wedge from the slowest tempo at which a plan holds to the fastest, a drop at the present. */
public final class TempoGauge {
  /** In points. */
  public static final double WIDTH = 180;

  /** In points. */
  public static final double HEIGHT = 42;

  private static final double TEXT_SIZE = 8;

  /** How wide the drop is at the present tempo; it may stand at the very end of the gauge. */
  private static final double DROP = 6.4;

  private TempoGauge() {}

  /**
   * The gauge with its left upper corner there.
   *
   * @param speech how anything is said
   */
  public static List<Mark> of(
      TempoWindow window, Line line, Function<Sayable, String> speech, double left, double top) {
    double right = left + WIDTH;
    double y = top + 20;
    double slowest = Math.max(window.slowestFactor(), 0.25);
    double fastest = Math.min(window.fastestFactor(), 4);
    double share = fastest > slowest ? Math.log(1 / slowest) / Math.log(fastest / slowest) : 0.5;
    double to = right - DROP / 2;
    double now = left + (to - left) * Math.min(1, Math.max(0, share));
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Fill(wedge(left, to, y), Ink.SOFT));
    marks.add(new Mark.Fill(drop(now, y), Ink.JOIN));
    String start =
        speech.apply(
            window.slowestFactor() == 0 ? Sentence.of("any slower") : window.slowestText());
    marks.add(soft(start, left, top + 13));
    String end =
        Double.isInfinite(window.fastestFactor())
            ? speech.apply(Sentence.of("any faster"))
            : number(speech.apply(window.fastestText()));
    marks.add(soft(end, right - Face.PLAIN.width(end, TEXT_SIZE), top + 13));
    String present = speech.apply(line.tempo().at(line.stroke(0).onset()));
    double width = Face.BOLD.width(present, TEXT_SIZE);
    double x = Math.max(left, Math.min(right - width, now - width / 2));
    marks.add(new Mark.Lettering(present, x, y + 21, TEXT_SIZE, Face.BOLD, Ink.FULL));
    return marks;
  }

  private static Path wedge(double from, double to, double y) {
    return new Path.Pen()
        .move(from, y - 0.4)
        .line(to, y - 2)
        .line(to, y + 2)
        .line(from, y + 0.4)
        .close()
        .path();
  }

  private static Path drop(double x, double y) {
    double half = DROP / 2;
    return new Path.Pen()
        .move(x, y - 1)
        .curve(x + 2, y + 3, x + half, y + 4.4, x + half, y + 6.4)
        .curve(x + half, y + 10.4, x - half, y + 10.4, x - half, y + 6.4)
        .curve(x - half, y + 4.4, x - 2, y + 3, x, y - 1)
        .close()
        .path();
  }

  /** The number of a mark, "108" of "quarter = 108". */
  private static String number(String mark) {
    return mark.substring(mark.indexOf('=') + 1).trim();
  }

  private static Mark soft(String text, double x, double y) {
    return new Mark.Lettering(text, x, y, TEXT_SIZE, Face.PLAIN, Ink.SOFT);
  }
}
