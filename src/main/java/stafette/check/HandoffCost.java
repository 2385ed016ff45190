package stafette.check;

/**
 * What one handoff costs, in points.
 *
 * @param handoff for being one, less what covers it
 * @param entry for the metrical rank of the first stroke of who enters
 * @param landing for the rank of the last stroke of who leaves
 * @param phrase for where in the phrase it lands, or for a slur that it cuts
 * @param overlap for strokes shared beside the target
 * @param blend for the distance of the two instruments
 */
public record HandoffCost(int handoff, int entry, int landing, int phrase, int overlap, int blend) {
  /** Over a silence of the line nothing is shared and nothing paid. */
  public static final HandoffCost FREE = new HandoffCost(0, 0, 0, 0, 0, 0);

  public int total() {
    return handoff + entry + landing + phrase + overlap + blend;
  }
}
