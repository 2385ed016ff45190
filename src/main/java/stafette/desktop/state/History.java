package stafette.desktop.state;

import java.util.ArrayDeque;
import java.util.Deque;

/** The desks there were before and after the present one. */
final class History {
  private static final int MOST = 500;

  private final Deque<Desk> before = new ArrayDeque<>();
  private final Deque<Desk> after = new ArrayDeque<>();
  private Desk now;

  History(Desk now) {
    this.now = now;
  }

  Desk now() {
    return now;
  }

  /** One step on; what was undone before can't be done again. */
  void go(Desk next) {
    before.push(now);
    if (before.size() > MOST) {
      before.removeLast();
    }
    after.clear();
    now = next;
  }

  /** The present desk, told more of: no step of its own. */
  void complete(Desk same) {
    now = same;
  }

  boolean canUndo() {
    return !before.isEmpty();
  }

  boolean canRedo() {
    return !after.isEmpty();
  }

  void undo() {
    after.push(now);
    now = before.pop();
  }

  void redo() {
    before.push(now);
    now = after.pop();
  }
}
