package stafette.plan.written;

import stafette.time.Bars;
import stafette.time.Position;

/** Rests after which players need help to enter. */
public final class LongRest {
  /** Players count so many bars without help (common practice, no source). */
  public static final int BARS_COUNTED = 8;

  private LongRest() {}

  /** Whether more bars than are counted so lie whole between two notes. */
  static boolean isBetween(Position end, Position entry, Bars bars) {
    Position sounding = bars.at(end).span().start().equals(end) ? end : bars.at(end).span().end();
    return bars.at(entry).index() - bars.at(sounding).index() > BARS_COUNTED;
  }
}
