package stafette.picture.ink;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** Renders a drawing into a PNG image; needs no screen and no fonts of the system. */
public final class PngInk implements Mark.Hand {
  /** No picture gets more dots than this; a larger one is drawn coarser. */
  private static final double MOST_DOTS = 120e6;

  private final Graphics2D paper;

  private PngInk(Graphics2D paper) {
    this.paper = paper;
  }

  /**
   * The image, on white.
   *
   * @param dotsPerPoint how fine; 2 is 144 dots an inch
   */
  public static byte[] png(Drawing drawing, double dotsPerPoint) {
    double scale = scale(drawing, dotsPerPoint);
    BufferedImage image =
        new BufferedImage(
            (int) Math.ceil(drawing.width() * scale),
            (int) Math.ceil(drawing.height() * scale),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D paper = image.createGraphics();
    paper.setColor(Color.WHITE);
    paper.fillRect(0, 0, image.getWidth(), image.getHeight());
    paper.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    paper.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    paper.scale(scale, scale);
    PngInk ink = new PngInk(paper);
    drawing.marks().forEach(mark -> mark.show(ink));
    paper.dispose();
    return encoded(image);
  }

  static double scale(Drawing drawing, double dotsPerPoint) {
    double area = drawing.width() * drawing.height();
    return Math.min(dotsPerPoint, Math.sqrt(MOST_DOTS / area));
  }

  private static byte[] encoded(BufferedImage image) {
    try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      ImageIO.setUseCache(false);
      ImageIO.write(image, "png", bytes);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void fill(Mark.Fill fill) {
    paper.setColor(new Color(fill.ink().rgb()));
    paper.fill(Outlines.shape(fill.path()));
  }

  @Override
  public void stroke(Mark.Outline stroke) {
    paper.setColor(new Color(stroke.ink().rgb()));
    paper.setStroke(
        new BasicStroke((float) stroke.width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
    paper.draw(Outlines.shape(stroke.path()));
  }

  @Override
  public void words(Mark.Lettering words) {
    paper.setColor(new Color(words.ink().rgb()));
    paper.fill(words.face().outline(words.text(), words.size(), words.x(), words.y()));
  }

  @Override
  public void group(Mark.MarkGroup group) {
    group.marks().forEach(mark -> mark.show(this));
  }
}
