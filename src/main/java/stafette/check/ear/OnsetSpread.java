package stafette.check.ear;

import stafette.limits.Instrument;

/**
 * How far onsets that are written together lie apart: a standard deviation, from the smaller to the
 * larger of two measured figures.
 *
 * <p>R. A. Rasch, "Synchronization in performed ensemble music", Acustica 43, 1979, 121-131, as a
 * thesis sums it up: the onsets of two players of a trio differed with a standard deviation of 37
 * and 27 ms in two pieces for oboe, clarinet and bassoon, of 49 and 37 ms in two for strings. Two
 * players alike and independent make √2 times the spread of one, so a player has the figure of the
 * trio divided by √2. All woodwinds are taken to be like that trio (two pieces for recorders, 30
 * and 31 ms, lie between); other instruments than woodwinds and strings get the range of all these
 * figures.
 *
 * @param leastMillis the smaller figure
 * @param mostMillis the larger one
 */
public record OnsetSpread(double leastMillis, double mostMillis) {
  private static final OnsetSpread REED_TRIO = new OnsetSpread(27, 37);
  private static final OnsetSpread STRING_TRIO = new OnsetSpread(37, 49);
  private static final OnsetSpread ALL_TRIOS = new OnsetSpread(27, 49);

  /** The spread of one player about what the players have in common. */
  public static OnsetSpread of(Instrument instrument) {
    OnsetSpread trio =
        switch (instrument.family()) {
          case "woodwind" -> REED_TRIO;
          case "strings" -> STRING_TRIO;
          default -> ALL_TRIOS;
        };
    return new OnsetSpread(trio.leastMillis / Math.sqrt(2), trio.mostMillis / Math.sqrt(2));
  }

  /** The spread of the difference between two independent players. */
  public static OnsetSpread between(Instrument one, Instrument other) {
    OnsetSpread first = of(one);
    OnsetSpread second = of(other);
    return new OnsetSpread(
        Math.hypot(first.leastMillis, second.leastMillis),
        Math.hypot(first.mostMillis, second.mostMillis));
  }
}
