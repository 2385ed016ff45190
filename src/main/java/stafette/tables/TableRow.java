package stafette.tables;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import stafette.limits.Grade;
import stafette.limits.Source;
import stafette.limits.TypedNames;
import stafette.words.Sentence;

/**
 * One row of a table. What a cell can't give becomes a problem and a stand-in value, so that
 * reading goes on to the next; nothing read is used once there are problems.
 */
final class TableRow {
  private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]{1,9}(\\.[0-9]{1,9})?");

  private final String place;
  private final Map<String, String> cells;
  private final boolean decimalComma;
  private final Problems problems;

  TableRow(String place, Map<String, String> cells, boolean decimalComma, Problems problems) {
    this.place = place;
    this.cells = Map.copyOf(cells);
    this.decimalComma = decimalComma;
    this.problems = problems;
  }

  /** "techniques.csv, row 14". */
  String place() {
    return place;
  }

  void problem(String what) {
    problems.add(place, what);
  }

  void problem(Sentence what) {
    problems.add(place, what);
  }

  /** What a cell holds, without spaces round it; empty if there is no such column. */
  String text(String column) {
    return cells.getOrDefault(column, "");
  }

  boolean has(String column) {
    return !text(column).isEmpty();
  }

  String required(String column) {
    if (!has(column)) {
      problem(column + " is empty; fill it in");
    }
    return text(column);
  }

  /** A number; empty for an empty cell. */
  OptionalDouble number(String column) {
    return has(column) ? read(column, "a number") : OptionalDouble.empty();
  }

  /** A number above zero; empty for an empty cell. */
  OptionalDouble positive(String column) {
    OptionalDouble value = has(column) ? read(column, "a number above 0") : OptionalDouble.empty();
    if (value.isPresent() && value.getAsDouble() <= 0) {
      return refuse(column, "a number above 0");
    }
    return value;
  }

  /** Zero or a number above; empty for an empty cell. */
  OptionalDouble notNegative(String column) {
    OptionalDouble value = has(column) ? read(column, "0 or above") : OptionalDouble.empty();
    return value.isPresent() && value.getAsDouble() < 0 ? refuse(column, "0 or above") : value;
  }

  /** The value, or a problem if the cell is empty. */
  double demanded(String column, OptionalDouble value) {
    if (!has(column)) {
      required(column);
    }
    return value.orElse(1);
  }

  int whole(String column, int least, int most) {
    String wanted = "a whole number from " + least + " to " + most;
    double value = demanded(column, has(column) ? read(column, wanted) : OptionalDouble.empty());
    if (value != Math.rint(value) || value < least || value > most) {
      refuse(column, wanted);
      return least;
    }
    return (int) value;
  }

  /** One of some words, the first of them for an empty cell. */
  <T> T oneOf(String column, List<String> words, List<T> meanings) {
    if (!has(column)) {
      return meanings.get(0);
    }
    for (int i = 0; i < words.size(); i++) {
      if (TypedNames.same(words.get(i), text(column))) {
        return meanings.get(i);
      }
    }
    refuse(column, "one of " + String.join(", ", words));
    return meanings.get(0);
  }

  Source source() {
    String text = required("source");
    String grade = required("grade");
    Optional<Grade> known =
        List.of(Grade.values()).stream().filter(g -> g.name().equals(grade)).findFirst();
    if (!grade.isEmpty() && known.isEmpty()) {
      refuse("grade", "A, B, C or D");
    }
    return new Source(text, known.orElse(Grade.D));
  }

  /** Says that a cell must be something else, and gives nothing. */
  OptionalDouble refuse(String column, String wanted) {
    problem(column + " must be " + wanted + ", found '" + text(column) + "'");
    return OptionalDouble.empty();
  }

  private OptionalDouble read(String column, String wanted) {
    String text = decimalComma ? text(column).replace(',', '.') : text(column);
    return NUMBER.matcher(text).matches()
        ? OptionalDouble.of(Double.parseDouble(text))
        : refuse(column, wanted);
  }
}
