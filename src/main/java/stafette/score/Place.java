package stafette.score;

import stafette.time.BarBeat;

/**
 * A place for people: "Clarinet 1, bar 34, beat 2".
 *
 * @param part the name of the part or player
 * @param at the bar and beat
 */
public record Place(String part, BarBeat at) {
  @Override
  public String toString() {
    return part + ", " + at;
  }
}
