package stafette.trials;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Spoils a table of limits: cells, rows, columns and quotes. */
final class TableSpoiler {
  private TableSpoiler() {}

  static byte[] spoilt(String csv, int places, Dice dice) {
    List<String> lines = new ArrayList<>(Arrays.asList(csv.split("\n", -1)));
    for (int i = 0; i < places && !lines.isEmpty(); i++) {
      line(lines, dice.in100(15) ? 0 : dice.between(0, lines.size() - 1), dice);
    }
    String whole = String.join("\n", lines);
    return dice.in100(90) ? BytesSpoiler.utf8(whole) : BytesSpoiler.spoilt(whole, dice);
  }

  private static void line(List<String> lines, int at, Dice dice) {
    switch (dice.between(0, 6)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(at, lines.get(at));
      case 2 -> lines.add(at, Odd.any(dice));
      default -> lines.set(at, cells(lines.get(at), dice));
    }
  }

  private static String cells(String line, Dice dice) {
    List<String> cells = new ArrayList<>(Arrays.asList(line.split(",", -1)));
    int at = dice.between(0, cells.size() - 1);
    switch (dice.between(0, 5)) {
      case 0 -> cells.remove(at);
      case 1 -> cells.add(at, cells.get(at));
      case 2 -> cells.set(at, "\"" + cells.get(at));
      default -> cells.set(at, other(cells.get(at), dice));
    }
    return String.join(",", cells);
  }

  private static String other(String cell, Dice dice) {
    if (!cell.matches("[0-9]{1,6}(\\.[0-9]{1,6})?") || dice.in100(30)) {
      return Odd.any(dice);
    }
    double value = Double.parseDouble(cell);
    return Double.toString(dice.of(value * 1000, value / 1000, value + 1, -value, 0.0, value / 3));
  }
}
