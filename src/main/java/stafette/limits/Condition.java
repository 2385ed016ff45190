package stafette.limits;

import stafette.score.Dynamic;

/** What changes a limit from stroke to stroke. */
public enum Condition {
  /** Below the instrument's comfortable range. */
  LOW_REGISTER,
  /** Above the instrument's comfortable range. */
  HIGH_REGISTER,
  /** {@link Dynamic#PP} or softer. */
  SOFT,
  /** {@link Dynamic#FF} or louder. */
  LOUD,
  /** One or two semitones from the note before. */
  STEP,
  /** More than two semitones from the note before. */
  LEAP
}
