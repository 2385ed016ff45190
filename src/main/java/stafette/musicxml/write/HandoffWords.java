package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.chairs.Chairs;
import stafette.limits.Division;
import stafette.musicxml.newparts.PlayerNames;
import stafette.musicxml.read.Document;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.PartText;
import stafette.score.Score;
import stafette.time.Position;

/**
 * Words that a relay left in a score: "from Flute 1" where a player takes over, "to Flute 2" where
 * one hands over, "alternating with Flute 2" where the first of several turns begins.
 *
 * @param part the id of the part in which they stand
 * @param at where
 * @param kind what they say
 * @param text as they stand
 */
public record HandoffWords(String part, Position at, RelayPlace kind, String text) {
  /** What words say of the player in whose part they stand. */
  public enum RelayPlace {
    TAKES_OVER,
    HANDS_OVER,
    ALTERNATES
  }

  private static final Pattern WORDS =
      Pattern.compile(
          "<words(?:\\s[^>]*)?>\\s*((from|to|alternating with)\\s+([^<]+?))\\s*</words>");

  /** All in a score that name only parts that it has. */
  public static List<HandoffWords> in(Document document) {
    List<HandoffWords> found = new ArrayList<>();
    for (PartText part : document.origin().parts()) {
      for (MeasureText measure : part.measures()) {
        for (ElementText element : measure.elements()) {
          if (element.name().equals("direction")) {
            Matcher words = WORDS.matcher(element.span().in(document.origin().text()));
            if (words.find() && areNamed(plain(words.group(3)), document)) {
              found.add(
                  new HandoffWords(
                      part.id(),
                      element.onset(),
                      switch (words.group(2)) {
                        case "from" -> RelayPlace.TAKES_OVER;
                        case "to" -> RelayPlace.HANDS_OVER;
                        default -> RelayPlace.ALTERNATES;
                      },
                      plain(words.group(1))));
            }
          }
        }
      }
    }
    return found;
  }

  /** Whether these are names of players, in full or in short. */
  private static boolean areNamed(String names, Document document) {
    PlayerNames known = new PlayerNames(document.origin(), player -> Optional.empty());
    return isPlayer(names, document.score())
        || Arrays.stream(names.split(" and |, "))
            .allMatch(name -> isPlayer(name, document.score()) || known.isOne(name));
  }

  /** The first division of a divided section has the section's part. */
  private static boolean isPlayer(String name, Score score) {
    return score.part(name).isPresent()
        || score.parts().stream().anyMatch(part -> Chairs.mayMean(name, part))
        || Division.named(name).flatMap(division -> score.part(division.section())).isPresent();
  }

  private static String plain(String escaped) {
    return escaped
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&apos;", "'")
        .replace("&amp;", "&");
  }
}
