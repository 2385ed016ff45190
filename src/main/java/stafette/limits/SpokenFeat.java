package stafette.limits;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * One feat as it is said. What is understood is taken out of the text, bit by bit; what is left
 * then was not understood.
 *
 * @param strokesPerQuarter the notes that are meant: four for sixteenths
 */
record SpokenFeat(Feat feat, Optional<Double> strokesPerQuarter) {
  private static final double FASTEST = 50;
  private static final double SLOWEST = 0.1;
  private static final double LONGEST_SECONDS = 3600;
  private static final double USUAL_BAR = 4;
  private static final String NUMBER = "[0-9]{1,6}(?:[.,][0-9]{1,6})?";
  private static final Pattern A_MINUTE =
      Pattern.compile("(?<=[0-9])\\s*(?:bpm|(?:beats\\s+)?(?:a|per)\\s+minute)\\b");
  private static final Pattern METRE =
      Pattern.compile("\\b(?:(?:of|in|im|von|di|de|a)\\s+)?([1-9][0-9]?)\\s*/\\s*([1-9][0-9]?)\\b");
  private static final Pattern MARK =
      Pattern.compile("((?:" + SpokenWords.DOTTED + "\\s+)?[0-9]*[a-z]+)\\s*=\\s*(" + NUMBER + ")");
  private static final Pattern LENGTH =
      Pattern.compile(
          "\\b(?:(?:for|fur|pour|pendant|per)\\s+)?("
              + NUMBER
              + "|(?:"
              + SpokenWords.NUMBERS
              + ")(?=\\s))\\s*("
              + SpokenWords.LENGTHS
              + ")\\b");
  private static final Pattern BARE = Pattern.compile("(?<![0-9a-z])" + NUMBER + "(?![0-9a-z])");
  private static final Pattern LEFT = Pattern.compile("[a-z0-9=/]+");

  /**
   * Reads one.
   *
   * @param before the notes that were said before, which are meant unless others are said
   */
  static SpokenFeat parse(String words, Optional<Double> before) throws Refusal {
    Rest rest = new Rest(A_MINUTE.matcher(SpokenWords.plain(words)).replaceAll(" "));
    rest.take(SpokenWords.MOMENT);
    Optional<MatchResult> mark = rest.take(MARK);
    Optional<Double> notes = rest.notes().or(() -> before);
    Optional<MatchResult> metre = rest.take(METRE);
    Optional<MatchResult> length = rest.take(LENGTH);
    double unit = mark.isPresent() ? unit(mark.get().group(1)) : 1;
    Optional<Double> perMinute =
        mark.map(found -> number(found.group(2)))
            .or(() -> rest.take(BARE).map(found -> number(found.group())));
    rest.refuse();
    double strokes = said(notes, Sentence.of("say which notes are meant"));
    double quarters = unit * said(perMinute, Sentence.of("say the tempo"));
    double rate = strokes * quarters / 60;
    refuseRate(words, rate);
    OptionalDouble seconds = OptionalDouble.empty();
    if (length.isPresent()) {
      double bar = metre.map(SpokenFeat::bar).orElse(USUAL_BAR);
      seconds = OptionalDouble.of(seconds(length.get(), bar, unit, quarters));
      refuseLength(length.get().group(), seconds.getAsDouble());
    }
    return new SpokenFeat(new Feat(words, rate, seconds), notes);
  }

  private static double said(Optional<Double> figure, Sentence missing) throws Refusal {
    return figure.orElseThrow(() -> Refusal.wrongUse(Saying.example(missing)));
  }

  private static double unit(String name) throws Refusal {
    return SpokenWords.unit(name)
        .orElseThrow(
            () ->
                Refusal.wrongUse(
                    Sentence.of(
                        "\"{0}\" is no note value; write half, quarter, eighth, 16th, with"
                            + " \"dotted\" before it if it has a dot",
                        name)));
  }

  private static double bar(MatchResult metre) {
    return 4 * number(metre.group(1)) / number(metre.group(2));
  }

  /**
   * How long a length is.
   *
   * @param bar how many quarters a bar has
   * @param beat how many a beat has
   * @param perMinute how many there are in a minute
   */
  private static double seconds(MatchResult length, double bar, double beat, double perMinute) {
    double count = number(length.group(1));
    return switch (SpokenWords.lengthOf(length.group(2))) {
      case BAR -> count * bar * 60 / perMinute;
      case BEAT -> count * beat * 60 / perMinute;
      case MINUTE -> count * 60;
      case SECOND -> count;
    };
  }

  private static void refuseRate(String words, double rate) throws Refusal {
    if (rate < SLOWEST || rate > FASTEST) {
      throw Refusal.wrongUse(
          Sentence.of(
              "\"{0}\" would be {1} notes a second; correct the notes or the tempo",
              words, Sentence.decimal(rate, 1)));
    }
  }

  private static void refuseLength(String words, double seconds) throws Refusal {
    if (!(seconds > 0 && seconds <= LONGEST_SECONDS)) {
      throw Refusal.wrongUse(
          Sentence.of("\"{0}\" must be longer than nothing, and an hour at most", words.strip()));
    }
  }

  private static double number(String text) {
    return SpokenWords.number(text).orElseGet(() -> Double.parseDouble(text.replace(',', '.')));
  }

  /** What of a text has not been understood yet. */
  private static final class Rest {
    private String text;

    Rest(String text) {
      this.text = text;
    }

    Optional<MatchResult> take(Pattern pattern) {
      Matcher matcher = pattern.matcher(text);
      if (!matcher.find()) {
        return Optional.empty();
      }
      MatchResult found = matcher.toMatchResult();
      text = text.substring(0, found.start()) + " , " + text.substring(found.end());
      return Optional.of(found);
    }

    /** The notes that are said, by how many there are in a quarter. */
    Optional<Double> notes() {
      return SpokenWords.NOTES.entrySet().stream()
          .flatMap(one -> take(one.getKey()).map(found -> one.getValue()).stream())
          .findFirst();
    }

    void refuse() throws Refusal {
      Matcher left = LEFT.matcher(text);
      while (left.find()) {
        if (!SpokenWords.SMALL.contains(left.group())) {
          throw Refusal.wrongUse(
              Saying.example(
                  Sentence.of(
                      "\"{0}\" is not understood; write notes, tempo and how long", left.group())));
        }
      }
    }
  }
}
