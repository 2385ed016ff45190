package stafette.desktop.tempo;

/**
 * Where tempi stand on a strip: evenly by ratio, as the ear has it.
 *
 * @param slowest beats a minute at the left end
 * @param fastest at the right end
 * @param width in pixels
 */
record TempoScale(double slowest, double fastest, double width) {
  /** How far the strip reaches to either side of a tempo at least. */
  private static final double REACH = 1.6;

  /** The least share of a tempo that is free beside it. */
  private static final double LEAST_ROOM = 1.1;

  /**
   * A strip that holds a tempo and its window, with room to leave it.
   *
   * @param from the window's slow end in beats a minute; 0 if it has none
   * @param to its fast end; infinite if it has none
   */
  static TempoScale around(double now, double from, double to, double width) {
    double slowest = Math.min(now / REACH, from > 0 ? from * 0.85 : now / REACH);
    double fastest = Math.max(now * REACH, to < Double.POSITIVE_INFINITY ? to * 1.15 : 0);
    return new TempoScale(
        Math.max(now / 8, slowest), Math.min(now * 8, fastest), Math.max(1, width));
  }

  /** Whether a tempo and its window can be seen on it, with room to leave the tempo. */
  boolean hasRoomFor(double now, double from, double to) {
    boolean window = from <= 0 || from >= slowest;
    boolean end = to == Double.POSITIVE_INFINITY || to <= fastest;
    return window && end && now >= slowest * LEAST_ROOM && now <= fastest / LEAST_ROOM;
  }

  /** Brought to the strip's nearer end if it lies outside. */
  double x(double perMinute) {
    double share = Math.log(perMinute / slowest) / Math.log(fastest / slowest);
    return width * Math.max(0, Math.min(1, share));
  }

  double perMinuteAt(double x) {
    double share = Math.max(0, Math.min(1, x / width));
    return slowest * Math.pow(fastest / slowest, share);
  }

  TempoScale resized(double newWidth) {
    return new TempoScale(slowest, fastest, Math.max(1, newWidth));
  }
}
