package stafette.picture.ink;

import java.util.Locale;
import java.util.Map;
import stafette.words.XmlText;

/**
 * Writes a drawing as SVG 1.1. Words stay words, stretched to the width that they were laid out
 * for, so that another font does no harm; signs of music become outlines, since few machines have a
 * font for them.
 */
public final class SvgInk implements Mark.Hand {
  private final StringBuilder out = new StringBuilder();

  private SvgInk() {}

  public static String svg(Drawing drawing) {
    SvgInk ink = new SvgInk();
    ink.out
        .append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
        .append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\" width=\"")
        .append(figure(drawing.width()))
        .append("pt\" height=\"")
        .append(figure(drawing.height()))
        .append("pt\" viewBox=\"0 0 ")
        .append(figure(drawing.width()))
        .append(' ')
        .append(figure(drawing.height()))
        .append("\">\n<title>")
        .append(escaped(drawing.title()))
        .append("</title>\n");
    Path sheet = Path.box(new Box(0, 0, drawing.width(), drawing.height()));
    ink.fill(new Mark.Fill(sheet, Ink.PAPER));
    drawing.marks().forEach(mark -> mark.show(ink));
    return ink.out.append("</svg>\n").toString();
  }

  @Override
  public void fill(Mark.Fill fill) {
    out.append("<path fill=\"").append(colour(fill.ink())).append("\" d=\"");
    fill.path().trace(new SvgSteps(out));
    out.append("\"/>\n");
  }

  @Override
  public void stroke(Mark.Outline stroke) {
    out.append("<path fill=\"none\" stroke=\"")
        .append(colour(stroke.ink()))
        .append("\" stroke-width=\"")
        .append(figure(stroke.width()))
        .append("\" d=\"");
    stroke.path().trace(new SvgSteps(out));
    out.append("\"/>\n");
  }

  @Override
  public void words(Mark.Lettering words) {
    if (words.face() == Face.MUSIC) {
      sign(words);
      return;
    }
    out.append("<text x=\"")
        .append(figure(words.x()))
        .append("\" y=\"")
        .append(figure(words.y()))
        .append("\" font-family=\"'")
        .append(words.face().family())
        .append("', sans-serif\" font-weight=\"")
        .append(words.face().weight())
        .append("\" font-size=\"")
        .append(figure(words.size()))
        .append("\" textLength=\"")
        .append(figure(words.width()))
        .append("\" lengthAdjust=\"spacingAndGlyphs\" fill=\"")
        .append(colour(words.ink()))
        .append("\">")
        .append(escaped(words.text()))
        .append("</text>\n");
  }

  private void sign(Mark.Lettering words) {
    out.append("<path fill=\"").append(colour(words.ink())).append("\" d=\"");
    words.trace(new SvgSteps(out));
    out.append("\"/>\n");
  }

  @Override
  public void group(Mark.MarkGroup group) {
    out.append("<g");
    group.id().ifPresent(id -> attribute("id", id));
    for (Map.Entry<String, String> entry : group.data().entrySet()) {
      attribute("data-" + entry.getKey(), entry.getValue());
    }
    out.append(">");
    if (!group.title().isEmpty()) {
      out.append("<title>").append(escaped(group.title())).append("</title>");
    }
    out.append('\n');
    group.marks().forEach(mark -> mark.show(this));
    out.append("</g>\n");
  }

  private void attribute(String name, String value) {
    out.append(' ').append(name).append("=\"").append(escaped(value)).append('"');
  }

  private static String colour(Ink ink) {
    return String.format(Locale.ROOT, "#%06x", ink.rgb());
  }

  /** At most two decimals, none that say nothing. */
  public static String figure(double value) {
    long hundredths = Math.round(value * 100);
    String sign = hundredths < 0 ? "-" : "";
    long whole = Math.abs(hundredths) / 100;
    long rest = Math.abs(hundredths) % 100;
    String decimals =
        rest == 0 ? "" : rest % 10 == 0 ? "." + rest / 10 : "." + (rest < 10 ? "0" : "") + rest;
    return sign + whole + decimals;
  }

  /** As XML wants it; characters that XML cannot hold become replacement signs. */
  private static String escaped(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .forEach(
            letter -> {
              switch (letter) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.appendCodePoint(XmlText.canHold(letter) ? letter : 0xFFFD);
              }
            });
    return safe.toString();
  }

  private record SvgSteps(StringBuilder out) implements Path.Tracer {
    @Override
    public void move(double x, double y) {
      step('M', x, y);
    }

    @Override
    public void line(double x, double y) {
      step('L', x, y);
    }

    @Override
    public void curve(double x1, double y1, double x2, double y2, double x, double y) {
      step('C', x1, y1);
      step(' ', x2, y2);
      step(' ', x, y);
    }

    @Override
    public void close() {
      out.append('Z');
    }

    private void step(char letter, double x, double y) {
      out.append(letter).append(figure(x)).append(' ').append(figure(y));
    }
  }
}
