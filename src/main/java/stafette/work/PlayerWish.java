package stafette.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import stafette.words.Sentence;

/**
 * A player as people ask for it.
 *
 * @param name such as "Flute 1"
 * @param instrument what it plays, if that is said
 */
public record PlayerWish(String name, Optional<String> instrument) {
  private static final Pattern OTHER_SEPARATOR = Pattern.compile("\\s*[;|\\r\\n]+\\s*");

  /**
   * Reads "Flute 1, Clarinet 1, Anna = bassoon".
   *
   * @throws Refusal if there is no name, or one comes twice
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
      if (wishes.stream().anyMatch(wish -> wish.name().equalsIgnoreCase(name))) {
        throw Refusal.wrongUse(
            Sentence.of(
                "players \"{0}\": {1} is named twice; give each player its own name", text, name));
      }
      wishes.add(new PlayerWish(name, instrument));
    }
    if (wishes.isEmpty()) {
      throw Refusal.wrongUse(
          Sentence.of("no players are named; write for example \"Flute 1, Flute 2, Clarinet 1\""));
    }
    return wishes;
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
