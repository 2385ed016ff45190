package stafette.cli;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import stafette.ask.LockWish;
import stafette.ask.TempiWish;
import stafette.plan.Joins;
import stafette.plan.OverlapRule;
import stafette.score.Slurring;
import stafette.words.Refusal;

/** Reads what is typed for options; where it can't be read, that is said with the option's name. */
final class Conversions {
  private Conversions() {}

  /** Makes something of a text, or says what to write instead. */
  interface Parser<T> {
    T parse(String text) throws Refusal;
  }

  /** Teaches a command line the kinds of values that it doesn't know by itself. */
  static void teach(CommandLine line) {
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.registerConverter(LockWish.class, LockWish::parse);
    line.registerConverter(OverlapRule.class, PlanOptions::overlapRule);
    line.registerConverter(TempiWish.class, TempiWish::parse);
    line.registerConverter(Slurring.class, ScoreOptions::slurring);
    line.registerConverter(Joins.class, SheetOptions.MarkingOptions::joins);
  }

  /** Reads a text that has no type of its own to be known by. */
  static <T> T read(String option, String text, Parser<T> parser) throws Refusal {
    try {
      return parser.parse(text);
    } catch (Refusal e) {
      throw Refusal.wrongUse(instead(option, text, Options.say(e)));
    }
  }

  /** Refuses seconds outside of these limits. */
  static double seconds(String option, double value, double least, double most) throws Refusal {
    if (!(value >= least && value <= most)) {
      throw Refusal.wrongUse(
          option + " lies between " + plain(least) + " and " + plain(most) + " seconds");
    }
    return value;
  }

  static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** What is wrong with a command's options. */
  static String said(ParameterException exception) {
    if (exception.getArgSpec() instanceof OptionSpec option) {
      Throwable cause = exception.getCause();
      if (cause instanceof Refusal refusal) {
        return instead(option.longestName(), exception.getValue(), Options.say(refusal));
      }
      if (cause instanceof TypeConversionException && option.type().isEnum()) {
        return instead(option.longestName(), exception.getValue(), "write " + words(option.type()));
      }
    }
    return String.valueOf(exception.getMessage());
  }

  private static String instead(String option, @Nullable String text, String why) {
    return option + " \"" + text + "\": " + why;
  }

  /** "keep, cue or remove". */
  private static String words(Class<?> values) {
    List<String> words =
        Arrays.stream(values.getEnumConstants())
            .map(value -> value.toString().toLowerCase(Locale.ROOT))
            .toList();
    int last = words.size() - 1;
    return String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }
}
