package stafette.picture.ink;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** A face of type, bundled with the program. */
public final class Face {
  public static final Face PLAIN = new Face("NotoSans-Regular.ttf", "Noto Sans", 400);
  public static final Face BOLD = new Face("NotoSans-Bold.ttf", "Noto Sans", 700);

  /** Digits of time signatures and tuplets. */
  public static final Face FIGURES = new Face("NotoSerif-Bold.ttf", "Noto Serif", 700);

  /** Unicode's musical symbols; the size is four staff spaces. */
  public static final Face MUSIC = new Face("NotoMusic-Regular.ttf", "Noto Music", 400);

  private static final int REPLACEMENT = 0xFFFD;

  private final String file;
  private final String family;
  private final int weight;
  private final TrueTypeFont font;
  private final CmapLookup letters;
  private final Map<Integer, Glyph> glyphs = new ConcurrentHashMap<>();

  private Face(String file, String family, int weight) {
    this.file = file;
    this.family = family;
    this.weight = weight;
    try (InputStream stream = open()) {
      font = new TTFParser().parse(new RandomAccessReadBuffer(stream));
      letters = font.getUnicodeCmapLookup();
    } catch (IOException e) {
      throw new UncheckedIOException("the font " + file + " is part of the program", e);
    }
  }

  /**
   * A letter at size 1, y downward.
   *
   * @param advance how far the next one begins
   */
  private record Glyph(double advance, GeneralPath outline) {}

  public String family() {
    return family;
  }

  /** As CSS counts it: 400 is plain, 700 is bold. */
  public int weight() {
    return weight;
  }

  /** The font file. */
  public InputStream open() {
    return Objects.requireNonNull(
        Face.class.getResourceAsStream("/stafette/picture/" + file), file);
  }

  public double width(String text, double size) {
    return text.codePoints().mapToDouble(letter -> glyph(letter).advance()).sum() * size;
  }

  /** The same text, with a sign of replacement for each letter that the face does not have. */
  public String writable(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .map(letter -> has(letter) ? letter : REPLACEMENT)
        .forEach(out::appendCodePoint);
    return out.toString();
  }

  /** A text, cut with an ellipsis where there is no room for all of it. */
  public String fitted(String text, double size, double room) {
    String shown = text;
    while (shown.length() > 1 && width(shown, size) > room) {
      shown = shown.substring(0, shown.length() - 2).stripTrailing() + "…";
    }
    return shown;
  }

  /** The letters' outline when they are set on a base line at x and y. */
  GeneralPath outline(String text, double size, double x, double y) {
    GeneralPath all = new GeneralPath();
    double at = x;
    for (int letter : text.codePoints().toArray()) {
      Glyph glyph = glyph(letter);
      AffineTransform place = new AffineTransform(size, 0, 0, size, at, y);
      all.append(glyph.outline().getPathIterator(place), false);
      at += glyph.advance() * size;
    }
    return all;
  }

  Box bounds(String text, double size, double x, double y) {
    java.awt.geom.Rectangle2D ink = outline(text, size, x, y).getBounds2D();
    return new Box(
        Math.min(x, ink.getMinX()),
        ink.isEmpty() ? y : ink.getMinY(),
        Math.max(x + (this == MUSIC ? 0 : width(text, size)), ink.getMaxX()),
        ink.isEmpty() ? y : ink.getMaxY());
  }

  private boolean has(int letter) {
    return letters.getGlyphId(letter) != 0;
  }

  private Glyph glyph(int letter) {
    return glyphs.computeIfAbsent(letter, this::read);
  }

  private synchronized Glyph read(int letter) {
    try {
      int id = letters.getGlyphId(letter);
      double em = font.getUnitsPerEm();
      GlyphData data = font.getGlyph().getGlyph(id);
      GeneralPath outline = data == null ? new GeneralPath() : data.getPath();
      outline.transform(AffineTransform.getScaleInstance(1 / em, -1 / em));
      return new Glyph(font.getAdvanceWidth(id) / em, outline);
    } catch (IOException e) {
      throw new UncheckedIOException("the font " + file + " is part of the program", e);
    }
  }
}
