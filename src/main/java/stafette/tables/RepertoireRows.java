package stafette.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stafette.limits.Catalogue;
import stafette.limits.Repertoire;
import stafette.limits.Stroking;

/** Reads the rows of repertoire.csv. */
final class RepertoireRows {
  private static final int MOST = 1_000_000;
  private static final List<String> STROKINGS =
      Arrays.stream(Stroking.values())
          .map(stroking -> stroking.name().toLowerCase(Locale.ROOT))
          .toList();

  private RepertoireRows() {}

  /** What identifies a row about an instrument. */
  static String key(String instrument, TableRow row) {
    return String.join("|", instrument, row.text("stroking"), row.text("of 100"));
  }

  /** By the instrument's name. */
  static Map<String, Repertoire> read(List<TableRow> rows, Catalogue known) {
    Map<String, List<Repertoire.Row>> byInstrument = new HashMap<>();
    for (TableRow row : rows) {
      known
          .find(row.text("instrument"))
          .ifPresent(
              instrument ->
                  byInstrument
                      .computeIfAbsent(instrument.name(), name -> new ArrayList<>())
                      .add(read(row)));
    }
    Map<String, Repertoire> result = new HashMap<>();
    byInstrument.forEach((name, own) -> result.put(name, new Repertoire(own)));
    return result;
  }

  private static Repertoire.Row read(TableRow row) {
    row.required("stroking");
    return new Repertoire.Row(
        row.oneOf("stroking", STROKINGS, List.of(Stroking.values())),
        row.whole("scores", 1, MOST),
        row.whole("passages", 1, MOST),
        row.whole("of 100", 1, 100),
        row.demanded("rate", row.positive("rate")),
        row.demanded("seconds", row.positive("seconds")),
        row.whole("strokes", 1, MOST));
  }
}
