package stafette.plan;

/**
 * In what turns the two players of a hocket pair take the line, if pairs are allowed at all. By
 * stroke or group it goes only where strokes are far enough apart for two players to interlock.
 */
public enum Hocket {
  NO,
  /** Stroke by stroke, only where beats have an even number of them. */
  STROKE,
  /** By the twos or threes of a beat. */
  GROUP,
  BEAT
}
