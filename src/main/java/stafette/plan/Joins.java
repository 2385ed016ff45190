package stafette.plan;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How the notes that two players share at a handoff are marked. */
public enum Joins {
  /** Both play what is written. */
  AS_WRITTEN,
  /**
   * Who enters does it without accent and a step softer until who leaves is gone; who leaves fades
   * where they share three notes or more.
   */
  SHADED;

  /** "as-written", "shaded"; {@link #parse} reads it. */
  public String text() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Reads what {@link #text} writes. */
  public static Optional<Joins> parse(String text) {
    return Arrays.stream(values())
        .filter(joins -> joins.text().equalsIgnoreCase(text.trim()))
        .findFirst();
  }
}
