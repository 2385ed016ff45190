package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;
import stafette.picture.ink.Piece;

/** A table: columns of given shares of the width, hairlines between rows, its head on each page. */
final class SheetTable {
  private static final double GUTTER = 8;
  private static final double ROW_AIR = 2.6;
  private static final double HAIR = 0.5;

  private final double left;
  private final double right;
  private final double[] shares;
  private final Piece head;
  private final List<Block> rows = new ArrayList<>();

  /**
   * An empty table.
   *
   * @param heads a word above each column
   * @param shares how wide the columns are, in any unit
   */
  SheetTable(double left, double right, List<String> heads, double... shares) {
    this.left = left;
    this.right = right;
    this.shares = shares.clone();
    head = row(heads.stream().map(text -> TableCell.of(TypeStyle.LABEL, text)).toList());
  }

  /**
   * One cell.
   *
   * @param lines of text, each wrapped to the column
   */
  record TableCell(List<TableLine> lines) {
    /** Text in one type. */
    record TableLine(TypeStyle type, String text) {}

    static TableCell of(TypeStyle type, String text) {
      return new TableCell(List.of(new TableLine(type, text)));
    }

    /** A strong line and soft ones below it; empty ones are left out. */
    static TableCell of(String strong, String... soft) {
      List<TableLine> lines = new ArrayList<>();
      lines.add(new TableLine(TypeStyle.TEXT, strong));
      Arrays.stream(soft)
          .filter(text -> !text.isEmpty())
          .forEach(text -> lines.add(new TableLine(TypeStyle.LABEL, text)));
      return new TableCell(List.copyOf(lines));
    }
  }

  SheetTable add(List<TableCell> cells) {
    rows.add(new Block(row(cells), 0, Optional.of(head), true));
    return this;
  }

  /** The head and all rows. */
  List<Block> blocks() {
    return Block.headed(new Block(head, 0), rows);
  }

  private Piece row(List<TableCell> cells) {
    List<List<Mark.Lettering>> columns = new ArrayList<>();
    double height = 0;
    double x = left;
    for (int i = 0; i < cells.size(); i++) {
      double width = width(i);
      List<Mark.Lettering> words = new ArrayList<>();
      double down = ROW_AIR;
      for (TableCell.TableLine line : cells.get(i).lines()) {
        for (String text : line.type().wrapped(line.text(), width - GUTTER)) {
          words.add(line.type().line(text, x, down));
          down += line.type().lineHeight();
        }
      }
      columns.add(words);
      height = Math.max(height, down + ROW_AIR);
      x += width;
    }
    List<Mark.Lettering> all = columns.stream().flatMap(List::stream).toList();
    double bottom = height;
    return new Piece(height, top -> marks(all, top, bottom));
  }

  private List<Mark> marks(List<Mark.Lettering> words, double top, double height) {
    List<Mark> marks = new ArrayList<>();
    words.forEach(each -> marks.add(TypeStyle.lowered(each, top)));
    double line = top + height - HAIR / 2;
    marks.add(new Mark.Outline(Path.line(left, line, right, line), HAIR, Ink.FAINT));
    return marks;
  }

  private double width(int column) {
    return (right - left) * shares[column] / Arrays.stream(shares).sum();
  }
}
