package stafette.json;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;
import stafette.limits.TypedNames;
import stafette.plan.Seat;
import stafette.words.Sentence;
import stafette.words.UnreadableFile;
import stafette.words.XmlText;

/**
 * Players whose limits were measured. Each has the instrument as the tables have it, with the
 * player's own figures in the place of the population's; a technique so measured is one that the
 * player is known to have.
 *
 * @param players an instrument of one's own for each name, in the file's order
 * @param seats of those whose seats the file gives, by name
 */
public record PlayersFile(Map<String, Instrument> players, Map<String, Seat> seats) {
  public PlayersFile {
    players = Collections.unmodifiableMap(new LinkedHashMap<>(players));
    seats = Map.copyOf(seats);
  }

  /**
   * @param file what to call the file in messages
   * @param bytes all of it
   * @throws UnreadableFile with everything that is wrong in the file
   */
  public static PlayersFile read(String file, byte[] bytes, Catalogue catalogue)
      throws UnreadableFile {
    return read(file, Documents.text(file, bytes), catalogue);
  }

  /**
   * @param file what to call the file in messages
   * @throws UnreadableFile with everything that is wrong in the text
   */
  public static PlayersFile read(String file, String text, Catalogue catalogue)
      throws UnreadableFile {
    List<PlayersJson.MeasuredPlayerJson> measured =
        Documents.read(file, text, PlayersJson.class, Map.of()).players();
    Spot spot = Spot.of(file);
    Map<String, Instrument> players = new LinkedHashMap<>();
    Map<String, Seat> seats = new LinkedHashMap<>();
    for (int i = 0; i < measured.size(); i++) {
      PlayersJson.MeasuredPlayerJson own = measured.get(i);
      Spot at = spot.in("players", i);
      XmlText.refused(own.name())
          .ifPresent(
              character ->
                  at.tell(
                      Sentence.of(
                          "no score can hold the character {0} of its name; write it without",
                          character)));
      if (players.containsKey(own.name())) {
        at.tell(Sentence.of("'{0}' is there twice; keep one of them", own.name()));
      }
      own.instrument(catalogue, at).ifPresent(instrument -> players.put(own.name(), instrument));
      own.seat().ifPresent(seat -> seats.put(own.name(), seat.seat()));
    }
    spot.throwIfAny();
    return new PlayersFile(players, seats);
  }

  /** The instrument of a player of that name, whatever its case. */
  public Optional<Instrument> of(String player) {
    return players.entrySet().stream()
        .filter(entry -> TypedNames.same(entry.getKey(), player))
        .map(Map.Entry::getValue)
        .findFirst();
  }
}
