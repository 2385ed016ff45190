package stafette.musicxml.text;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.time.Rational;
import stafette.words.Sentence;

/**
 * Numbers as files write them: plain decimals of at most nine figures on either side of the point.
 */
public final class DecimalText {
  private static final Pattern PLAIN =
      Pattern.compile("[+-]?(?:\\d{1,9}(?:\\.\\d{0,9})?|\\.\\d{1,9})");
  private static final Pattern FIRST = Pattern.compile("\\d{1,9}(?:\\.\\d{1,9})?");
  private static final int SHOWN = 30;

  private DecimalText() {}

  public static Optional<Rational> parse(String text) {
    return PLAIN.matcher(text).matches()
        ? Optional.of(Rational.of(new BigDecimal(text)))
        : Optional.empty();
  }

  /** The first number in a text such as "c. 92". */
  public static Optional<Rational> firstIn(String text) {
    Matcher matcher = FIRST.matcher(text);
    return matcher.find()
        ? Optional.of(Rational.of(new BigDecimal(matcher.group())))
        : Optional.empty();
  }

  public static Rational of(Element element) throws Malformed {
    return parse(element.text()).orElseThrow(() -> notANumber(element));
  }

  /** The number that an element holds, rounded to a whole one, halves upward. */
  public static int whole(Element element, int least, int most) throws Malformed {
    int value = of(element).rounded().intValueExact();
    if (value < least || value > most) {
      throw new Malformed(
          Sentence.of(
              "<{0}> is {1}, which is not between {2} and {3}",
              element.name(), value, least, most));
    }
    return value;
  }

  /** The figure of the first child of that name, or the other value if there is none. */
  public static int wholeOf(Element parent, String child, int least, int most, int otherwise)
      throws Malformed {
    Optional<Element> found = parent.child(child);
    return found.isPresent() ? whole(found.get(), least, most) : otherwise;
  }

  private static Malformed notANumber(Element element) {
    String text = element.text();
    return new Malformed(
        Sentence.of(
            "<{0}> should hold a number but holds \"{1}\"",
            element.name(), text.length() > SHOWN ? text.substring(0, SHOWN) + "…" : text));
  }
}
