package stafette.picture.notes;

import stafette.notation.BarItem;
import stafette.notation.NoteShape;

/** The signs for a written value. */
record NoteForm(NoteShape shape) {
  private static final NoteShape WHOLE = new NoteShape("whole", 0);
  private static final NoteShape PLAIN = new NoteShape("quarter", 0);
  private static final int BREVE_HEAD = 0x1D15C;
  private static final int WHOLE_HEAD = 0x1D15D;
  private static final int HALF_HEAD = 0x1D157;
  private static final int BLACK_HEAD = 0x1D158;
  private static final int BREVE_REST = 0x1D13A;
  private static final int WHOLE_REST = 0x1D13B;
  private static final int HALF_REST = 0x1D13C;
  private static final int QUARTER_REST = 0x1D13D;
  private static final int MOST_HOOKS = 5;

  /** The form of an item; a rest of a whole bar looks like a whole rest. */
  static NoteForm of(BarItem item) {
    return new NoteForm(item.shape().orElse(item.isRest() ? WHOLE : PLAIN));
  }

  int dots() {
    return shape.dots();
  }

  /** How many beams or flags. */
  int beams() {
    return shape.flags();
  }

  boolean hasStem() {
    return headSign() == BLACK_HEAD || headSign() == HALF_HEAD;
  }

  /** In spaces. */
  double headWidth() {
    return hasStem() ? Signs.HEAD : Signs.WHOLE_HEAD;
  }

  String head() {
    return Character.toString(headSign());
  }

  private int headSign() {
    return switch (shape.type()) {
      case "maxima", "long", "breve" -> BREVE_HEAD;
      case "whole" -> WHOLE_HEAD;
      case "half" -> HALF_HEAD;
      default -> BLACK_HEAD;
    };
  }

  String rest() {
    return Character.toString(
        switch (shape.type()) {
          case "maxima", "long", "breve" -> BREVE_REST;
          case "whole" -> WHOLE_REST;
          case "half" -> HALF_REST;
          default -> QUARTER_REST + Math.min(MOST_HOOKS, beams());
        });
  }

  /** Rests of whole and half notes hang from, or lie on, a line of their own. */
  double restRaisedSpaces() {
    return shape.type().equals("whole") || shape.type().equals("half") ? 1 : 0;
  }
}
