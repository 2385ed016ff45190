package stafette.ask;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.limits.TypedNames;
import stafette.plan.Player;
import stafette.plan.Seat;
import stafette.words.Refusal;
import stafette.words.Sentence;

/** Who sits where on the stage. */
public final class Seats {
  private static final Pattern METRES =
      Pattern.compile("([+-]?[0-9]{1,3}(?:\\.[0-9]{1,3})?)\\s+([0-9]{1,3}(?:\\.[0-9]{1,3})?)");

  private Seats() {}

  /**
   * Reads "Flute 1: -2 3.5; Clarinet 1: 4 6": metres across from the middle of the stage, to the
   * left below zero, and back from its front.
   *
   * @throws Refusal if it is written otherwise, or a name comes twice
   */
  public static Map<String, Seat> parse(String text) throws Refusal {
    Map<String, Seat> seats = new LinkedHashMap<>();
    for (String entry : text.split(";", -1)) {
      if (entry.isBlank()) {
        continue;
      }
      int colon = entry.lastIndexOf(':');
      String name = colon < 0 ? "" : entry.substring(0, colon).trim();
      Matcher metres = METRES.matcher(entry.substring(colon + 1).trim());
      if (name.isEmpty() || !metres.matches()) {
        throw Refusal.wrongUse(
            Sentence.of(
                "write a player and metres across and back, such as \"Flute 1: -2 3.5; Clarinet 1:"
                    + " 4 6\", not \"{0}\"",
                entry.trim()));
      }
      Seat seat =
          new Seat(Double.parseDouble(metres.group(1)), Double.parseDouble(metres.group(2)));
      if (of(name, seats).isPresent()) {
        throw Refusal.wrongUse(Sentence.of("{0} has two seats; keep one of them", name));
      }
      seats.put(name, seat);
    }
    return seats;
  }

  /**
   * The seats of players by their names as planned with: as asked for, else as kept.
   *
   * @throws Refusal if a seat is asked for somebody who is none of the players
   */
  public static Map<String, Seat> of(
      List<Player> players, Map<String, Seat> asked, Map<String, Seat> kept) throws Refusal {
    List<String> names = players.stream().map(Player::name).toList();
    for (String name : asked.keySet()) {
      if (names.stream().noneMatch(player -> TypedNames.same(player, name))) {
        throw Refusal.wrongUse(
            Sentence.of(
                "{0} has a seat but is none of the players, who are {1}; correct the name or leave"
                    + " it out",
                name, Sentence.list(names)));
      }
    }
    Map<String, Seat> seats = new LinkedHashMap<>();
    for (String name : names) {
      of(name, asked).or(() -> of(name, kept)).ifPresent(seat -> seats.put(name, seat));
    }
    return seats;
  }

  private static Optional<Seat> of(String name, Map<String, Seat> seats) {
    return seats.entrySet().stream()
        .filter(entry -> TypedNames.same(entry.getKey(), name))
        .map(Map.Entry::getValue)
        .findFirst();
  }
}
