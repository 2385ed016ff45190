package stafette.chairs;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.limits.Catalogue;
import stafette.limits.Instrument;

/** Words that have a chair take up another instrument: "muta in Piccolo", "nimmt kl. Fl.". */
final class InstrumentCall {
  private static final int FLAGS =
      Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS;

  private static final Pattern CALL =
      Pattern.compile(
          "(?:muta(?:no)?\\s+in|mut\\.\\s*in|change(?:s)?\\s+to|switch\\s+to|takes?"
              + "|nimmt|nehmen|wechselt?\\s+(?:zu|in)|prend(?:re|s)?|prennent|change(?:nt)?\\s+en)"
              + "\\s+(?:the\\s+|la\\s+|le\\s+|die\\s+|das\\s+)?(.+)",
          FLAGS);

  private static final int LONGEST_NAME = 32;

  /** Common practice, no source. */
  private static final List<Pattern> KIN =
      List.of(
          Pattern.compile("flute|piccolo$"),
          Pattern.compile("oboe|cor anglais|heckelphone"),
          Pattern.compile("clarinet|basset"),
          Pattern.compile("bassoon"),
          Pattern.compile("saxophone"),
          Pattern.compile("trumpet|cornet|flugelhorn"),
          Pattern.compile("trombone"),
          Pattern.compile("tuba"));

  private InstrumentCall() {}

  /**
   * The instrument that words call for, where the chair has another; a key alone ("muta in A") is
   * that of the same instrument.
   *
   * @param now what it has
   */
  static Optional<Instrument> in(String words, Instrument now, Chair chair, Catalogue catalogue) {
    Matcher call = CALL.matcher(words);
    Optional<Instrument> called =
        call.find()
            ? catalogue
                .find(call.group(1))
                .or(() -> catalogue.find(now.bareName() + " in " + call.group(1)))
            : bareName(words, catalogue);
    return called.filter(instrument -> chair.holds(instrument) || isKin(instrument, now));
  }

  /** Whether players of the one usually have the other as well. */
  private static boolean isKin(Instrument one, Instrument other) {
    return KIN.stream()
        .anyMatch(kin -> kin.matcher(one.name()).find() && kin.matcher(other.name()).find());
  }

  /** A name alone over an entry; longer words are about something else. */
  private static Optional<Instrument> bareName(String words, Catalogue catalogue) {
    return words.length() <= LONGEST_NAME && words.strip().length() > 1
        ? catalogue.find(words)
        : Optional.empty();
  }
}
