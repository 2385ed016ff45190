package stafette.score;

/** Marks on a note that go with it to whoever plays it. */
public enum Articulation {
  STACCATO,
  STACCATISSIMO,
  SPICCATO,
  TENUTO,
  DETACHED_LEGATO,
  ACCENT,
  STRONG_ACCENT,
  STRESS,
  UP_BOW,
  DOWN_BOW;

  /** Whether the mark makes the attack stand out. */
  public boolean accents() {
    return this == ACCENT || this == STRONG_ACCENT;
  }
}
