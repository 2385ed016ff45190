package stafette.words;

import java.util.Locale;
import java.util.Optional;

/**
 * What scores and drawings can hold, as both are XML: all characters but most control characters
 * and halves of surrogate pairs (Extensible Markup Language (XML) 1.0, fifth edition, W3C 2008,
 * section 2.2).
 */
public final class XmlText {
  private XmlText() {}

  /** Whether it can hold a character. */
  public static boolean canHold(int codePoint) {
    return codePoint == 0x9
        || codePoint == 0xA
        || codePoint == 0xD
        || (codePoint >= 0x20 && codePoint <= 0xD7FF)
        || (codePoint >= 0xE000 && codePoint <= 0xFFFD)
        || codePoint >= 0x10000;
  }

  /** The first character of a text that it can't hold, such as "U+0007". */
  public static Optional<String> refused(String text) {
    return text.codePoints()
        .filter(codePoint -> !canHold(codePoint))
        .mapToObj(codePoint -> String.format(Locale.ROOT, "U+%04X", codePoint))
        .findFirst();
  }
}
