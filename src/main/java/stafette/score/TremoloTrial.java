package stafette.score;

/** Says how slashes are read that are counted or not, as the tempo has it. */
@FunctionalInterface
public interface TremoloTrial {
  /** By the slashes alone, whatever the tempo. */
  TremoloTrial BY_SLASHES =
      (part, counted, three) -> three ? TremoloReading.THREE_SLASHES : TremoloReading.MEASURED;

  /**
   * How one run of slashed notes is read.
   *
   * @param part whose it is
   * @param counted the strokes that it has if it is measured
   * @param three whether slashes and beams together are three or more
   */
  TremoloReading of(Part part, Line counted, boolean three);
}
