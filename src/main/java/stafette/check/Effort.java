package stafette.check;

/**
 * What the strain of one segment is made of, in millionths of a point; {@link Strain} has the
 * formula.
 *
 * @param fastMicropoints for notes near the limit of their rate
 * @param spentMicropoints for tiredness or breath at the segment's end
 */
public record Effort(long fastMicropoints, long spentMicropoints) {
  /** Both together, in whole points as they are paid. */
  public int points() {
    return Strain.points(fastMicropoints + spentMicropoints);
  }

  public double fastPoints() {
    return fastMicropoints / 1e6;
  }

  public double spentPoints() {
    return spentMicropoints / 1e6;
  }
}
