package stafette.musicxml.read;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.musicxml.text.Element;
import stafette.score.Manner;

/** What words and sounds leave in force of ways of playing. */
final class MannerMark {
  /** Italian, which all scores use, and the usual German and French words. */
  private static final Pattern WORDS =
      Pattern.compile(
          "(?<pluck>\\bpizz(?:\\b|\\.|icat)|\\bgezupft\\b|\\bpinc[ée]\\b)"
              + "|\\barco\\b|\\bgestrichen\\b|\\bmit (?:dem )?bogen\\b|\\barchet\\b",
          Pattern.UNICODE_CHARACTER_CLASS);

  private MannerMark() {}

  /** What some words leave in force; empty if they say nothing of it. */
  static Optional<Manner> leftBy(String words) {
    Optional<Manner> left = Optional.empty();
    Matcher found = WORDS.matcher(words.toLowerCase(Locale.ROOT));
    while (found.find()) {
      left = Optional.of(found.group("pluck") != null ? Manner.PLUCKED : Manner.PLAIN);
    }
    return left;
  }

  /** What a sound element leaves in force. */
  static Optional<Manner> leftBy(Element sound) {
    return sound
        .attribute("pizzicato")
        .map(value -> value.equals("yes") ? Manner.PLUCKED : Manner.PLAIN);
  }
}
