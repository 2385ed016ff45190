package stafette.split;

import java.util.Arrays;

/**
 * What tells apart labels of which one can't stand for the other: the open stretch, and how the
 * other relays stand.
 */
final class DominanceKey {
  private static final int[] NO_OTHERS = {};

  private final long open;
  private final int[] others;

  private DominanceKey(long open, int[] others) {
    this.open = open;
    this.others = others;
  }

  static DominanceKey of(Label label, int count) {
    long open = (label.actor() * (count + 1L) + label.first()) * (count + 2L) + label.before() + 1;
    Label.Standing[] standing = label.standing();
    if (standing.length == 1) {
      return new DominanceKey(open, NO_OTHERS);
    }
    int[] others = new int[3 * standing.length + 1];
    others[0] = label.relay();
    for (int relay = 0; relay < standing.length; relay++) {
      if (relay != label.relay()) {
        others[3 * relay + 1] = standing[relay].actor();
        others[3 * relay + 2] = standing[relay].last();
        others[3 * relay + 3] = standing[relay].earliestNext();
      }
    }
    return new DominanceKey(open, others);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DominanceKey place
        && open == place.open
        && Arrays.equals(others, place.others);
  }

  @Override
  public int hashCode() {
    return Long.hashCode(open * 0x9E3779B97F4A7C15L) ^ Arrays.hashCode(others);
  }
}
