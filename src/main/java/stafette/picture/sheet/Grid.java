package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stafette.picture.Ink;
import stafette.picture.Mark;
import stafette.picture.Path;
import stafette.picture.Piece;

/** A table: columns of given shares of the width, hairlines between rows, its head on each page. */
final class Grid {
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
  Grid(double left, double right, List<String> heads, double... shares) {
    this.left = left;
    this.right = right;
    this.shares = shares.clone();
    head = row(heads.stream().map(text -> Cell.of(Type.LABEL, text)).toList());
  }

  /**
   * One cell.
   *
   * @param lines of text, each wrapped to the column
   */
  record Cell(List<Line> lines) {
    /** Text in one type. */
    record Line(Type type, String text) {}

    static Cell of(Type type, String text) {
      return new Cell(List.of(new Line(type, text)));
    }

    /** A strong line and soft ones below it; empty ones are left out. */
    static Cell of(String strong, String... soft) {
      List<Line> lines = new ArrayList<>();
      lines.add(new Line(Type.TEXT, strong));
      Arrays.stream(soft)
          .filter(text -> !text.isEmpty())
          .forEach(text -> lines.add(new Line(Type.LABEL, text)));
      return new Cell(List.copyOf(lines));
    }
  }

  Grid add(List<Cell> cells) {
    rows.add(new Block(row(cells), 0, Optional.of(head)));
    return this;
  }

  /** The head and all rows. */
  List<Block> blocks() {
    return Block.headed(new Block(head, 0), rows);
  }

  private Piece row(List<Cell> cells) {
    List<List<Mark.Words>> columns = new ArrayList<>();
    double height = 0;
    double x = left;
    for (int i = 0; i < cells.size(); i++) {
      double width = width(i);
      List<Mark.Words> words = new ArrayList<>();
      double down = ROW_AIR;
      for (Cell.Line line : cells.get(i).lines()) {
        for (String text : line.type().wrapped(line.text(), width - GUTTER)) {
          words.add(line.type().line(text, x, down));
          down += line.type().lineHeight();
        }
      }
      columns.add(words);
      height = Math.max(height, down + ROW_AIR);
      x += width;
    }
    List<Mark.Words> all = columns.stream().flatMap(List::stream).toList();
    double bottom = height;
    return new Piece(height, top -> marks(all, top, bottom));
  }

  private List<Mark> marks(List<Mark.Words> words, double top, double height) {
    List<Mark> marks = new ArrayList<>();
    words.forEach(each -> marks.add(Type.lowered(each, top)));
    double line = top + height - HAIR / 2;
    marks.add(new Mark.Stroke(Path.line(left, line, right, line), HAIR, Ink.FAINT));
    return marks;
  }

  private double width(int column) {
    return (right - left) * shares[column] / Arrays.stream(shares).sum();
  }
}
