package stafette.tables;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.limits.Catalogue;
import stafette.limits.Evidence;
import stafette.limits.Instrument;
import stafette.limits.Stance;
import stafette.limits.Statement;
import stafette.limits.StatementKind;
import stafette.limits.Technique;
import stafette.limits.TypedNames;

/** Reads the rows of statements.csv, and holds the judgements of techniques.csv against them. */
final class StatementRows {
  private static final String SEVERAL = ";";
  private static final List<String> KINDS =
      Arrays.stream(StatementKind.values()).map(StatementKind::word).toList();
  private static final List<String> FIGURES =
      Arrays.stream(Statement.Figure.values()).map(Statement.Figure::word).toList();

  private final Catalogue known;
  private final Map<Statement, String> places = new LinkedHashMap<>();

  /**
   * @param known all instruments with their techniques
   */
  StatementRows(Catalogue known) {
    this.known = known;
  }

  /** What identifies a row: about what which source says what kind of thing. */
  Optional<String> key(TableRow row) {
    String instruments =
        cells(row.text("instrument"))
            .map(text -> known.find(text).map(Instrument::name).orElse(text))
            .collect(Collectors.joining(SEVERAL));
    String figure = row.has("of") ? row.text("of") : FIGURES.get(0);
    return Optional.of(
        Stream.of(instruments, row.text("technique"), row.text("kind"), figure, row.text("source"))
            .map(TypedNames::plain)
            .collect(Collectors.joining("|")));
  }

  /**
   * @param place where the row stands
   */
  void add(TableRow row, String place) {
    row.required("kind");
    List<String> names = several(row, "technique");
    StatementKind kind = row.oneOf("kind", KINDS, List.of(StatementKind.values()));
    if (kind == StatementKind.BORDER && names.size() != 2) {
      row.refuse("technique", "the two strokes of the border, as in 'spiccato; sautillé'");
    }
    List<Instrument> instruments = instruments(row, names, kind);
    refuseUnknown(row, names, instruments);
    Ends ends = ends(row);
    places.put(
        new Statement(
            instruments.stream().map(Instrument::name).toList(),
            names,
            kind,
            row.oneOf("of", FIGURES, List.of(Statement.Figure.values())),
            ends.low,
            ends.high,
            row.positive("seconds"),
            row.text("conditions"),
            row.source(),
            Optional.of(row.text("set aside")).filter(Predicate.not(String::isEmpty))),
        place);
  }

  /** What the repertoire asks of an instrument is a statement too. */
  void addAsked(Instrument instrument) {
    instrument
        .repertoire()
        .statements(instrument)
        .forEach(statement -> places.put(statement, Table.REPERTOIRE.file()));
  }

  Evidence evidence() {
    return new Evidence(List.copyOf(places.keySet()));
  }

  /**
   * A line for each judgement that contradicts a statement which is not set aside.
   *
   * @param place where the row of an instrument's technique stands
   */
  List<String> contradictions(BiFunction<Instrument, Technique, String> place) {
    Evidence evidence = evidence();
    return known.instruments().stream()
        .flatMap(
            instrument ->
                evidence.about(instrument).stream()
                    .filter(Stance::isOpen)
                    .map(stance -> line(stance, instrument, place)))
        .toList();
  }

  private String line(
      Stance stance, Instrument instrument, BiFunction<Instrument, Technique, String> place) {
    Statement said = stance.statement();
    return place.apply(instrument, stance.technique())
        + " ("
        + instrument.name()
        + ", "
        + stance.technique().name()
        + "): "
        + said.words()
        + ", says "
        + said.source().text()
        + " (grade "
        + said.source().grade()
        + ", "
        + places.getOrDefault(said, "")
        + "), but "
        + stance.judged()
        + "; "
        + stance.remedy().orElseThrow()
        + ", or set the statement aside with a reason";
  }

  private static List<String> several(TableRow row, String column) {
    return cells(row.required(column)).toList();
  }

  private static Stream<String> cells(String text) {
    return Arrays.stream(text.split(SEVERAL)).map(String::trim).filter(cell -> !cell.isEmpty());
  }

  /** Those that the row names, and those of a family that have what it speaks of. */
  private List<Instrument> instruments(TableRow row, List<String> names, StatementKind kind) {
    return several(row, "instrument").stream()
        .flatMap(
            text -> {
              if (InstrumentRows.FAMILIES.contains(text)) {
                return known.instruments().stream()
                    .filter(instrument -> instrument.family().equals(text))
                    .filter(instrument -> has(instrument, names, kind));
              }
              Optional<Instrument> found = known.find(text);
              if (found.isEmpty()) {
                row.problem(known.unknown(text));
              } else if (!has(found.get(), names, kind)) {
                row.problem(
                    found.get().name()
                        + " has no "
                        + row.text("technique")
                        + "; "
                        + techniques(List.of(found.get())));
              }
              return found.stream();
            })
        .distinct()
        .toList();
  }

  private static boolean has(Instrument instrument, List<String> names, StatementKind kind) {
    Predicate<String> own = name -> Catalogue.technique(instrument, name).isPresent();
    return kind == StatementKind.BORDER
        ? names.stream().allMatch(own)
        : names.stream().anyMatch(own);
  }

  private static void refuseUnknown(
      TableRow row, List<String> names, List<Instrument> instruments) {
    names.stream()
        .filter(
            name ->
                instruments.stream()
                    .noneMatch(instrument -> Catalogue.technique(instrument, name).isPresent()))
        .forEach(
            name ->
                row.problem(
                    "no technique is called '" + name + "' there; " + techniques(instruments)));
  }

  private static String techniques(List<Instrument> instruments) {
    return instruments.isEmpty()
        ? "name one of techniques.csv"
        : instruments.stream()
            .flatMap(instrument -> instrument.techniques().stream())
            .map(Technique::name)
            .distinct()
            .collect(Collectors.joining(", ", "use ", ""));
  }

  private record Ends(double low, double high) {}

  /** Of a range, or the same figure twice. */
  private static Ends ends(TableRow row) {
    OptionalDouble figure = row.positive("figure");
    OptionalDouble low = row.positive("low");
    OptionalDouble high = row.positive("high");
    boolean range = row.has("low") && row.has("high");
    boolean noRange = !row.has("low") && !row.has("high");
    if (row.has("figure") ? !noRange : !range) {
      row.problem("give either figure, or both low and high");
    }
    if (low.orElse(0) > high.orElse(Double.POSITIVE_INFINITY)) {
      row.problem(
          "low (" + row.text("low") + ") is above high (" + row.text("high") + "): swap them");
    }
    return new Ends(figure.orElse(low.orElse(1)), figure.orElse(high.orElse(1)));
  }
}
