package stafette.picture.ink;

/** What a picture is drawn on. Lengths are in points, 72 to an inch. */
public enum Paper {
  /** Landscape, as many pages as it takes. */
  A4(841.89, 595.276),
  /** Landscape, as many pages as it takes. */
  LETTER(792, 612),
  /** One sheet, as tall as it takes. */
  SHEET(900, 640),
  /** One sheet with all bars in one row, as wide as it takes. */
  WIDE(900, 640);

  /** What stays white round a drawing, in points. */
  public static final double MARGIN = 36;

  private final double width;
  private final double height;

  Paper(double width, double height) {
    this.width = width;
    this.height = height;
  }

  public double width() {
    return width;
  }

  /** The height of a page; of a single sheet, what would still be seen at a glance. */
  public double height() {
    return height;
  }

  /** Whether it has pages of one size. */
  public boolean hasPages() {
    return this == A4 || this == LETTER;
  }
}
