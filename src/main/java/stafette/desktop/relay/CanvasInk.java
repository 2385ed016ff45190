package stafette.desktop.relay;

import java.util.HashMap;
import java.util.Map;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.Font;
import stafette.picture.ink.Face;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;

/** Draws the marks of pictures on a canvas, in the inks of the style in force. */
public final class CanvasInk implements Mark.Hand {
  private static final Map<CanvasType, Font> FONTS = new HashMap<>();

  private final GraphicsContext canvas;
  private final Inks inks;

  public CanvasInk(GraphicsContext canvas, Inks inks) {
    this.canvas = canvas;
    this.inks = inks;
  }

  private record CanvasType(Face face, double size) {}

  private static Font font(CanvasType type) {
    return Font.loadFont(type.face().open(), type.size());
  }

  @Override
  public void fill(Mark.Fill fill) {
    canvas.setFill(inks.of(fill.ink()));
    follow(fill.path());
    canvas.fill();
  }

  @Override
  public void stroke(Mark.Outline stroke) {
    canvas.setStroke(inks.of(stroke.ink()));
    canvas.setLineWidth(stroke.width());
    canvas.setLineCap(StrokeLineCap.BUTT);
    follow(stroke.path());
    canvas.stroke();
  }

  private void follow(Path path) {
    canvas.beginPath();
    path.trace(new CanvasTracer(canvas));
  }

  /** Signs of music are drawn as outlines, so that no machine's own fonts come between. */
  @Override
  public void words(Mark.Lettering words) {
    canvas.setFill(inks.of(words.ink()));
    if (words.face() == Face.MUSIC) {
      canvas.beginPath();
      words.trace(new CanvasTracer(canvas));
      canvas.fill();
    } else {
      canvas.setFont(
          FONTS.computeIfAbsent(new CanvasType(words.face(), words.size()), CanvasInk::font));
      canvas.fillText(words.text(), words.x(), words.y());
    }
  }

  @Override
  public void group(Mark.MarkGroup group) {
    group.marks().forEach(mark -> mark.show(this));
  }

  private record CanvasTracer(GraphicsContext canvas) implements Path.Tracer {
    @Override
    public void move(double x, double y) {
      canvas.moveTo(x, y);
    }

    @Override
    public void line(double x, double y) {
      canvas.lineTo(x, y);
    }

    @Override
    public void curve(double x1, double y1, double x2, double y2, double x, double y) {
      canvas.bezierCurveTo(x1, y1, x2, y2, x, y);
    }

    @Override
    public void close() {
      canvas.closePath();
    }
  }
}
