package stafette.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stafette.limits.Act;
import stafette.limits.Catalogue;
import stafette.limits.Condition;
import stafette.limits.Instrument;
import stafette.limits.TypedNames;

/**
 * The rows of factors.csv. Where several fit, the one that names the instrument wins over one that
 * names its family, and that over one for all; among those the one that names the technique over
 * one that names the act.
 */
final class Factors {
  private static final String ALL = "*";
  private static final String BREATH = "breath";
  private static final List<String> CONDITIONS =
      Arrays.stream(Condition.values())
          .map(condition -> condition.name().toLowerCase(Locale.ROOT).replace('_', ' '))
          .toList();

  private final List<Factor> factors = new ArrayList<>();

  /** One row: for whom, for what, when, and how much. */
  private record Factor(String whose, String what, Condition condition, double value) {}

  /** What identifies a row; empty where its instrument is not known, which is then a problem. */
  static Optional<String> key(TableRow row, Catalogue known) {
    String text = row.required("instrument");
    Optional<String> whose = whose(text, known);
    if (whose.isEmpty() && !text.isEmpty()) {
      row.problem(known.unknown(text));
    }
    return whose.map(
        name ->
            String.join(
                "|",
                name,
                TypedNames.plain(row.text("technique")),
                TypedNames.plain(row.text("condition"))));
  }

  void add(TableRow row, Catalogue known, List<String> techniques) {
    row.required("condition");
    String what = what(row.required("technique"));
    boolean general = List.of(ALL, BREATH).contains(what) || acts().contains(what);
    if (!what.isEmpty() && !general && !techniques.contains(what)) {
      row.problem(
          "no technique is called '"
              + row.text("technique")
              + "'; name one of techniques.csv, an act ("
              + String.join(", ", acts())
              + "), breath or *");
    }
    double value = row.demanded("factor", row.positive("factor"));
    row.source();
    whose(row.text("instrument"), known)
        .ifPresent(whose -> factors.add(new Factor(whose, what, condition(row), value)));
  }

  Map<Condition, Double> of(Instrument instrument, String technique, Act act) {
    String plainAct = act.name().toLowerCase(Locale.ROOT);
    return chosen(instrument, List.of(TypedNames.plain(technique), plainAct, ALL));
  }

  Map<Condition, Double> ofBreath(Instrument instrument) {
    return chosen(instrument, List.of(BREATH));
  }

  private Map<Condition, Double> chosen(Instrument instrument, List<String> whats) {
    Map<Condition, Double> result = new EnumMap<>(Condition.class);
    for (String whose : List.of(instrument.name(), instrument.family(), ALL)) {
      for (String what : whats) {
        factors.stream()
            .filter(factor -> factor.whose.equals(whose) && factor.what.equals(what))
            .forEach(factor -> result.putIfAbsent(factor.condition, factor.value));
      }
    }
    return result;
  }

  private static String what(String technique) {
    return technique.equals(ALL) ? ALL : TypedNames.plain(technique);
  }

  private static Condition condition(TableRow row) {
    return row.oneOf("condition", CONDITIONS, List.of(Condition.values()));
  }

  private static Optional<String> whose(String text, Catalogue known) {
    return text.equals(ALL) || InstrumentRows.FAMILIES.contains(text)
        ? Optional.of(text)
        : known.find(text).map(Instrument::name);
  }

  private static List<String> acts() {
    return Arrays.stream(Act.values()).map(act -> act.name().toLowerCase(Locale.ROOT)).toList();
  }
}
