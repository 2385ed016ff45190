package stafette.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Something said: a sentence or a part of one.
 *
 * @param template in English, with {@code {0}}, {@code {1}} … where the facts go
 * @param facts what goes there: what is {@link Sayable}, whole numbers, decimals ({@link
 *     BigDecimal}), and texts that are the same in every language
 */
public record Sentence(String template, List<Object> facts) implements Sayable {
  /** Nothing said. */
  public static final Sentence NONE = name("");

  private static final Pattern GAP = Pattern.compile("\\{([0-9]+)}");

  public Sentence {
    facts = List.copyOf(facts);
  }

  /**
   * A sentence.
   *
   * @param template a literal, so that it can be found and translated
   */
  public static Sentence of(String template, Object... facts) {
    return new Sentence(template, List.of(facts));
  }

  /** The name of an instrument, a technique or a note value, which other languages have too. */
  public static Sentence name(String name) {
    return new Sentence(name, List.of());
  }

  /** One after the other. */
  public static Sentence list(String separator, Collection<?> facts) {
    String gaps =
        IntStream.range(0, facts.size())
            .mapToObj(i -> "{" + i + "}")
            .collect(Collectors.joining(separator));
    return new Sentence(gaps, List.copyOf(facts));
  }

  /** One after the other, with commas. */
  public static Sentence list(Collection<?> facts) {
    return list(", ", facts);
  }

  /** A number as a fact, rounded half up. */
  public static BigDecimal decimal(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
  }

  public boolean isEmpty() {
    return template.isEmpty();
  }

  /** A template with its gaps filled by facts; a gap without a fact stays as it is. */
  public static String fill(String template, List<Object> facts, Function<Object, String> say) {
    return GAP.matcher(template)
        .replaceAll(
            gap -> {
              int number = Integer.parseInt(gap.group(1));
              return Matcher.quoteReplacement(
                  number < facts.size() ? say.apply(facts.get(number)) : gap.group());
            });
  }

  @Override
  public Sentence inWords() {
    return this;
  }

  /** In English. */
  @Override
  public String toString() {
    return saying(Settable::inWords);
  }

  /** In English, with what can be set said as a front end does. */
  public String saying(Function<Settable, Sentence> how) {
    return fill(template, facts, fact -> english(fact, how));
  }

  private static String english(Object fact, Function<Settable, Sentence> how) {
    if (fact instanceof Settable settable) {
      return how.apply(settable).toString();
    }
    if (fact instanceof Sayable sayable) {
      return sayable.inWords().saying(how);
    }
    return fact instanceof BigDecimal decimal ? decimal.toPlainString() : fact.toString();
  }
}
