package stafette.desktop.relay;

/**
 * What of the screen a relay is shown in.
 *
 * @param width in pixels
 * @param height in pixels, with the ruler
 * @param em how large the system's type is beside the usual one; all lengths follow it
 */
record Viewport(double width, double height, double em) {
  /** The size of type for which lengths are given, in pixels. */
  static final double USUAL_TYPE = 13;

  private static final double RULER = 58;

  /** A length as it is with the system's type. */
  double px(double usual) {
    return usual * em;
  }

  /** Room above the lanes for bar numbers, tempi and the rhythm of the line. */
  double ruler() {
    return px(RULER);
  }

  Viewport sized(double newWidth, double newHeight) {
    return new Viewport(newWidth, newHeight, em);
  }
}
