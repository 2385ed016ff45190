package stafette.plan;

/**
 * Where a player sits on the stage.
 *
 * @param acrossMetres from the middle of the stage, left of it (as the hall sees it) negative
 * @param backMetres from the front of the stage
 */
public record Seat(double acrossMetres, double backMetres) {
  /**
   * @throws IllegalArgumentException if a figure is not finite
   */
  public Seat {
    if (!Double.isFinite(acrossMetres) || !Double.isFinite(backMetres)) {
      throw new IllegalArgumentException("no seat: " + acrossMetres + ", " + backMetres);
    }
  }

  public double metresTo(Seat other) {
    return Math.hypot(acrossMetres - other.acrossMetres, backMetres - other.backMetres);
  }
}
