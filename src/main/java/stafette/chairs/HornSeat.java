package stafette.chairs;

import java.util.Optional;
import stafette.limits.Instrument;
import stafette.limits.Range;
import stafette.score.Pitch;
import stafette.score.Step;

/**
 * Where a horn player is at home: those with odd numbers play high, those with even ones low
 * (common practice, no source; so are the notes).
 */
final class HornSeat {
  private static final Range HIGH = range(new Pitch(Step.C, 0, 3), new Pitch(Step.F, 0, 5));
  private static final Range LOW = range(new Pitch(Step.B, 0, 1), new Pitch(Step.C, 0, 5));

  private HornSeat() {}

  private static Range range(Pitch low, Pitch high) {
    return new Range(low.midi(), high.midi());
  }

  /** Empty for others than horns, and for a horn that has no number. */
  static Optional<Range> of(Chair chair, Instrument instrument) {
    return instrument.name().startsWith("horn ")
        ? chair.number().map(number -> number % 2 == 1 ? HIGH : LOW)
        : Optional.empty();
  }
}
