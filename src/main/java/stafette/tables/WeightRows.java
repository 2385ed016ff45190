package stafette.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.TypedNames;
import stafette.plan.Weights;

/** Reads the rows of weights.csv and blend.csv. */
final class WeightRows {
  private static final String TARGET = "overlap target:";
  private static final int MOST = 1_000_000;
  private static final List<String> PLACES =
      List.of("on the bar", "on a beat", "on half a beat", "elsewhere");
  private static final List<String> PHRASES =
      List.of("of four bars", "of two bars", "elsewhere", "within a slur");
  private static final List<String> NAMES =
      List.of(
          "handoff",
          "cover most",
          "entry on the bar",
          "entry on a beat",
          "entry on half a beat",
          "entry elsewhere",
          "landing on the bar",
          "landing on a beat",
          "landing on half a beat",
          "landing elsewhere",
          "overlap",
          "strain",
          "knee",
          "spent",
          "tired knee",
          "breath knee",
          "phrase of four bars",
          "phrase of two bars",
          "phrase elsewhere",
          "phrase within a slur",
          "short",
          "decibel",
          "decibel free",
          "register",
          "hocket",
          "player",
          "used",
          "idle",
          "rotation",
          "pattern change",
          "blend other");

  private final Catalogue known;
  private final Map<String, TableRow> byName = new LinkedHashMap<>();
  private final Map<String, Integer> targets = new LinkedHashMap<>();
  private final Map<String, Integer> blend = new LinkedHashMap<>();

  WeightRows(Catalogue known) {
    this.known = known;
  }

  static Optional<String> key(TableRow row) {
    return Optional.of(TypedNames.plain(row.text("name")));
  }

  /** What identifies a row of blend.csv; empty where one of the two is not known. */
  static Optional<String> blendKey(TableRow row, Catalogue known) {
    Optional<String> one = side(row, "one", known);
    Optional<String> other = side(row, "other", known);
    return one.flatMap(name -> other.map(second -> Weights.pair(name, second)));
  }

  void add(TableRow row) {
    String name = row.required("name");
    if (name.startsWith(TARGET)) {
      String leaving = name.substring(TARGET.length()).trim();
      int target = row.whole("value", 1, MOST);
      known
          .find(leaving)
          .ifPresentOrElse(
              instrument -> targets.put(instrument.name(), target),
              () -> row.problem(known.unknown(leaving)));
    } else if (NAMES.contains(name)) {
      byName.put(name, row);
    } else if (!name.isEmpty()) {
      List<String> near = TypedNames.nearest(name, NAMES);
      row.problem(
          "no weight is called '"
              + name
              + "'; use "
              + String.join(" or ", near.isEmpty() ? NAMES : near));
    }
  }

  void addBlend(TableRow row) {
    int points = row.whole("points", 0, MOST);
    blendKey(row, known).ifPresent(pair -> blend.put(pair, points));
  }

  Weights read() {
    return new Weights(
        whole("handoff"),
        whole("cover most"),
        PLACES.stream().map(place -> whole("entry " + place)).toList(),
        PLACES.stream().map(place -> whole("landing " + place)).toList(),
        whole("overlap"),
        targets,
        decimal("strain"),
        knee("knee"),
        decimal("spent"),
        knee("tired knee"),
        knee("breath knee"),
        PHRASES.stream().map(place -> whole("phrase " + place)).toList(),
        whole("short"),
        decimal("decibel"),
        decimal("decibel free"),
        whole("register"),
        whole("hocket"),
        whole("player"),
        whole("used"),
        whole("idle"),
        whole("rotation"),
        whole("pattern change"),
        blend,
        whole("blend other"));
  }

  private int whole(String name) {
    return row(name).map(row -> row.whole("value", 0, MOST)).orElse(0);
  }

  private double decimal(String name) {
    return row(name).map(row -> row.demanded("value", row.notNegative("value"))).orElse(0.0);
  }

  private double knee(String name) {
    double knee = decimal(name);
    if (knee >= 1) {
      row(name).ifPresent(row -> row.refuse("value", "0 or above and below 1"));
    }
    return knee;
  }

  private Optional<TableRow> row(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  private static Optional<String> side(TableRow row, String column, Catalogue known) {
    String text = row.required(column);
    Optional<String> name =
        InstrumentRows.FAMILIES.contains(text)
            ? Optional.of(text)
            : known.find(text).map(Instrument::name);
    if (name.isEmpty() && !text.isEmpty()) {
      row.problem(known.unknown(text));
    }
    return name;
  }
}
