package stafette.plan;

/**
 * How a plan is written into its score.
 *
 * @param source what becomes of the line in the part it was taken from
 * @param joins how the notes are marked that two players share
 * @param balanced whether louder instruments are marked softer
 */
public record WrittenAs(SourceTreatment source, Joins joins, boolean balanced) {
  /** As the line is written. */
  public static WrittenAs plain(SourceTreatment source) {
    return new WrittenAs(source, Joins.AS_WRITTEN, false);
  }
}
