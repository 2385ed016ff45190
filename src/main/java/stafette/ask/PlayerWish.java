package stafette.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import stafette.chairs.Chairs;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.words.XmlText;

/**
 * A player as people ask for it.
 *
 * @param name such as "Flute 1"
 * @param instrument what it plays, if that is said
 * @param isNamed whether the user named it; else the program thought of it
 */
public record PlayerWish(String name, Optional<String> instrument, boolean isNamed) {
  private static final Pattern OTHER_SEPARATOR = Pattern.compile("\\s*[;|\\r\\n]+\\s*");

  /** A player whom the user named. */
  public PlayerWish(String name, Optional<String> instrument) {
    this(name, instrument, true);
  }

  /**
   * Reads "Flute 1, Clarinet 1, Anna = bassoon, Violins I div. a 2".
   *
   * @throws Refusal if there is no name, one comes twice, or one can't be written into a score
   */
  public static List<PlayerWish> parse(String text) throws Refusal {
    List<PlayerWish> wishes = new ArrayList<>();
    refuseOtherSeparators(text);
    for (String entry : text.split(",", -1)) {
      if (entry.isBlank()) {
        continue;
      }
      int equals = entry.indexOf('=');
      String name = (equals < 0 ? entry : entry.substring(0, equals)).trim();
      Optional<String> instrument =
          equals < 0 ? Optional.empty() : Optional.of(entry.substring(equals + 1).trim());
      if (name.isEmpty()) {
        throw Refusal.wrongUse(
            Sentence.of("players \"{0}\": a name is missing before \"{1}\"", text, entry.trim()));
      }
      refuseUnwritable(entry);
      for (PlayerWish player : new PlayerWish(name, instrument).players()) {
        refuseTwice(player, wishes, text);
        wishes.add(player);
      }
    }
    if (wishes.isEmpty()) {
      throw Refusal.wrongUse(
          Sentence.of("no players are named; write for example \"Flute 1, Flute 2, Clarinet 1\""));
    }
    return wishes;
  }

  private static void refuseTwice(PlayerWish player, List<PlayerWish> before, String text)
      throws Refusal {
    if (before.stream().anyMatch(wish -> wish.name().equalsIgnoreCase(player.name))) {
      throw Refusal.wrongUse(
          Sentence.of(
              "players \"{0}\": {1} is named twice; give each player its own name",
              text, player.name));
    }
  }

  /**
   * The players for whom it stands: "Violins I div. a 2" for two, any other name for one.
   *
   * @throws Refusal if a section is divided in more than four
   */
  public List<PlayerWish> players() throws Refusal {
    return Divisi.in(this);
  }

  /** This wish, or the chairs of the score for whom it stands: "Flutes 1.2" for two. */
  List<PlayerWish> seated(Chairs chairs) {
    List<PlayerWish> each =
        chairs.severalNamed(name).stream()
            .map(chair -> new PlayerWish(chair.name(), instrument, isNamed))
            .toList();
    return each.isEmpty() ? List.of(this) : each;
  }

  /**
   * @throws Refusal if no score can hold the name
   */
  void refuseUnwritable() throws Refusal {
    refuseUnwritable(name);
  }

  private static void refuseUnwritable(String name) throws Refusal {
    Optional<String> character = XmlText.refused(name);
    if (character.isPresent()) {
      throw Refusal.wrongUse(
          Sentence.of(
              "player \"{0}\": no score can hold the character {1}; write the name without it",
              name.trim(), character.get()));
    }
  }

  private static void refuseOtherSeparators(String text) throws Refusal {
    if (OTHER_SEPARATOR.matcher(text).find()) {
      throw Refusal.wrongUse(
          Sentence.of(
              "players \"{0}\": commas stand between players; write \"{1}\"",
              text, OTHER_SEPARATOR.matcher(text).replaceAll(", ")));
    }
  }
}
