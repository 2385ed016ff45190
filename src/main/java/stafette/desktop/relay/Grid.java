package stafette.desktop.relay;

import java.util.Map;
import javafx.scene.canvas.GraphicsContext;
import stafette.desktop.texts.Texts;
import stafette.picture.Face;
import stafette.picture.Ink;
import stafette.picture.Mark;
import stafette.picture.Row;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;
import stafette.time.TempoMark;

/** Bars and beats across all lanes, with numbers and tempi above. */
final class Grid {
  private static final double NUMBER_Y = 28;
  private static final double NUMBER_SIZE = 11;
  private static final double TEMPO_Y = 13;
  private static final double LEAST_BEAT = 9;

  private final Line line;
  private final Texts texts;
  private final Row row;
  private final LaneScale lanes;
  private final GraphicsContext canvas;
  private final Inks inks;

  Grid(ShownPlan shown, Row row, LaneScale lanes, GraphicsContext canvas, Inks inks) {
    this.line = shown.plan().line();
    this.texts = shown.texts();
    this.row = row;
    this.lanes = lanes;
    this.canvas = canvas;
    this.inks = inks;
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
        if (wide >= LEAST_BEAT && beat.start().isAfter(bar.span().start())) {
          upright(x);
        }
      }
      canvas.setLineDashes();
    }
    upright(row.right());
  }

  private void upright(double x) {
    double bottom = Math.min(lanes.height(), lanes.bottom());
    canvas.strokeLine(x, LaneScale.RULER, x, bottom);
  }

  void ruler() {
    CanvasHand hand = new CanvasHand(canvas, inks);
    double free = Double.NEGATIVE_INFINITY;
    for (Bar bar : row.bars()) {
      double x = row.left(bar);
      canvas.setStroke(inks.soft());
      canvas.setLineWidth(0.8);
      canvas.strokeLine(x, NUMBER_Y - 9, x, LaneScale.RULER);
      if (x >= free) {
        hand.words(words(bar.number(), x + 4, NUMBER_Y, Face.PLAIN, Ink.FULL));
        free = x + Face.PLAIN.width(bar.number(), NUMBER_SIZE) + 10;
      }
    }
    tempi(hand);
  }

  private void tempi(CanvasHand hand) {
    double free = Double.NEGATIVE_INFINITY;
    Position start = line.stroke(0).onset();
    for (Map.Entry<Position, TempoMark> change : line.tempo().within(row.span()).entrySet()) {
      Position at = change.getKey().isBefore(start) ? start : change.getKey();
      double x = Math.max(4, row.xWithin(at));
      if (x >= free) {
        String text = texts.say(change.getValue());
        hand.words(words(text, x, TEMPO_Y, Face.BOLD, Ink.FULL));
        free = x + Face.BOLD.width(text, NUMBER_SIZE) + 12;
      }
    }
  }

  private static Mark.Words words(String text, double x, double y, Face face, Ink ink) {
    return new Mark.Words(text, x, y, NUMBER_SIZE, face, ink);
  }
}
