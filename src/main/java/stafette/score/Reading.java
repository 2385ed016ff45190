package stafette.score;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How broken octaves and broken chords are read. */
public enum Reading {
  /** As they stand. */
  ALL,

  /** As their upper notes. */
  UPPER,

  /** As their lower notes. */
  LOWER;

  /** "all", "upper", "lower"; {@link #parse} reads it. */
  public String text() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Reads what {@link #text} writes. */
  public static Optional<Reading> parse(String text) {
    return Arrays.stream(values())
        .filter(reading -> reading.text().equalsIgnoreCase(text.trim()))
        .findFirst();
  }
}
