package stafette.json;

import stafette.check.TempoWindow;

/** The tempi between which a plan holds. */
@Means("Tempi between which a plan holds.")
record WindowJson(
    @Means("Slowest mark at the line's start, or \"any slower tempo\".") String slowest,
    @Means("Fastest mark at the line's start, or \"any faster tempo\".") String fastest,
    @Means("What stands in the way of going beyond.") EndsJson limitedBy) {
  static WindowJson of(TempoWindow window) {
    return new WindowJson(
        window.slowestText().toString(),
        window.fastestText().toString(),
        new EndsJson(window.slowestLimit().toString(), window.fastestLimit().toString()));
  }

  /** What stands in the way. */
  @Means("What stands in the way of other tempi.")
  record EndsJson(
      @Means("Of slower tempi, or \"nothing\".") String slowest,
      @Means("Of faster ones, or \"nothing\".") String fastest) {}
}
