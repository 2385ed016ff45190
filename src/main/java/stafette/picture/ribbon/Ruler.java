package stafette.picture.ribbon;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;
import stafette.picture.notes.BarRow;
import stafette.picture.notes.TimeSignature;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;
import stafette.time.TempoMark;

/** Bars and beats across a row: bar lines through all lanes, numbers and tempi above. */
final class Ruler {
  private static final double NUMBER_SIZE = 7.6;
  private static final double TEMPO_SIZE = 7.2;
  private static final double METER_SIZE = 6.2;
  private static final double TICK = 2.6;
  private static final double LEAST_BEAT = 4;
  private static final double BRACKET = 1.5;

  private final RelayContent relay;
  private final Line line;
  private final BarRow row;
  private final Lanes lanes;
  private final double top;
  private final double highest;
  private final double lowest;
  private final List<Mark> marks = new ArrayList<>();

  /**
   * A ruler to be drawn.
   *
   * @param top the row's own top
   */
  Ruler(RelayContent relay, BarRow row, Lanes lanes, double top) {
    this.relay = relay;
    line = relay.line();
    this.row = row;
    this.lanes = lanes;
    this.top = top;
    highest = top + lanes.top();
    lowest = top + lanes.height();
  }

  List<Mark> marks() {
    addBars();
    addBracket();
    addNumbers();
    addTempi();
    return marks;
  }

  private void addBars() {
    Path.Pen bars = new Path.Pen();
    Path.Pen beats = new Path.Pen();
    for (Bar bar : row.bars()) {
      double x = row.left(bar);
      if (x > row.left() || !lanes.haveMusic()) {
        bars.move(x, highest).line(x, lowest);
      }
      for (Span beat : bar.beats()) {
        double at = row.x(beat.start());
        double wide = beat.length().quarters().toDouble() * row.pointsPerQuarter();
        if (at > x && wide >= LEAST_BEAT) {
          beats.move(at, highest).line(at, highest - TICK);
        }
      }
    }
    bars.move(row.right(), highest).line(row.right(), lowest);
    marks.add(new Mark.Outline(bars.path(), 0.55, Ink.FAINT));
    if (!beats.isEmpty()) {
      marks.add(new Mark.Outline(beats.path(), 0.55, Ink.SOFT));
    }
  }

  private void addBracket() {
    double x = row.left() - lanes.signs() - 2.5;
    Path.Pen pen = new Path.Pen();
    pen.move(x + 4.5, highest - BRACKET)
        .curve(x + 1.5, highest - 0.6, x, highest, x, highest + 1)
        .line(x, lowest - 1)
        .curve(x, lowest, x + 1.5, lowest + 0.6, x + 4.5, lowest + BRACKET);
    marks.add(new Mark.Outline(pen.path(), 1.3, Ink.FULL));
  }

  /** Each bar's number, or every so many's where they would touch. */
  private void addNumbers() {
    List<Mark.Lettering> numbers = new ArrayList<>();
    double free = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < row.bars().size(); i += numberEvery()) {
      Bar bar = row.bars().get(i);
      double x = row.left(bar) + (i == 0 && !lanes.haveMusic() ? 3.5 : 0);
      double right = x + Face.PLAIN.width(bar.number(), NUMBER_SIZE);
      if (x >= free && right <= row.right() + 2) {
        numbers.add(
            new Mark.Lettering(bar.number(), x, highest - 4, NUMBER_SIZE, Face.PLAIN, Ink.FULL));
        free = right + 3;
      }
    }
    marks.addAll(numbers);
    if (!lanes.haveMusic()) {
      addMeters(numbers);
    }
  }

  private int numberEvery() {
    double widest =
        row.bars().stream()
            .mapToDouble(bar -> Face.PLAIN.width(bar.number(), NUMBER_SIZE))
            .max()
            .orElse(0);
    double narrowest =
        row.bars().stream().mapToDouble(bar -> row.right(bar) - row.left(bar)).min().orElse(1);
    return narrowest >= widest + 4 ? 1 : narrowest * 2 >= widest + 4 ? 2 : 4;
  }

  /** Where no staff shows them: new metres beside the bar numbers, if they fit between those. */
  private void addMeters(List<Mark.Lettering> numbers) {
    for (Bar bar : row.bars()) {
      if (!isNewMeter(bar)) {
        continue;
      }
      String text = String.join("/", TimeSignature.figures(bar.meter()));
      double from = row.left(bar) + 1;
      double until = row.right();
      for (Mark.Lettering number : numbers) {
        boolean ownOrBefore = number.x() < row.left(bar) + 4;
        from = ownOrBefore ? Math.max(from, number.x() + number.width() + 3) : from;
        until = ownOrBefore ? until : Math.min(until, number.x() - 3);
      }
      double width = Face.PLAIN.width(text, METER_SIZE);
      if (from + width <= until && from < row.right(bar)) {
        marks.add(new Mark.Lettering(text, from, highest - 4, METER_SIZE, Face.PLAIN, Ink.SOFT));
      }
    }
  }

  private boolean isNewMeter(Bar bar) {
    Bar first = line.bars().at(line.stroke(0).onset());
    return bar.index() <= first.index()
        ? bar.equals(row.bars().get(0))
        : !line.bars().get(bar.index() - 1).meter().equals(bar.meter());
  }

  /** Tempo marks where they change, and at the very start of the line. */
  private void addTempi() {
    double free = Double.NEGATIVE_INFINITY;
    Position start = line.stroke(0).onset();
    for (Map.Entry<Position, TempoMark> change : line.tempo().within(row.span()).entrySet()) {
      Position at = change.getKey().isBefore(start) ? start : change.getKey();
      double x = row.x(at);
      String text = relay.say(change.getValue());
      double right = x + Face.BOLD.width(text, TEMPO_SIZE);
      if (!isCarried(at, start, change.getValue()) && x >= free && right <= row.right()) {
        marks.add(new Mark.Lettering(text, x, top + TEMPO_SIZE, TEMPO_SIZE, Face.BOLD, Ink.FULL));
        free = right + 6;
      }
    }
  }

  /** Whether a mark at the row's beginning was in force before. */
  private boolean isCarried(Position at, Position start, TempoMark mark) {
    return at.equals(row.span().start())
        && start.isBefore(at)
        && line.tempo().within(new Span(start, at)).lastEntry().getValue().equals(mark);
  }
}
