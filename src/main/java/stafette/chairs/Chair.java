package stafette.chairs;

import java.util.List;
import java.util.Optional;
import stafette.limits.Instrument;

/**
 * One player, or one section of strings, who reads from a part of the score.
 *
 * @param part the part's id
 * @param name such as "Flute 2"; that of the part where nobody else reads from it
 * @param place among those who share the part, from above, counted from 1
 * @param of how many share it
 * @param number in the orchestra, as in "Horn 3", if the score says so
 * @param instruments what the chair holds, one at a time, the usual one first; none if the limits
 *     know none of them
 * @param isSection whether many play as one, who can be divided
 */
public record Chair(
    String part,
    String name,
    int place,
    int of,
    Optional<Integer> number,
    List<Instrument> instruments,
    boolean isSection) {
  public Chair {
    instruments = List.copyOf(instruments);
  }

  /** Whether others read from the same part. */
  public boolean isShared() {
    return of > 1;
  }

  /** Whether it can take up an instrument. */
  public boolean holds(Instrument instrument) {
    return instruments.stream().anyMatch(own -> own.name().equals(instrument.name()));
  }

  /** An instrument in the hands of who sits there: of horns, 1 and 3 are high, 2 and 4 low. */
  public Instrument seated(Instrument instrument) {
    return HornSeat.of(this, instrument).map(instrument::comfortableIn).orElse(instrument);
  }
}
