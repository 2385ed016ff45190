package stafette.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;
import stafette.time.TempoMark;

/** Bars and beats across a row: bar lines through all lanes, numbers and tempi above. */
final class Ruler {
  private static final double NUMBER_SIZE = 7.4;
  private static final double TEMPO_SIZE = 7;
  private static final double TICK = 2.4;
  private static final double LEAST_BEAT = 4;

  private Ruler() {}

  /**
   * The ruler of a row.
   *
   * @param highest where bar lines begin
   * @param lowest where they end
   * @param top the row's own top
   */
  static List<Mark> of(Line line, Row row, double highest, double lowest, double top) {
    List<Mark> marks = new ArrayList<>();
    Path.Pen barLines = new Path.Pen();
    Path.Pen beats = new Path.Pen();
    double free = Double.NEGATIVE_INFINITY;
    double base = highest - 3.5;
    for (Bar bar : row.bars()) {
      double x = row.x(bar.span().start());
      barLines.move(x, highest).line(x, lowest);
      double right = x + 2 + Face.PLAIN.width(bar.number(), NUMBER_SIZE);
      if (x >= free && right <= row.right() + 2) {
        marks.add(new Mark.Words(bar.number(), x, base, NUMBER_SIZE, Face.PLAIN, Ink.FULL));
        free = right + 3;
      }
      addBeats(row, bar, highest, beats);
    }
    barLines.move(row.right(), highest).line(row.right(), lowest);
    marks.add(0, new Mark.Stroke(barLines.path(), 0.55, Ink.FAINT));
    if (!beats.isEmpty()) {
      marks.add(0, new Mark.Stroke(beats.path(), 0.55, Ink.SOFT));
    }
    addBracket(row, highest, lowest, marks);
    addTempi(line, row, top, marks);
    return marks;
  }

  private static void addBeats(Row row, Bar bar, double highest, Path.Pen beats) {
    for (Span beat : bar.beats()) {
      double x = row.x(beat.start());
      if (row.x(beat.end()) - x >= LEAST_BEAT && beat.start().isAfter(bar.span().start())) {
        beats.move(x, highest).line(x, highest + TICK);
      }
    }
  }

  private static void addBracket(Row row, double highest, double lowest, List<Mark> marks) {
    double x = row.left() - 2.5;
    Path.Pen pen = new Path.Pen();
    pen.move(x + 4.5, highest - 1.5)
        .curve(x + 1.5, highest - 0.6, x, highest, x, highest + 1)
        .line(x, lowest - 1)
        .curve(x, lowest, x + 1.5, lowest + 0.6, x + 4.5, lowest + 1.5);
    marks.add(new Mark.Stroke(pen.path(), 1.3, Ink.FULL));
  }

  /** Tempo marks where they change, and at the very start of the line. */
  private static void addTempi(Line line, Row row, double top, List<Mark> marks) {
    double free = Double.NEGATIVE_INFINITY;
    Position start = line.stroke(0).onset();
    for (Map.Entry<Position, TempoMark> change : line.tempo().within(row.span()).entrySet()) {
      Position at = change.getKey().isBefore(start) ? start : change.getKey();
      boolean carried =
          at.equals(row.span().start())
              && start.isBefore(at)
              && line.tempo()
                  .within(new Span(start, at))
                  .lastEntry()
                  .getValue()
                  .equals(change.getValue());
      double x = row.x(at);
      String text = change.getValue().toString();
      double right = x + Face.BOLD.width(text, TEMPO_SIZE);
      if (!carried && x >= free && right <= row.right()) {
        marks.add(new Mark.Words(text, x, top + TEMPO_SIZE, TEMPO_SIZE, Face.BOLD, Ink.FULL));
        free = right + 6;
      }
    }
  }
}
