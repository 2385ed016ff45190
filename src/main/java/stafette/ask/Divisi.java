package stafette.ask;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.limits.Division;
import stafette.words.Refusal;
import stafette.words.Sentence;

/** A divided section as people write it: "Violins I div. a 2" stands for so many players. */
final class Divisi {
  private static final Pattern DIVIDED =
      Pattern.compile(
          "(.*\\S)\\s+(?:div\\b\\.?|divisi\\b|get\\.|geteilt\\b)\\s*(?:(?:a|à|in|zu)\\s*(\\S+))?",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  private static final Map<String, Integer> COUNTS =
      Map.of("2", 2, "due", 2, "zwei", 2, "3", 3, "tre", 3, "drei", 3, "4", 4, "quattro", 4);

  private Divisi() {}

  /**
   * The players for whom a wish stands: itself unless it divides a section.
   *
   * @throws Refusal if it is divided in more than four
   */
  static List<PlayerWish> in(PlayerWish wish) throws Refusal {
    Matcher matcher = DIVIDED.matcher(wish.name().trim());
    if (!matcher.matches()) {
      return List.of(wish);
    }
    String section = matcher.group(1);
    Optional<String> count = Optional.ofNullable(matcher.group(2));
    int parts = count.map(Divisi::read).orElse(2);
    if (parts == 0) {
      throw Refusal.wrongUse(
          Sentence.of(
              "\"{0}\": a section is divided into two, three or four; write for example \"{1} div."
                  + " a 2\"",
              wish.name(), section));
    }
    return Division.of(section, parts).stream()
        .map(division -> new PlayerWish(division.name(), wish.instrument(), wish.isNamed()))
        .toList();
  }

  private static int read(String count) {
    return COUNTS.getOrDefault(count.toLowerCase(Locale.ROOT), 0);
  }
}
