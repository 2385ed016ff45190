package stafette.chairs;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What words say of who plays: "1.", "a 2", "div.", "solo".
 *
 * @param numbers of the chairs that play; empty for all
 */
public record ChairMark(List<Integer> numbers) {
  public static final ChairMark ALL = new ChairMark(List.of());

  private static final int FLAGS =
      Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS;

  /** Italian, which all scores use, and the usual English, German and French words. */
  private static final Pattern TOGETHER =
      Pattern.compile(
          "\\b(?:a|à|zu)\\s?(?:[2-8]|due|tre|quattro|deux|trois|quatre|zweien|dreien)\\b|\\btutti\\b"
              + "|\\bunis(?:ono|on|oni)?\\b|\\b(?:beide|alle|both|all|tous|ensemble|les deux)\\b",
          FLAGS);

  private static final Pattern DIVIDED =
      Pattern.compile("\\b(?:div(?:isi|isés|ided)?\\b|get\\.|geteilt\\b)", FLAGS);

  private static final Pattern SOLO = Pattern.compile("\\s*(?:solo|soli)\\.?\\s*", FLAGS);

  public ChairMark {
    numbers = List.copyOf(numbers);
  }

  /** What words say; empty if they say nothing of it. */
  public static Optional<ChairMark> in(String words) {
    List<Integer> numbers = ChairNumbers.ofMark(words);
    if (!numbers.isEmpty()) {
      return Optional.of(new ChairMark(numbers));
    }
    if (DIVIDED.matcher(words).find() || TOGETHER.matcher(words).find()) {
      return Optional.of(ALL);
    }
    return SOLO.matcher(words).matches()
        ? Optional.of(new ChairMark(List.of(1)))
        : Optional.empty();
  }

  public boolean isForAll() {
    return numbers.isEmpty();
  }
}
