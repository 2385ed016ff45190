package stafette.score;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Words for the character in which notes are played, by the stems that scores in Italian, German,
 * French and English have (common practice, no source). Words for tempo, for who plays, and for
 * technique are others.
 */
final class CharacterWords {
  private static final Pattern STEMS =
      Pattern.compile(
          "\\b(?:stacc|marc|legg?i?er|legato|ten(?:\\.|uto)|spicc|martell|secc?[oa]?\\b|dolc|espr|cantab"
              + "|brill|pesant|grazios|energic|semplic|giocos|scherz|sim(?:\\.|ile)|sotto voce"
              + "|mezza voce|mormor|deciso|risolut|agitat|con (?:fuoco|brio|forza|grazia|spirito)"
              + "|ritmico|preciso|misterios|feroc|furios|lontan|leicht|kurz|scharf|zart|gestoßen"
              + "|betont|l[ée]g(?:er|ère)|sec\\b|d[ée]tach|marqu[ée]|doux|light|short|crisp|detached"
              + "|ritmato|come prima|sempre (?:p|pp|f|ff)\\b)");

  private CharacterWords() {}

  static boolean are(String text) {
    return STEMS.matcher(text.toLowerCase(Locale.ROOT)).find();
  }
}
