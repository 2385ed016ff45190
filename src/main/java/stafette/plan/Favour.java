package stafette.plan;

/** What a plan favours: a change of weights, or regular rotations alone. */
public enum Favour {
  BALANCE("balance"),
  HANDOFFS("fewest handoffs"),
  STRAIN("least strain"),
  BLEND("closest blend"),
  PLAYERS("fewest players"),
  /** Only plans in which the players take turns in a fixed order, a unit each. */
  REGULAR("regular rotation");

  private final String text;

  Favour(String text) {
    this.text = text;
  }

  /** What it is after, for people. */
  public String text() {
    return text;
  }
}
