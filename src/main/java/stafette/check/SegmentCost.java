package stafette.check;

/**
 * What one segment costs, in points.
 *
 * @param strain for effort, as if the player came fresh
 * @param shortTurn for being shorter than a bar, or than two seconds
 * @param register for strokes outside the player's comfortable range
 */
public record SegmentCost(int strain, int shortTurn, int register) {
  public int total() {
    return strain + shortTurn + register;
  }
}
