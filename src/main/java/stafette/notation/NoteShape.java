package stafette.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.time.Rational;

/**
 * How a note or rest looks: its type and dots.
 *
 * @param type as MusicXML 4.0 names it (note-type-value): "quarter", "16th"
 * @param dots 0 to 2
 */
public record NoteShape(String type, int dots) {
  /** From short to long. */
  private static final List<String> TYPES =
      List.of(
          "1024th", "512th", "256th", "128th", "64th", "32nd", "16th", "eighth", "quarter", "half",
          "whole", "breve", "long", "maxima");

  private static final int QUARTER = TYPES.indexOf("quarter");
  private static final int MOST_DOTS = 2;

  /** The shape that is exactly so long, if there is one. */
  public static Optional<NoteShape> of(Rational quarters) {
    for (int dots = 0; dots <= MOST_DOTS; dots++) {
      Rational plain = quarters.times(1L << dots).dividedBy((2L << dots) - 1);
      Optional<String> type = typeOf(plain);
      if (type.isPresent()) {
        return Optional.of(new NoteShape(type.get(), dots));
      }
    }
    return Optional.empty();
  }

  /**
   * The shortest chain of lengths that have a shape each and add up to the given one, longest
   * first; empty if there is none.
   */
  public static List<Rational> chain(Rational quarters) {
    List<Rational> chain = new ArrayList<>();
    Rational rest = quarters;
    while (rest.signum() > 0) {
      if (of(rest).isPresent()) {
        chain.add(rest);
        return chain;
      }
      Optional<Rational> piece = longestPlain(rest);
      if (piece.isEmpty()) {
        return List.of();
      }
      chain.add(piece.get());
      rest = rest.minus(piece.get());
    }
    return chain;
  }

  /** The longest undotted length that does not exceed the given one. */
  static Optional<Rational> longestPlain(Rational most) {
    for (int i = TYPES.size() - 1; i >= 0; i--) {
      if (plain(i).compareTo(most) <= 0) {
        return Optional.of(plain(i));
      }
    }
    return Optional.empty();
  }

  /** How many flags or beams it has. */
  public int flags() {
    return Math.max(0, QUARTER - TYPES.indexOf(type));
  }

  private static Optional<String> typeOf(Rational quarters) {
    for (int i = 0; i < TYPES.size(); i++) {
      if (plain(i).equals(quarters)) {
        return Optional.of(TYPES.get(i));
      }
    }
    return Optional.empty();
  }

  private static Rational plain(int index) {
    return index >= QUARTER
        ? Rational.of(1L << (index - QUARTER))
        : Rational.of(1, 1L << (QUARTER - index));
  }
}
