package stafette.desktop.relay;

import stafette.plan.Handoff;

/**
 * How far the ends of a handoff can be moved: neither turn may vanish, and the overlap may shrink
 * to nothing but not open into a gap.
 */
record HandoffReach(Handoff handoff) {
  /** Where an end is now. */
  int stroke(RelayGestures.HandoffEnd end) {
    return end == RelayGestures.HandoffEnd.ENTERS
        ? handoff.enters().first()
        : handoff.leaves().last();
  }

  /** The nearest stroke to which an end can be moved. */
  int nearest(RelayGestures.HandoffEnd end, int stroke) {
    return Math.max(least(end), Math.min(Math.max(least(end), most(end)), stroke));
  }

  private int least(RelayGestures.HandoffEnd end) {
    int leavesFirst = handoff.leaves().first();
    return switch (end) {
      case ENTERS -> leavesFirst + 1;
      case LEAVES -> Math.max(leavesFirst, handoff.enters().first() - 1);
      case BOTH -> leavesFirst + Math.max(0, handoff.shared());
    };
  }

  private int most(RelayGestures.HandoffEnd end) {
    int entersLast = handoff.enters().last();
    return switch (end) {
      case ENTERS -> Math.min(entersLast, handoff.leaves().last() + 1);
      case LEAVES -> entersLast - 1;
      case BOTH -> entersLast - 1 + Math.min(0, handoff.shared());
    };
  }
}
