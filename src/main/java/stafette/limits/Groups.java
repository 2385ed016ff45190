package stafette.limits;

/** Whether a technique comes in groups. */
public enum Groups {
  ANY(1),
  TWOS(2),
  /** Triple tonguing: only in threes that are felt as such, as triplets are. */
  THREES(3);

  private final int size;

  Groups(int size) {
    this.size = size;
  }

  public int size() {
    return size;
  }
}
