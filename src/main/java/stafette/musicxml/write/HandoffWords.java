package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.chairs.Chairs;
import stafette.limits.Division;
import stafette.musicxml.read.Document;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.PartText;
import stafette.score.Score;
import stafette.time.Position;

/**
 * Words that a relay left in a score: "from Flute 1" where a player takes over, "to Flute 2" where
 * one hands over.
 *
 * @param part the id of the part in which they stand
 * @param at where
 * @param enters whether the player of the part takes over here
 * @param text what they say
 */
public record HandoffWords(String part, Position at, boolean enters, String text) {
  private static final Pattern WORDS =
      Pattern.compile("<words(?:\\s[^>]*)?>\\s*((from|to)\\s+([^<]+?))\\s*</words>");

  /** All in a score that name only parts that it has. */
  public static List<HandoffWords> in(Document document) {
    List<HandoffWords> found = new ArrayList<>();
    for (PartText part : document.origin().parts()) {
      for (MeasureText measure : part.measures()) {
        for (ElementText element : measure.elements()) {
          if (element.name().equals("direction")) {
            Matcher words = WORDS.matcher(element.span().in(document.origin().text()));
            if (words.find() && isNamed(plain(words.group(3)), document.score())) {
              found.add(
                  new HandoffWords(
                      part.id(),
                      element.onset(),
                      words.group(2).equals("from"),
                      plain(words.group(1))));
            }
          }
        }
      }
    }
    return found;
  }

  /** Whether it is the name of a part, or those of two. */
  private static boolean isNamed(String names, Score score) {
    return isPlayer(names, score)
        || Arrays.stream(names.split(" and ")).allMatch(name -> isPlayer(name, score));
  }

  /** The first division of a divided section has the section's part. */
  private static boolean isPlayer(String name, Score score) {
    return score.part(name).isPresent()
        || score.parts().stream()
            .anyMatch(part -> Chairs.mayMean(name, part) || part.instruments().contains(name))
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
