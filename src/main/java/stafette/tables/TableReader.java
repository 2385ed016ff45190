package stafette.tables;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.Repertoire;
import stafette.limits.Technique;
import stafette.limits.TypedNames;
import stafette.plan.Weights;

/** Reads all tables, two layers of them, into instruments and weights. */
final class TableReader {
  private final Map<Table, List<TableRow>> base = new EnumMap<>(Table.class);
  private final Map<Table, List<TableRow>> over = new EnumMap<>(Table.class);

  TableReader(Map<Table, String> baseTexts, Map<Table, String> overTexts, Problems problems) {
    baseTexts.forEach((table, text) -> base.put(table, TableSheet.read(table, text, problems)));
    overTexts.forEach((table, text) -> over.put(table, TableSheet.read(table, text, problems)));
  }

  /** What the tables say; of no use once there are problems. */
  LimitTables read() {
    Map<TableRow, Instrument> bare = new LinkedHashMap<>();
    for (TableRow row : layered(Table.INSTRUMENTS, TableReader::instrumentKey)) {
      bare.put(row, InstrumentRows.read(row));
    }
    refuseSharedNames(bare);
    Catalogue known = new Catalogue(List.copyOf(bare.values()));
    List<TableRow> rows =
        layered(
            Table.TECHNIQUES,
            row -> owner(row, known).map(name -> techniqueKey(name, row.text("technique"))));
    Factors factors = factors(known, rows.stream().map(TableReader::named).toList());
    Map<String, List<Technique>> techniques = techniques(rows, known, factors);
    Map<String, Repertoire> asked =
        RepertoireRows.read(
            layered(
                Table.REPERTOIRE,
                row -> owner(row, known).map(name -> RepertoireRows.key(name, row))),
            known);
    List<Instrument> complete = new ArrayList<>();
    bare.forEach(
        (row, instrument) -> {
          List<Technique> own = techniques.getOrDefault(instrument.name(), List.of());
          if (own.isEmpty()) {
            row.problem("has no technique; add a row for it to techniques.csv");
          }
          complete.add(
              InstrumentRows.complete(instrument, own, factors.ofBreath(instrument))
                  .asked(asked.getOrDefault(instrument.name(), Repertoire.NONE)));
        });
    Catalogue catalogue = new Catalogue(complete);
    StatementRows statements = new StatementRows(catalogue);
    complete.forEach(statements::addAsked);
    layered(Table.STATEMENTS, statements::key)
        .forEach(row -> statements.add(row, place(Table.STATEMENTS, row)));
    return new LimitTables(
        catalogue,
        weights(known),
        statements.evidence(),
        RegisterRows.read(
            layered(
                Table.REGISTERS, row -> owner(row, known).map(name -> RegisterRows.key(name, row))),
            known),
        () -> contradictions(statements, places(rows, known)));
  }

  private static List<String> contradictions(StatementRows statements, Map<String, String> places) {
    return statements.contradictions(
        (instrument, technique) ->
            places.getOrDefault(techniqueKey(instrument.name(), technique.name()), ""));
  }

  /** Where the row of each technique stands. */
  private Map<String, String> places(List<TableRow> rows, Catalogue known) {
    Map<String, String> result = new HashMap<>();
    for (TableRow row : rows) {
      known
          .find(row.text("instrument"))
          .map(instrument -> techniqueKey(instrument.name(), row.text("technique")))
          .ifPresent(key -> result.put(key, place(Table.TECHNIQUES, row)));
    }
    return result;
  }

  private String place(Table table, TableRow row) {
    boolean own = over.getOrDefault(table, List.of()).contains(row);
    return own ? row.place() : "built-in " + row.place();
  }

  private static String techniqueKey(String instrument, String technique) {
    return instrument + "|" + TypedNames.plain(technique);
  }

  private static Optional<String> instrumentKey(TableRow row) {
    return Optional.of(TypedNames.plain(row.text("instrument")));
  }

  private static String named(TableRow row) {
    return TypedNames.plain(row.text("technique"));
  }

  /** The name of the instrument that a row is about; if it is unknown, that is a problem. */
  private static Optional<String> owner(TableRow row, Catalogue known) {
    String text = row.required("instrument");
    Optional<String> name = known.find(text).map(Instrument::name);
    if (name.isEmpty() && !text.isEmpty()) {
      row.problem(known.unknown(text));
    }
    return name;
  }

  /** A name may stand for one instrument only; the row of the upper layer is the one to blame. */
  private void refuseSharedNames(Map<TableRow, Instrument> instruments) {
    List<TableRow> own = over.getOrDefault(Table.INSTRUMENTS, List.of());
    Map<String, String> owners = new HashMap<>();
    instruments.entrySet().stream()
        .sorted(Comparator.comparing(entry -> own.contains(entry.getKey())))
        .forEach(entry -> refuseSharedNames(entry.getKey(), entry.getValue(), owners));
  }

  private static void refuseSharedNames(
      TableRow row, Instrument instrument, Map<String, String> owners) {
    for (String name :
        InstrumentRows.names(instrument).map(TypedNames::plain).collect(Collectors.toSet())) {
      String owner = owners.putIfAbsent(name, instrument.name());
      if (owner != null) {
        row.problem("'" + name + "' is already a name of " + owner);
      }
    }
  }

  private Factors factors(Catalogue known, List<String> techniques) {
    Factors factors = new Factors();
    for (TableRow row : layered(Table.FACTORS, row -> Factors.key(row, known))) {
      factors.add(row, known, techniques);
    }
    return factors;
  }

  private static Map<String, List<Technique>> techniques(
      List<TableRow> rows, Catalogue known, Factors factors) {
    Map<String, List<Technique>> result = new HashMap<>();
    for (TableRow row : rows) {
      known
          .find(row.text("instrument"))
          .ifPresent(
              instrument ->
                  result
                      .computeIfAbsent(instrument.name(), name -> new ArrayList<>())
                      .add(TechniqueRows.read(row, instrument, factors)));
    }
    return result;
  }

  private Weights weights(Catalogue known) {
    WeightRows weights = new WeightRows(known);
    layered(Table.WEIGHTS, WeightRows::key).forEach(weights::add);
    layered(Table.BLEND, row -> WeightRows.blendKey(row, known)).forEach(weights::addBlend);
    return weights.read();
  }

  /**
   * The rows of a table, those of the upper layer in the place of those with the same key. A row
   * without a key is left out: whoever gives none has said why.
   */
  private List<TableRow> layered(Table table, Function<TableRow, Optional<String>> key) {
    Map<String, TableRow> result = keyed(base.getOrDefault(table, List.of()), key);
    result.putAll(keyed(over.getOrDefault(table, List.of()), key));
    return List.copyOf(result.values());
  }

  private static Map<String, TableRow> keyed(
      List<TableRow> rows, Function<TableRow, Optional<String>> key) {
    Map<String, TableRow> result = new LinkedHashMap<>();
    for (TableRow row : rows) {
      key.apply(row)
          .ifPresent(
              name -> {
                TableRow earlier = result.putIfAbsent(name, row);
                if (earlier != null) {
                  row.problem("says again what " + earlier.place() + " says; keep one of them");
                }
              });
    }
    return result;
  }
}
