package stafette.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Rows of words in columns, each column as wide as it needs to be. */
final class TextTable {
  private final List<List<String>> rows = new ArrayList<>();

  TextTable row(String... cells) {
    rows.add(List.of(cells));
    return this;
  }

  /** The table, each row indented by so many spaces and ended by a line feed. */
  String text(int indent) {
    List<Integer> widths = widths();
    StringBuilder out = new StringBuilder();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(" ".repeat(indent));
      for (int i = 0; i < row.size(); i++) {
        line.append(row.get(i)).append(" ".repeat(widths.get(i) - row.get(i).length() + 2));
      }
      out.append(line.toString().stripTrailing()).append('\n');
    }
    return out.toString();
  }

  private List<Integer> widths() {
    int columns = rows.stream().mapToInt(List::size).max().orElse(0);
    List<Integer> widths = new ArrayList<>(Collections.nCopies(columns, 0));
    for (List<String> row : rows) {
      for (int i = 0; i < row.size(); i++) {
        widths.set(i, Math.max(widths.get(i), row.get(i).length()));
      }
    }
    return widths;
  }
}
