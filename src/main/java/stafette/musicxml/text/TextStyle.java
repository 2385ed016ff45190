package stafette.musicxml.text;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.util.Optional;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.PartText;

/**
 * How the file sets its text: what we write looks the same.
 *
 * @param lineEnd the file's own
 * @param unit one step of indentation
 * @param charset how the file is encoded
 */
public record TextStyle(String lineEnd, String unit, Charset charset) {
  private static final String USUAL_UNIT = "  ";
  private static final String OUR_UNIT = "    ";

  public static TextStyle of(Origin origin) {
    return new TextStyle(origin.lineEnd(), unitOf(origin), origin.charset());
  }

  private static String unitOf(Origin origin) {
    for (PartText part : origin.parts()) {
      for (MeasureText measure : part.measures()) {
        if (!measure.elements().isEmpty()) {
          Optional<String> outer = indentBefore(origin.text(), measure.whole().start());
          Optional<String> inner =
              indentBefore(origin.text(), measure.elements().get(0).span().start());
          return outer.isPresent() && inner.isPresent() && inner.get().startsWith(outer.get())
              ? inner.get().substring(outer.get().length())
              : USUAL_UNIT;
        }
      }
    }
    return USUAL_UNIT;
  }

  /** The white space before an element that stands at the head of a line. */
  static Optional<String> indentBefore(String text, int offset) {
    int at = offset;
    while (at > 0 && (text.charAt(at - 1) == ' ' || text.charAt(at - 1) == '\t')) {
      at--;
    }
    return at > 0 && (text.charAt(at - 1) == '\n' || text.charAt(at - 1) == '\r')
        ? Optional.of(text.substring(at, offset))
        : Optional.empty();
  }

  /** The line end and indentation before an element that stands like the one at that offset. */
  public String breakLike(String text, int offset) {
    return indentBefore(text, offset).map(indent -> lineEnd + indent).orElse("");
  }

  /** The line end and indentation before the children of a measure. */
  public String breakWithin(String text, MeasureText measure) {
    return measure.elements().isEmpty()
        ? deeper(breakLike(text, measure.whole().start()))
        : breakLike(text, measure.elements().get(0).span().start());
  }

  public String deeper(String lineBreak) {
    return lineBreak.isEmpty() ? "" : lineBreak + unit;
  }

  /**
   * A fragment as it was marshalled, set like its neighbours.
   *
   * @param fragment lines indented by four blanks a step
   * @param lineBreak what stands before each line of the same depth; empty to set it in one line
   */
  public String set(String fragment, String lineBreak) {
    StringBuilder result = new StringBuilder();
    for (String line : fragment.split("\n", -1)) {
      String rest = line;
      int depth = 0;
      while (rest.startsWith(OUR_UNIT)) {
        rest = rest.substring(OUR_UNIT.length());
        depth++;
      }
      if (!result.isEmpty() && !lineBreak.isEmpty()) {
        result.append(lineBreak).append(unit.repeat(depth));
      }
      result.append(rest);
    }
    return encodable(result.toString());
  }

  /** The same text with numeric references for what the file's charset can't hold. */
  private String encodable(String text) {
    CharsetEncoder encoder = charset.newEncoder();
    if (encoder.canEncode(text)) {
      return text;
    }
    StringBuilder result = new StringBuilder();
    text.codePoints()
        .forEach(
            point -> {
              String character = Character.toString(point);
              result.append(encoder.canEncode(character) ? character : "&#" + point + ";");
            });
    return result.toString();
  }

  /** A fragment without the white space between its tags, to compare what two say. */
  public static String bare(String fragment) {
    return fragment.replaceAll(">\\s+<", "><").replaceAll("\\s+/>", "/>").strip();
  }
}
