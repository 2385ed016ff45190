package stafette.limits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import stafette.words.Refusal;
import stafette.words.Sentence;

/**
 * What somebody says that one player manages with one technique, in a musician's words: "sixteenths
 * at 132 for 4 bars; at 144 for one bar".
 *
 * @param text as it was typed
 * @param feats what it says, at least one, from the shortest to the longest, each slower than the
 *     one before and with more strokes
 */
public record Saying(String text, List<Feat> feats) {
  private static final Pattern BETWEEN = Pattern.compile("(?iu)[;\\n]|\\b(?:and|und|et|ed)\\b");

  /** Strokes by which a longer feat must have more than a shorter one. */
  private static final double LEAST_MORE = 0.001;

  public Saying {
    feats = List.copyOf(feats);
  }

  /**
   * Reads notes, tempo and how long, in any order: "sixteenths at 132 for 4 bars", "triplets,
   * dotted quarter = 88, for 20 seconds", "for 2 bars of 3/4 at 132: 16ths". A bare number counts
   * quarters; a bar has four of them unless its metre is said; who says no length means a moment.
   * Several of them stand with a semicolon or "and" between; the notes need be said once. German,
   * French and Italian words will do too.
   *
   * @throws Refusal if something is missing, can't be understood, or contradicts the rest
   */
  public static Saying parse(String text) throws Refusal {
    List<Feat> feats = new ArrayList<>();
    Optional<Double> notes = Optional.empty();
    for (String part : BETWEEN.split(text, -1)) {
      if (!part.isBlank() || feats.isEmpty()) {
        SpokenFeat spoken = SpokenFeat.parse(part.strip(), notes);
        notes = spoken.strokesPerQuarter();
        feats.add(spoken.feat());
      }
    }
    feats.sort(Comparator.comparingDouble(Feat::lasting));
    for (int i = 1; i < feats.size(); i++) {
      refuse(feats.get(i - 1), feats.get(i));
    }
    return new Saying(text, feats);
  }

  private static void refuse(Feat shorter, Feat longer) throws Refusal {
    if (longer.lasting() == shorter.lasting()) {
      throw Refusal.wrongUse(
          Sentence.of(
              "\"{0}\" and \"{1}\" are equally long; keep the faster one",
              shorter.words(), longer.words()));
    }
    if (longer.perSecond() >= shorter.perSecond()) {
      throw Refusal.wrongUse(
          Sentence.of(
              "\"{0}\" is longer than \"{1}\" and no slower; keep the longer one, or correct a"
                  + " tempo",
              longer.words(), shorter.words()));
    }
    if (longer.strokes() < shorter.strokes() + LEAST_MORE) {
      throw Refusal.wrongUse(
          Sentence.of(
              "\"{0}\" is longer than \"{1}\" but has no more notes; raise its tempo, or leave it out",
              longer.words(), shorter.words()));
    }
  }

  /** The limit of this player alone, without spread. */
  public Limit on(Technique technique) {
    return OwnLimit.of(technique.limit(), feats);
  }

  /** What to write, with an example. */
  static Sentence example(Sentence wrong) {
    return Sentence.of("{0}, as in \"sixteenths at 132 for 4 bars\"", wrong);
  }
}
