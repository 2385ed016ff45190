package stafette.plan;

/** What becomes of the line that was split, in the part it was taken from. */
public enum SourceTreatment {
  KEEP,
  /** Its notes become cue notes. */
  CUE,
  /** Its notes become rests. */
  REMOVE
}
