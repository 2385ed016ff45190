package stafette.tables;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import stafette.limits.Act;
import stafette.limits.Groups;
import stafette.limits.Instrument;
import stafette.limits.Limit;
import stafette.limits.Technique;

/** Reads the rows of techniques.csv. */
final class TechniqueRows {
  private static final List<String> YES_NO = List.of("no", "yes");
  private static final List<Boolean> TRUTH = List.of(false, true);

  private TechniqueRows() {}

  static Technique read(TableRow row, Instrument instrument, Factors factors) {
    row.required("act");
    String name = row.required("technique");
    Act act = oneOf(row, "act", Act.values());
    return new Technique(
        name,
        act,
        oneOf(row, "pitches", Technique.Pitches.values()),
        oneOf(row, "slurs", Technique.SlurUse.values()),
        oneOf(row, "groups", Groups.values()),
        row.oneOf("twin strings", YES_NO, TRUTH),
        row.oneOf("takers", List.of("1", "2"), List.of(1, 2)),
        row.oneOf("expected", List.of("yes", "no"), List.of(true, false)),
        limit(row),
        row.notNegative("lowest").orElse(0),
        factors.of(instrument, name, act),
        row.source(),
        row.text("note"));
  }

  private static Limit limit(TableRow row) {
    double peak = row.demanded("peak", row.positive("peak"));
    double sustained = row.notNegative("sustained").orElse(Limit.DEFAULT_SUSTAINED_SHARE * peak);
    if (sustained > peak) {
      row.problem(
          "sustained (" + row.text("sustained") + ") is above peak (" + row.text("peak") + ")");
    }
    return new Limit(
        peak,
        row.demanded("deviation", row.notNegative("deviation")),
        sustained,
        row.positive("stamina"),
        row.positive("recovery").orElse(Limit.DEFAULT_RECOVERY_SECONDS),
        row.positive("moving"));
  }

  private static <E extends Enum<E>> E oneOf(TableRow row, String column, E[] values) {
    List<String> words =
        Arrays.stream(values).map(value -> value.name().toLowerCase(Locale.ROOT)).toList();
    return row.oneOf(column, words, List.of(values));
  }
}
