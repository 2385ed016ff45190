package stafette.limits;

/**
 * Where a figure comes from.
 *
 * @param text a citation, or "common practice, no source"
 * @param grade how far to trust it
 */
public record Source(String text, Grade grade) {
  public static final Source COMMON_PRACTICE = new Source("common practice, no source", Grade.D);
}
