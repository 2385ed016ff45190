package stafette.chairs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The numbers of chairs in a name or a mark: "Flutes 1.2", "Ob. I II", "Horns 1-4", "2. solo", "1st
 * Flute", and how many there are in "4 Horns in F".
 */
public final class ChairNumbers {
  /** A section of horns has eight at most; higher numbers are something else. */
  private static final int MOST = 8;

  private static final String ONE = "(?:[1-8](?![0-9])|I{1,3}|IV|VI{0,3})";
  private static final String ENDING = "(?:st|nd|rd|th|er|ère|re|e|ème|o|a|º|ª|°|\\.)?";
  private static final String BETWEEN = "\\s*(?:[.,/&+–-]|\\b(?:u\\.|und|and|et|ed|e|y)\\b)?\\s*";
  private static final Pattern LIST =
      Pattern.compile(
          "(?<![\\p{L}\\p{N}])"
              + ONE
              + ENDING
              + "(?:"
              + BETWEEN
              + ONE
              + ENDING
              + ")*(?![\\p{L}\\p{N}])");
  private static final Pattern ALONE =
      Pattern.compile("(?<![\\p{L}\\p{N}])" + ONE + "(?![\\p{L}\\p{N}])");
  private static final List<String> ROMAN =
      List.of("I", "II", "III", "IV", "V", "VI", "VII", "VIII");
  private static final Pattern NUMBER = Pattern.compile(ONE);
  private static final Pattern RANGE = Pattern.compile("(" + ONE + ")\\s*[–-]\\s*(" + ONE + ")");
  private static final Pattern COUNT =
      Pattern.compile(
          "^\\s*([2-8]|zwei|drei|vier|due|tre|quattro|deux|trois|quatre|two|three|four)\\s+(?=\\p{L})",
          Pattern.CASE_INSENSITIVE);

  private ChairNumbers() {}

  /** The numbers in a name, rising; empty if it has none. */
  public static List<Integer> in(String name) {
    Optional<Integer> count = count(name);
    if (count.isPresent()) {
      return IntStream.rangeClosed(1, count.get()).boxed().toList();
    }
    Set<Integer> numbers = new TreeSet<>();
    Matcher list = LIST.matcher(name);
    while (list.find()) {
      numbers.addAll(listed(list.group()));
    }
    return List.copyOf(numbers);
  }

  /**
   * The same name with another number, in its kind of figures: "Flauto II" for "Flauto I"; empty if
   * it has several, or one that is declined.
   *
   * @param number 1 to 8
   */
  public static Optional<String> renumbered(String name, int number) {
    List<MatchResult> figures = ALONE.matcher(name).results().toList();
    if (figures.isEmpty() && in(name).isEmpty()) {
      return Optional.of(name + " " + number);
    }
    if (figures.size() != 1 || in(name).size() != 1) {
      return Optional.empty();
    }
    MatchResult figure = figures.get(0);
    boolean roman = !Character.isDigit(figure.group().charAt(0));
    return Optional.of(
        name.substring(0, figure.start())
            + (roman ? ROMAN.get(number - 1) : String.valueOf(number))
            + name.substring(figure.end()));
  }

  /** "4 Horns in F": so many, where no numbers of single ones follow. */
  private static Optional<Integer> count(String name) {
    Matcher count = COUNT.matcher(name);
    if (!count.find() || LIST.matcher(name.substring(count.end())).find()) {
      return Optional.empty();
    }
    String word = count.group(1).toLowerCase(Locale.ROOT);
    return Optional.of(
        switch (word) {
          case "zwei", "due", "deux", "two" -> 2;
          case "drei", "tre", "trois", "three" -> 3;
          case "vier", "quattro", "quatre", "four" -> 4;
          default -> Integer.parseInt(word);
        });
  }

  /** Those of a mark that is nothing but numbers, perhaps with "solo"; empty if it says else. */
  static List<Integer> ofMark(String mark) {
    String bare = mark.replaceAll("(?i)\\bsol[oi]\\b\\.?", " ").trim();
    Matcher list = LIST.matcher(bare);
    return list.matches() || (list.lookingAt() && list.end() == bare.length())
        ? List.copyOf(new TreeSet<>(listed(bare)))
        : List.of();
  }

  /** The numbers with which a mark begins: "2. muta in Picc."; empty if it begins with none. */
  static List<Integer> leading(String mark) {
    Matcher list = LIST.matcher(mark.trim());
    return list.lookingAt() ? listed(list.group()) : List.of();
  }

  private static List<Integer> listed(String list) {
    List<Integer> numbers = new ArrayList<>();
    Matcher range = RANGE.matcher(list);
    while (range.find()) {
      IntStream.rangeClosed(number(range.group(1)), number(range.group(2))).forEach(numbers::add);
    }
    Matcher number = NUMBER.matcher(list);
    while (number.find()) {
      numbers.add(number(number.group()));
    }
    return numbers.stream().filter(each -> each <= MOST).distinct().toList();
  }

  private static int number(String text) {
    return Character.isDigit(text.charAt(0)) ? Integer.parseInt(text) : 1 + ROMAN.indexOf(text);
  }
}
