package stafette.json;

import com.google.gson.JsonElement;
import com.google.gson.JsonPrimitive;
import java.util.function.Predicate;
import stafette.words.Sentence;

/** What a value must be that is no object. */
record Wanted(Predicate<JsonElement> fits, Sentence inWords) {
  /** No figure of ours goes beyond. */
  private static final double LARGEST = 1e6;

  static Wanted of(Class<?> type, Member member) {
    if (Form.of(type).isPresent()) {
      Form<?> form = Form.of(type).get();
      return new Wanted(found -> form.read().apply(found).isPresent(), form.wanted());
    }
    if (type == String.class) {
      return new Wanted(found -> Form.text(found).isPresent(), Sentence.of("a text in quotes"));
    }
    if (type == boolean.class || type == Boolean.class) {
      return new Wanted(
          found -> found instanceof JsonPrimitive primitive && primitive.isBoolean(),
          Sentence.of("true or false"));
    }
    return type == int.class || type == Integer.class ? whole(member) : number(member);
  }

  private static Wanted whole(Member member) {
    double least = member.get(Means.Least.class).map(Means.Least::value).orElse(0.0);
    return new Wanted(found -> isWhole(found, least), whole((int) least));
  }

  static Sentence whole(int least) {
    return Sentence.of("a whole number from {0} to {1}", least, (int) LARGEST);
  }

  static boolean isWhole(JsonElement found, double least) {
    return numeric(found)
        && found.getAsDouble() % 1 == 0
        && least <= found.getAsDouble()
        && found.getAsDouble() <= LARGEST;
  }

  private static Wanted number(Member member) {
    double least = member.get(Means.Least.class).map(Means.Least::value).orElse(-LARGEST);
    double above = member.get(Means.Above.class).map(Means.Above::value).orElse(-LARGEST - 1);
    double below = member.get(Means.Below.class).map(Means.Below::value).orElse(LARGEST + 1);
    return new Wanted(
        found ->
            numeric(found)
                && least <= found.getAsDouble()
                && above < found.getAsDouble()
                && found.getAsDouble() < below
                && found.getAsDouble() <= LARGEST,
        inWords(least, above, below));
  }

  private static Sentence inWords(double least, double above, double below) {
    if (below <= LARGEST) {
      return above >= 0
          ? Sentence.of("above {0} and below {1}", (int) above, (int) below)
          : Sentence.of("{0} or above and below {1}", (int) least, (int) below);
    }
    if (above >= 0) {
      return Sentence.of("a number above {0}", (int) above);
    }
    return least >= 0 ? Sentence.of("{0} or above", (int) least) : Sentence.of("a number");
  }

  private static boolean numeric(JsonElement found) {
    return found instanceof JsonPrimitive primitive && primitive.isNumber();
  }
}
