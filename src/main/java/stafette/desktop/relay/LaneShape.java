package stafette.desktop.relay;

/**
 * How every lane of a view looks, in pixels.
 *
 * @param height of a lane
 * @param middle from its top to the middle of the ribbon; below that is room for curves
 * @param half half the ribbon's height
 * @param music how much larger than on paper notes are drawn within the ribbon; 0 for none
 */
record LaneShape(double height, double middle, double half, double music) {
  private static final double LEAST_PLAIN = 76;
  private static final double MOST_PLAIN = 112;

  /** Of a lane without notes: half the ribbon, and its middle, as shares of the height. */
  private static final double HALF_SHARE = 0.15;

  private static final double MIDDLE_SHARE = 0.4;
  private static final double MOST_HALF = 14;

  /** Of a lane with notes: what is above the ribbon, below it, and along its edges. */
  private static final double LABELS = 18;

  private static final double CURVES = 38;

  /** How thick the strips along the edges of a ribbon with notes are. */
  static final double RAIL = 6;

  private static final double AIR = 3;

  /** Notes are larger than on paper, which is held nearer to the eye; but not at any price. */
  static final double WANTED_MUSIC = 1.5;

  private static final double LEAST_MUSIC = 1.2;

  /**
   * Lanes that share what room there is, within reason.
   *
   * @param zoom by how much somebody wants them higher
   */
  static LaneShape plain(int count, double zoom, Viewport port) {
    double share = (port.height() - port.ruler()) / count;
    double usual = Math.max(port.px(LEAST_PLAIN), Math.min(port.px(MOST_PLAIN), share));
    double height = usual * zoom;
    double half = Math.min(port.px(MOST_HALF) * Math.max(1, zoom), height * HALF_SHARE);
    return new LaneShape(height, height * MIDDLE_SHARE, half, 0);
  }

  /**
   * Lanes whose ribbon is as high as the notes within it.
   *
   * @param ink how high the notes are on paper
   */
  static LaneShape noted(double ink, double music, double zoom, Viewport port) {
    double half = ink * music / 2 + port.px(RAIL + AIR);
    double curves = port.px(CURVES) * Math.max(1, zoom);
    return new LaneShape(port.px(LABELS) + 2 * half + curves, port.px(LABELS) + half, half, music);
  }

  /**
   * How large notes can be.
   *
   * @param room how much wider than they need to be on paper notes stand
   * @return 0 if that is too small
   */
  static double music(double room, double zoom, Viewport port) {
    double music = Math.min(room, port.px(WANTED_MUSIC) * zoom);
    return music < port.px(LEAST_MUSIC) ? 0 : music;
  }

  boolean isNoted() {
    return music > 0;
  }
}
