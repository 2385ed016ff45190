package stafette.score;

import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import stafette.time.Position;

/**
 * Key signatures in the order of time: so many sharps, or flats if below zero.
 *
 * @param from where each begins; none is in force before the first
 */
public record Keys(NavigableMap<Position, Integer> from) {
  public static final Keys NONE = new Keys(new TreeMap<>());

  public Keys {
    from = Collections.unmodifiableNavigableMap(new TreeMap<>(from));
  }

  /** One key from the beginning to the end. */
  public static Keys of(int fifths) {
    return new Keys(new TreeMap<>(Map.of(Position.START, fifths)));
  }

  /** What is in force; no sharps and no flats if nothing was said. */
  public int at(Position position) {
    Map.Entry<Position, Integer> entry = from.floorEntry(position);
    return entry == null ? 0 : entry.getValue();
  }

  /**
   * The keys that a transposing part has where these sound. They may lie beyond seven; {@link
   * Spelling#writtenKey} brings them back.
   */
  public Keys writtenBy(Transposition transposition) {
    int up = Spelling.soundingKey(0, transposition);
    NavigableMap<Position, Integer> written = new TreeMap<>(from);
    written.replaceAll((position, fifths) -> fifths - up);
    return new Keys(written);
  }
}
