package stafette.ask;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;

/**
 * Several players in one name: "Flute 1 + Flute 2", "Horns 1/3". A doubling, "Flute / Piccolo", is
 * one.
 */
final class SeveralPlayers {
  private static final Pattern BETWEEN =
      Pattern.compile(
          "\\s*[/&+]\\s*|\\s+(?:and|und|et|e)\\s+|(?<=[0-9])\\s+(?=\\p{L})",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern NUMBER = Pattern.compile("[0-9]+");

  private SeveralPlayers() {}

  /** Their names; empty if the name is that of one player. */
  static List<String> in(String name, Catalogue catalogue) {
    String[] pieces = BETWEEN.split(name.trim(), -1);
    List<String> names = Stream.of(pieces).map(piece -> whole(piece, pieces[0])).toList();
    Set<String> played = new HashSet<>();
    boolean twice =
        names.stream()
            .map(catalogue::find)
            .flatMap(Optional::stream)
            .map(Instrument::name)
            .anyMatch(instrument -> !played.add(instrument));
    return twice ? names : List.of();
  }

  /** A bare number is that of another player of the first one's instrument. */
  private static String whole(String piece, String first) {
    return NUMBER.matcher(piece).matches() ? NUMBER.matcher(first).replaceFirst(piece) : piece;
  }
}
