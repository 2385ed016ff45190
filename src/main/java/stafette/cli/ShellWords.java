package stafette.cli;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Words as a shell takes them: each stays one word, whatever is in it. */
final class ShellWords {
  private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}_./:,=+%@-]+");

  /** What a shell looks for between double quotes, and what it takes for a history. */
  private static final Pattern SPECIAL = Pattern.compile("[\"$`\\\\!]");

  private ShellWords() {}

  static String join(List<String> words) {
    return words.stream().map(ShellWords::quoted).collect(Collectors.joining(" "));
  }

  static String quoted(String word) {
    if (PLAIN.matcher(word).matches()) {
      return word;
    }
    return SPECIAL.matcher(word).find()
        ? "'" + word.replace("'", "'\\''") + "'"
        : "\"" + word + "\"";
  }
}
