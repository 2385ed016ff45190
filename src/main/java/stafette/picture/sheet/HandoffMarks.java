package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.List;
import stafette.picture.ink.Box;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;
import stafette.picture.notes.BarRow;
import stafette.time.Position;

/**
 * What stands above the notes where a player enters and leaves: from whom, to whom, and a bracket
 * over what both play.
 */
final class HandoffMarks {
  private static final TypeStyle ENTRY = new TypeStyle(Face.BOLD, 7.8, Ink.FULL);
  private static final TypeStyle EXIT = new TypeStyle(Face.PLAIN, 7.8, Ink.FULL);
  private static final double LEVEL = 10;
  private static final int MOST_LEVELS = 3;
  private static final double BRACKET = 6;
  private static final double TICK = 3.2;
  private static final double HEAD = 6;
  private static final double AIR = 4;

  private final BarRow row;
  private final SheetLanguage language;
  private final double left;
  private final double right;
  private final List<Mark.Lettering> words = new ArrayList<>();
  private final List<Bracket> brackets = new ArrayList<>();
  private int levels;

  /**
   * Flags above a row.
   *
   * @param left where words may begin
   * @param right where they end
   */
  HandoffMarks(BarRow row, SheetLanguage language, double left, double right) {
    this.language = language;
    this.row = row;
    this.left = left;
    this.right = right;
  }

  /**
   * One bracket.
   *
   * @param closed whether somebody else plays the same; else it is a mere tick
   */
  private record Bracket(double from, double to, boolean closed) {
    Mark above(double y) {
      Path.Pen pen = new Path.Pen().move(from, y).line(from, y - TICK).line(to, y - TICK);
      return new Mark.Outline(closed ? pen.line(to, y).path() : pen.path(), 1.1, Ink.JOIN);
    }
  }

  /** Both flags of a turn, as far as they are in the row. */
  void add(int number, TurnWords turn) {
    Position entry = turn.played().line().stroke(turn.played().first()).onset();
    Position landing = turn.played().line().stroke(turn.played().last()).onset();
    bracket(turn.entry().map(turn::shared).orElse(List.of()), entry);
    if (row.span().contains(entry)) {
      String text = number + "  " + language.say(turn.from());
      word(ENTRY, text, row.x(entry));
    }
    bracket(turn.exit().map(turn::shared).orElse(List.of()), landing);
    if (row.span().contains(landing)) {
      String text = language.say(turn.to());
      word(EXIT, text, row.x(landing) + HEAD - EXIT.width(text));
    }
  }

  /** Over the player's own notes that others play too; else a tick at its first or last one. */
  private void bracket(List<Position> shared, Position own) {
    Position from = shared.isEmpty() ? own : shared.get(0);
    Position to = shared.isEmpty() ? own : shared.get(shared.size() - 1);
    if (!to.isBefore(row.span().start()) && from.isBefore(row.span().end())) {
      double end = Math.min(right, row.xWithin(to) + HEAD);
      brackets.add(new Bracket(row.xWithin(from), end, !shared.isEmpty()));
    }
  }

  /** On the lowest level where it touches nothing; left out if all are full there. */
  private void word(TypeStyle type, String text, double wanted) {
    double x = Math.max(left, Math.min(right - type.width(text), wanted));
    for (int level = 0; level < MOST_LEVELS; level++) {
      Mark.Lettering set = type.words(text, x, -BRACKET - level * LEVEL);
      Box box = set.bounds().grownBy(0.5);
      Box wide = new Box(box.left() - AIR, box.top(), box.right() + AIR, box.bottom());
      if (words.stream().noneMatch(other -> other.bounds().overlaps(wide))) {
        words.add(set);
        levels = Math.max(levels, level + 1);
        return;
      }
    }
  }

  double height() {
    return brackets.isEmpty() && words.isEmpty() ? 0 : BRACKET + levels * LEVEL;
  }

  /** Its marks above a line. */
  List<Mark> above(double y) {
    List<Mark> marks = new ArrayList<>();
    brackets.forEach(bracket -> marks.add(bracket.above(y)));
    words.forEach(word -> marks.add(TypeStyle.lowered(word, y)));
    return marks;
  }
}
