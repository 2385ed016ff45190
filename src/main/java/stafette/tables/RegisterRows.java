package stafette.tables;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.limits.Catalogue;
import stafette.limits.Register;
import stafette.limits.Registers;
import stafette.limits.TypedNames;

/** Reads the rows of registers.csv. */
final class RegisterRows {
  private RegisterRows() {}

  /** What identifies a row of an instrument. */
  static String key(String instrument, TableRow row) {
    return String.join("|", instrument, TypedNames.plain(row.text("from")));
  }

  static Registers read(List<TableRow> rows, Catalogue known) {
    Map<String, List<Register>> byInstrument = new HashMap<>();
    for (TableRow row : rows) {
      Optional<Register> register = register(row);
      known
          .find(row.text("instrument"))
          .ifPresent(
              instrument ->
                  register.ifPresent(
                      read ->
                          byInstrument
                              .computeIfAbsent(instrument.name(), name -> new ArrayList<>())
                              .add(read)));
    }
    return new Registers(byInstrument);
  }

  private static Optional<Register> register(TableRow row) {
    String word = row.required("word");
    double decibel = row.demanded("decibel", row.number("decibel"));
    row.source();
    return InstrumentRows.range(row, "from", "to").map(range -> new Register(range, word, decibel));
  }
}
