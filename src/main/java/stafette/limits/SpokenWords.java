package stafette.limits;

import java.text.Normalizer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import stafette.time.BeatUnit;

/**
 * The words in which musicians say notes, numbers and lengths: English, German, French, Italian.
 */
final class SpokenWords {
  /** What a length is counted in. */
  enum CountedIn {
    BAR("bars?|measures?|takte?n?|mesures?|battut[ae]|misur[ae]"),
    BEAT("beats?|schlage?n?|temps|tempi"),
    MINUTE("minutes?|minuten?|min|minut[oi]"),
    SECOND("seconds?|secs?|s|sekunden?|sek|secondes?|second[oi]");

    private final String words;

    CountedIn(String words) {
      this.words = words;
    }
  }

  /** By how many there are in a quarter; those that hold others in their names come first. */
  static final Map<Pattern, Double> NOTES = new LinkedHashMap<>();

  private static final Map<String, Double> NUMBER_WORDS = new LinkedHashMap<>();
  private static final Map<String, String> UNIT_WORDS =
      Map.ofEntries(
          Map.entry("minim", "half"),
          Map.entry("halbe", "half"),
          Map.entry("blanche", "half"),
          Map.entry("minima", "half"),
          Map.entry("crotchet", "quarter"),
          Map.entry("viertel", "quarter"),
          Map.entry("noire", "quarter"),
          Map.entry("semiminima", "quarter"),
          Map.entry("quaver", "eighth"),
          Map.entry("8th", "eighth"),
          Map.entry("achtel", "eighth"),
          Map.entry("croche", "eighth"),
          Map.entry("croma", "eighth"),
          Map.entry("sixteenth", "16th"),
          Map.entry("semiquaver", "16th"),
          Map.entry("sechzehntel", "16th"),
          Map.entry("semicroma", "16th"));

  private static final String EIGHTHS =
      "(?:eighths?|8ths?|quavers?|achteln?|croches?|crom[ae])(?:[ -]notes?)?";
  private static final String SIXTEENTHS =
      "(?:sixteenths?|16ths?|semiquavers?|sechzehnteln?|doubles? croches?|semicrom[ae])(?:[ -]notes?)?";
  private static final String TRIPLETS = "(?:triplets?|triolen?|triolets?|terzin[ae])";

  static {
    note(6, TRIPLETS + "[ -]?(?:of )?" + SIXTEENTHS, SIXTEENTHS + "[ -]?" + TRIPLETS);
    note(6, "sechzehntel" + TRIPLETS, "sextuplets?|sextolen?|sextolets?|sestin[ae]");
    note(3, TRIPLETS + "[ -]?(?:of )?" + EIGHTHS, EIGHTHS + "[ -]?" + TRIPLETS);
    note(3, "achtel" + TRIPLETS, TRIPLETS);
    note(5, "quintuplets?|quintolen?|quintolets?|quintin[ae]");
    note(7, "septuplets?|septolen?|septolets?|settimin[ae]");
    note(16, "sixty[- ]?fourths?|64ths?|hemidemisemiquavers?|vierundsechzigsteln?");
    note(
        8,
        "(?<!for )thirty[- ]?seconds?|32nds?|demisemiquavers?",
        "zweiunddreissigsteln?|triples? croches?|biscrom[ae]");
    note(4, SIXTEENTHS);
    note(2, EIGHTHS);
    note(1, "quarter(?:s| notes?)|crotchets|vierteln?|noires|semiminime");
    say(0.5, "half a", "half", "einen halben", "ein halber", "halben?");
    say(1, "an?", "one", "ein(?:en?|er|em)?", "une?", "un[ao]?");
    say(2, "two", "zwei", "deux", "due");
    say(3, "three", "drei", "trois", "tre");
    say(4, "four", "vier", "quatre", "quattro");
    say(5, "five", "funf", "cinq", "cinque");
    say(6, "six", "sechs", "sei");
    say(7, "seven", "sieben", "sept", "sette");
    say(8, "eight", "acht", "huit", "otto");
    say(9, "nine", "neun", "neuf", "nove");
    say(10, "ten", "zehn", "dix", "dieci");
    say(11, "eleven", "elf");
    say(12, "twelve", "zwolf");
    say(20, "twenty", "zwanzig");
    say(30, "thirty", "dreissig");
    say(60, "sixty", "sechzig");
  }

  static final String NUMBERS = String.join("|", NUMBER_WORDS.keySet());

  static final String LENGTHS =
      List.of(CountedIn.values()).stream()
          .map(counted -> counted.words)
          .collect(Collectors.joining("|"));

  static final Pattern MOMENT =
      Pattern.compile(
          "\\b(?:for )?(?:a )?(?:moment|burst)\\b|\\b(?:einen )?(?:moment lang|moment|kurz)\\b");

  static final String DOTTED = "(?:dotted|punktierte[ns]?)";

  /** Words that may stand between. */
  static final Set<String> SMALL =
      Set.of(
          "at", "for", "in", "of", "the", "a", "note", "notes", "noten", "tempo", "bei", "mit",
          "fur", "lang", "long", "im", "zu", "pour", "pendant", "par", "per", "m");

  private SpokenWords() {}

  private static void note(double perQuarter, String... words) {
    String any = "\\b(?:" + String.join("|", words) + ")\\b";
    NOTES.put(Pattern.compile(any), perQuarter);
  }

  private static void say(double number, String... words) {
    for (String word : words) {
      NUMBER_WORDS.put(word, number);
    }
  }

  /** In lower case, without accents, with the signs for notes in words. */
  static String plain(String text) {
    String spelled =
        text.replace("♩.", " dotted quarter ")
            .replace("♪.", " dotted eighth ")
            .replace("♩", " quarter ")
            .replace("♪", " eighth ")
            .replace("ß", "ss");
    return Normalizer.normalize(spelled, Normalizer.Form.NFD)
        .replaceAll("\\p{M}+", "")
        .toLowerCase(Locale.ROOT)
        .replaceAll("\\s+", " ");
  }

  /** How many quarters a note value lasts that a tempo mark counts. */
  static Optional<Double> unit(String name) {
    String dotted = name.replaceFirst("^" + DOTTED + " ", "dotted ");
    String dots = dotted.startsWith("dotted ") ? "dotted " : "";
    String value = dotted.substring(dots.length());
    return BeatUnit.parse(dots + UNIT_WORDS.getOrDefault(value, value))
        .map(unit -> unit.length().quarters().toDouble());
  }

  /** What a word counts; empty if it is no number word. */
  static Optional<Double> number(String word) {
    return NUMBER_WORDS.entrySet().stream()
        .filter(one -> word.matches(one.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  static CountedIn lengthOf(String word) {
    return List.of(CountedIn.values()).stream()
        .filter(counted -> word.matches(counted.words))
        .findFirst()
        .orElseThrow();
  }
}
