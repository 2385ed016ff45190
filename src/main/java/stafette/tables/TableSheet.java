package stafette.tables;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import stafette.limits.TypedNames;
import stafette.words.XmlText;

/**
 * The rows of one table file: RFC 4180 with a header row. What spreadsheets make of that is read
 * too: a byte-order mark, semicolons or tabs for commas and then decimal commas, blank rows.
 */
final class TableSheet {
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private final Table table;
  private final Problems problems;
  private final boolean decimalComma;

  private TableSheet(Table table, Problems problems, boolean decimalComma) {
    this.table = table;
    this.problems = problems;
    this.decimalComma = decimalComma;
  }

  /** The rows below the header; none where the header itself is at fault. */
  static List<TableRow> read(Table table, String text, Problems problems) {
    String content = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    char delimiter = delimiterOf(content);
    return new TableSheet(table, problems, delimiter != ',').rows(content, delimiter);
  }

  private List<TableRow> rows(String content, char delimiter) {
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter).get();
    List<CSVRecord> records;
    try (CSVParser parser = CSVParser.parse(content, format)) {
      records = parser.getRecords();
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      problems.add(table.file(), "is no table of comma-separated values; look at its quotes");
      return List.of();
    }
    if (records.isEmpty()) {
      problems.add(table.file(), "is empty; its first row must name the columns");
      return List.of();
    }
    Map<String, Integer> header = header(records.get(0));
    return header.isEmpty() ? List.of() : rows(records.subList(1, records.size()), header);
  }

  private List<TableRow> rows(List<CSVRecord> records, Map<String, Integer> header) {
    List<TableRow> result = new ArrayList<>();
    for (CSVRecord found : records) {
      if (found.stream().allMatch(String::isBlank)) {
        continue;
      }
      Map<String, String> cells = new TreeMap<>();
      header.forEach(
          (column, at) -> cells.put(column, at < found.size() ? found.get(at).trim() : ""));
      TableRow row = new TableRow(place(found.getRecordNumber()), cells, decimalComma, problems);
      if (found.size() > header.size()) {
        row.problem(
            "has "
                + found.size()
                + " cells for "
                + header.size()
                + " columns; put quotes round a cell that holds a comma");
      }
      refuseUnwritable(found, row);
      result.add(row);
    }
    return result;
  }

  private static void refuseUnwritable(CSVRecord found, TableRow row) {
    found.stream()
        .flatMap(cell -> XmlText.refused(cell).stream())
        .findFirst()
        .ifPresent(
            character ->
                row.problem(
                    "holds the character " + character + ", which no score can hold; take it out"));
  }

  /** Where each column stands; empty if one is missing, unknown or there twice. */
  private Map<String, Integer> header(CSVRecord first) {
    Map<String, Integer> result = new TreeMap<>();
    boolean sound = true;
    for (int i = 0; i < first.size(); i++) {
      String name = first.get(i).trim().toLowerCase(Locale.ROOT);
      if (!table.columns().contains(name)) {
        problems.add(place(1), "unknown column '" + name + "'" + suggestion(name));
        sound = false;
      } else if (result.put(name, i) != null) {
        problems.add(place(1), "column '" + name + "' is there twice");
        sound = false;
      }
    }
    for (String name : table.required()) {
      if (!result.containsKey(name)) {
        problems.add(place(1), "column '" + name + "' is missing; add it");
        sound = false;
      }
    }
    return sound ? result : Map.of();
  }

  private String suggestion(String name) {
    List<String> near = TypedNames.nearest(name, table.columns());
    return near.isEmpty()
        ? "; the columns are " + String.join(", ", table.columns())
        : near.stream().collect(Collectors.joining("' or '", "; is it '", "'?"));
  }

  private String place(long row) {
    return table.file() + ", row " + row;
  }

  private static char delimiterOf(String content) {
    String first = content.lines().findFirst().orElse("");
    char best = ',';
    for (char candidate : new char[] {';', '\t'}) {
      if (count(first, candidate) > count(first, best)) {
        best = candidate;
      }
    }
    return best;
  }

  private static long count(String text, char sought) {
    return text.chars().filter(c -> c == sought).count();
  }
}
