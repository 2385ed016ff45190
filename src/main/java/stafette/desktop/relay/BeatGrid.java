package stafette.desktop.relay;

import java.util.Map;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import stafette.desktop.texts.Texts;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.notes.BarRow;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;
import stafette.time.TempoMark;

/** Bars and beats across all lanes, with numbers and tempi above. */
final class BeatGrid {
  private static final double NUMBER_Y = 28;
  private static final double NUMBER_SIZE = 11;
  private static final double TEMPO_Y = 13;
  private static final double AIR = 6;
  private static final double LEAST_BEAT = 9;

  private final ShownPlan shown;
  private final Texts texts;
  private final Line line;
  private final BarRow row;
  private final LaneScale lanes;
  private final GraphicsContext canvas;
  private final Inks inks;
  private final Viewport port;

  BeatGrid(ShownPlan shown, BarRow row, LaneScale lanes, GraphicsContext canvas, Inks inks) {
    this.shown = shown;
    texts = shown.texts();
    line = shown.plan().line();
    this.row = row;
    this.lanes = lanes;
    this.canvas = canvas;
    this.inks = inks;
    port = lanes.port();
  }

  /** Through the lanes: bars full, beats as dots of a line. */
  void lines() {
    canvas.setStroke(inks.faint());
    canvas.setLineWidth(0.8);
    for (Bar bar : row.bars()) {
      upright(row.left(bar));
      canvas.setLineDashes(1.2, 5);
      for (Span beat : bar.beats()) {
        double x = row.x(beat.start());
        double wide = beat.length().quarters().toDouble() * row.pointsPerQuarter();
        if (wide >= port.px(LEAST_BEAT) && beat.start().isAfter(bar.span().start())) {
          upright(x);
        }
      }
      canvas.setLineDashes();
    }
    upright(row.right());
  }

  private void upright(double x) {
    double bottom = Math.min(lanes.height(), lanes.bottom());
    canvas.strokeLine(x, port.ruler(), x, bottom);
  }

  void ruler() {
    CanvasInk hand = new CanvasInk(canvas, inks);
    double free = Double.NEGATIVE_INFINITY;
    for (Bar bar : row.bars()) {
      double x = row.left(bar);
      canvas.setStroke(inks.soft());
      canvas.setLineWidth(0.8);
      canvas.strokeLine(x, port.px(NUMBER_Y - 9), x, port.ruler());
      if (x >= free) {
        Mark.Lettering number = words(bar.number(), x + port.px(4), NUMBER_Y, Face.PLAIN, Ink.FULL);
        hand.words(number);
        free = number.x() + number.width() + port.px(AIR);
        free = meter(bar, free, hand);
      }
    }
    tempi(hand);
  }

  /** A new time signature beside the number of its bar, where there is room before the next. */
  private double meter(Bar bar, double left, CanvasInk hand) {
    Optional<Mark.Lettering> meter =
        shown
            .pieces()
            .newMeter(bar)
            .map(text -> words(text, left, NUMBER_Y, Face.PLAIN, Ink.SOFT))
            .filter(words -> left + words.width() + port.px(AIR) <= row.right(bar));
    meter.ifPresent(hand::words);
    return meter.map(words -> left + words.width() + port.px(AIR)).orElse(left);
  }

  private void tempi(CanvasInk hand) {
    double free = Double.NEGATIVE_INFINITY;
    Position start = line.stroke(0).onset();
    for (Map.Entry<Position, TempoMark> change : line.tempo().within(row.span()).entrySet()) {
      Position at = change.getKey().isBefore(start) ? start : change.getKey();
      double x = Math.max(4, row.xWithin(at));
      if (x >= free) {
        String mark = texts.say(change.getValue());
        Mark.Lettering words = words(mark, x, TEMPO_Y, Face.BOLD, Ink.FULL);
        hand.words(words);
        free = x + words.width() + port.px(12);
      }
    }
  }

  private Mark.Lettering words(String text, double x, double y, Face face, Ink ink) {
    return new Mark.Lettering(text, x, port.px(y), port.px(NUMBER_SIZE), face, ink);
  }
}
