package stafette.plan;

/**
 * How a plan is written into its score.
 *
 * @param source what becomes of the line in the part it was taken from
 * @param joins how the notes are marked that two players share
 * @param balanced whether louder instruments are marked softer
 * @param pedals whether harps are told how to set their pedals
 */
public record WrittenAs(SourceTreatment source, Joins joins, boolean balanced, boolean pedals) {
  /** As the line is written, harps with their pedals. */
  public static WrittenAs plain(SourceTreatment source) {
    return new WrittenAs(source, Joins.AS_WRITTEN, false, true);
  }

  public WrittenAs with(SourceTreatment other) {
    return new WrittenAs(other, joins, balanced, pedals);
  }

  public WrittenAs with(Joins other) {
    return new WrittenAs(source, other, balanced, pedals);
  }

  public WrittenAs balanced(boolean other) {
    return new WrittenAs(source, joins, other, pedals);
  }

  public WrittenAs pedals(boolean other) {
    return new WrittenAs(source, joins, balanced, other);
  }
}
