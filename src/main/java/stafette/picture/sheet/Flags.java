package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.picture.Box;
import stafette.picture.Face;
import stafette.picture.Ink;
import stafette.picture.Mark;
import stafette.picture.Path;
import stafette.picture.Row;
import stafette.plan.Handoff;
import stafette.score.Line;
import stafette.time.Position;

/**
 * What stands above the notes where a player enters and leaves: from whom, to whom, and a bracket
 * over what both play.
 */
final class Flags {
  private static final Type ENTRY = new Type(Face.BOLD, 7.8, Ink.FULL);
  private static final Type EXIT = new Type(Face.PLAIN, 7.8, Ink.FULL);
  private static final double LEVEL = 10;
  private static final int MOST_LEVELS = 3;
  private static final double BRACKET = 6;
  private static final double TICK = 3.2;
  private static final double HEAD = 6;
  private static final double AIR = 4;

  private final Row row;
  private final double left;
  private final double right;
  private final List<Mark.Words> words = new ArrayList<>();
  private final List<Bracket> brackets = new ArrayList<>();
  private int levels;

  /**
   * Flags above a row.
   *
   * @param left where words may begin
   * @param right where they end
   */
  Flags(Row row, double left, double right) {
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
      return new Mark.Stroke(closed ? pen.line(to, y).path() : pen.path(), 1.1, Ink.JOIN);
    }
  }

  /** Both flags of a turn, as far as they are in the row. */
  void add(int number, TurnWords turn) {
    Position entry = turn.played().line().stroke(turn.played().first()).onset();
    Position landing = turn.played().line().stroke(turn.played().last()).onset();
    bracket(turn, turn.entry(), entry);
    if (row.span().contains(entry)) {
      String text = number + "  " + turn.from();
      word(ENTRY, text, row.x(entry));
    }
    bracket(turn, turn.exit(), landing);
    if (row.span().contains(landing)) {
      word(EXIT, turn.to(), row.x(landing) + HEAD - EXIT.width(turn.to()));
    }
  }

  /** Over the notes that both play; else a tick at the player's own first or last one. */
  private void bracket(TurnWords turn, Optional<Handoff> handoff, Position own) {
    Line line = handoff.isPresent() ? turn.relayLine() : turn.played().line();
    boolean shares = handoff.isPresent() && handoff.get().shared() > 0;
    Position from = shares ? line.stroke(handoff.get().enters().first()).onset() : own;
    Position to = shares ? line.stroke(handoff.get().leaves().last()).onset() : own;
    if (to.isBefore(row.span().start()) || !from.isBefore(row.span().end())) {
      return;
    }
    double start = row.xWithin(from);
    brackets.add(new Bracket(start, Math.min(right, row.xWithin(to) + HEAD), shares));
  }

  /** On the lowest level where it touches nothing; left out if all are full there. */
  private void word(Type type, String text, double wanted) {
    double x = Math.max(left, Math.min(right - type.width(text), wanted));
    for (int level = 0; level < MOST_LEVELS; level++) {
      Mark.Words set = type.words(text, x, -BRACKET - level * LEVEL);
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
    words.forEach(word -> marks.add(Type.lowered(word, y)));
    return marks;
  }
}
