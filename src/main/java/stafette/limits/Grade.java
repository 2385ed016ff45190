package stafette.limits;

/** How far a figure can be trusted. */
public enum Grade {
  /** Measured and published. */
  A,
  /** Stated by an expert or a handbook, and seen there. */
  B,
  /** From a forum, the press, a secondary copy or memory. */
  C,
  /** No source: common practice, or reckoned from other figures. */
  D
}
