package stafette.limits;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * How names are compared that people type, without case, accents and punctuation; and how they are
 * made of one another.
 */
public final class TypedNames {
  private static final int MOST_SUGGESTIONS = 3;
  private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[^a-z0-9]+");

  private TypedNames() {}

  /**
   * Lower case words of letters a to z and digits, one space between them: "sautille", "b flat".
   */
  public static String plain(String text) {
    String spelled =
        text.replace("♭", " flat ")
            .replace("♯", " sharp ")
            .replace("ß", "ss")
            .replace("œ", "oe")
            .replace("æ", "ae")
            .replace("ø", "o");
    String bare =
        ACCENTS.matcher(Normalizer.normalize(spelled, Normalizer.Form.NFD)).replaceAll("");
    return BETWEEN_WORDS.matcher(bare.toLowerCase(Locale.ROOT)).replaceAll(" ").trim();
  }

  /** Whether two names are the same but for case, accents and punctuation. */
  public static boolean same(String one, String other) {
    return plain(one).equals(plain(other));
  }

  /** "clarinet" of "clarinet in B-flat". */
  public static String withoutKey(String instrument) {
    return instrument.replaceFirst(" in .*", "");
  }

  /** "Clarinet" of "clarinet". */
  public static String capitalised(String name) {
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  /**
   * Up to three of the names that are likest to a text, likest first; none if all are quite unlike.
   */
  public static List<String> nearest(String text, Collection<String> names) {
    String typed = plain(text);
    return names.stream()
        .distinct()
        .filter(name -> distance(typed, plain(name)) <= tolerance(typed))
        .sorted(
            Comparator.comparingInt((String name) -> distance(typed, plain(name)))
                .thenComparing(Comparator.naturalOrder()))
        .limit(MOST_SUGGESTIONS)
        .toList();
  }

  private static int tolerance(String typed) {
    return Math.max(1, (typed.length() + 1) / 3);
  }

  /** How many letters to insert, drop or change (Levenshtein's distance, row by row). */
  private static int distance(String one, String other) {
    int[] above = new int[other.length() + 1];
    for (int j = 0; j <= other.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      int[] row = new int[other.length() + 1];
      row[0] = i;
      for (int j = 1; j <= other.length(); j++) {
        int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(above[j - 1] + change, 1 + Math.min(above[j], row[j - 1]));
      }
      above = row;
    }
    return above[other.length()];
  }
}
