package stafette.musicxml.write;

import java.util.regex.Pattern;
import stafette.time.Rational;

/** A direction that stands later in the text than it is meant, and says so. */
final class LateSign {
  private static final Pattern DIRECTION = Pattern.compile("^<direction[\\s>]");
  private static final Pattern OFFSET = Pattern.compile("<offset[\\s>]");
  private static final String LAST_KIND = "</direction-type>";

  private LateSign() {}

  /** Whether an element can be moved so: a direction that isn't already. */
  static boolean canBe(String element) {
    return DIRECTION.matcher(element).find()
        && !OFFSET.matcher(element).find()
        && element.contains(LAST_KIND);
  }

  /**
   * The direction as it is to stand.
   *
   * @param back how many divisions before its new place it is meant
   */
  static String of(String direction, Rational back) {
    int at = direction.lastIndexOf(LAST_KIND) + LAST_KIND.length();
    String offset = "<offset sound=\"yes\">-" + back + "</offset>";
    return direction.substring(0, at) + offset + direction.substring(at);
  }
}
