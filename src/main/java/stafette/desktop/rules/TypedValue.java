package stafette.desktop.rules;

import java.util.Optional;
import java.util.OptionalInt;
import stafette.desktop.texts.Texts;
import stafette.desktop.texts.Typed;
import stafette.limits.Assurance;
import stafette.plan.OverlapRule;

/**
 * What somebody typed, read.
 *
 * @param value what it says, if it says anything
 * @param problem in words, what is wrong with it and what to write; empty if nothing is
 */
record TypedValue<T>(Optional<T> value, String problem) {
  private static final double LONGEST_REST_SECONDS = 3600;
  private static final double LEAST_PERCENT = 50;
  private static final double MOST_PERCENT = 99;
  private static final String COUNT = "[1-9][0-9]{0,2}";

  private static <T> TypedValue<T> of(T value) {
    return new TypedValue<>(Optional.of(value), "");
  }

  private static <T> TypedValue<T> none(String problem) {
    return new TypedValue<>(Optional.empty(), problem);
  }

  /**
   * How much two players share.
   *
   * @param most left empty, it is as many notes as fit into a beat
   */
  static TypedValue<OverlapRule> overlap(String least, String most, Texts texts) {
    OptionalInt from = count(least);
    OptionalInt to = count(most);
    if (from.isEmpty() || (to.isEmpty() && !most.isBlank())) {
      return none(texts.get("rules.overlap.none"));
    }
    return to.orElse(from.getAsInt()) < from.getAsInt()
        ? none(texts.get("rules.overlap.order"))
        : of(new OverlapRule(from.getAsInt(), to));
  }

  private static OptionalInt count(String typed) {
    String plain = typed.strip();
    return plain.matches(COUNT) ? OptionalInt.of(Integer.parseInt(plain)) : OptionalInt.empty();
  }

  /** Rest before an entry, in seconds. */
  static TypedValue<Double> ready(String typed, Texts texts) {
    return Typed.figure(typed)
        .filter(seconds -> seconds >= 0 && seconds <= LONGEST_REST_SECONDS)
        .map(TypedValue::of)
        .orElseGet(() -> none(texts.get("rules.ready.none")));
  }

  /** The share of players who should manage; a sign for per cent may follow. */
  static TypedValue<Assurance> assurance(String typed, Texts texts) {
    return Typed.figure(typed.strip().replaceFirst("\\s*%$", ""))
        .filter(percent -> percent >= LEAST_PERCENT && percent <= MOST_PERCENT)
        .map(Assurance::new)
        .map(TypedValue::of)
        .orElseGet(() -> none(texts.get("rules.assurance.none")));
  }
}
