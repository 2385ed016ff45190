package stafette.limits;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stafette.score.Part;

/** Tells parts that are sung, by their names in four languages or their sounds. */
public final class Singers {
  private static final String SOUND = "voice.";
  private static final Pattern APART = Pattern.compile("[^\\p{L}\\p{N}]+");

  /** What a sound of MusicXML's list looks like. */
  private static final Pattern SOUNDS = Pattern.compile("[a-z-]+(?:\\.[a-z0-9-]+)+");

  private static final Pattern VOICE =
      Pattern.compile(
          "(?:mezzo)?soprano?s?|soprani|sopr|mezzo|contralto?s?|alt[os]?|altos|tenor[eis]?"
              + "|countertenor|haute|bar[iy]ton[eois]?|bass[ois]?|basse|voices?|vocals?|voix|voce|voci"
              + "|canto|canti|chants?|choir|chorus|chore?|chœur|choeur|cor[oi]|gesang"
              + "|(?:sing)?stimmen?|singers?|sänger(?:in)?|vokal|cantus|superius|bassus|altus");

  /** What may stand beside it. */
  private static final Set<String> BESIDE =
      Set.of(
          "solo",
          "soli",
          "tutti",
          "mixed",
          "male",
          "female",
          "high",
          "low",
          "medium",
          "men",
          "women",
          "children",
          "contre",
          "und",
          "and",
          "e",
          "et",
          "de",
          "di",
          "the",
          "i",
          "ii",
          "iii",
          "iv",
          "a",
          "s",
          "t",
          "b",
          "eine",
          "ein",
          "une",
          "una",
          "lead",
          "backing");

  private Singers() {}

  /** Whether a part is sung. What its sound says goes before its names. */
  public static boolean sing(Part part) {
    List<String> sounds =
        part.instruments().stream().filter(name -> SOUNDS.matcher(name).matches()).toList();
    return sounds.isEmpty()
        ? Stream.concat(Stream.of(part.name()), part.instruments().stream())
            .anyMatch(Singers::isVoice)
        : sounds.stream().allMatch(sound -> sound.startsWith(SOUND));
  }

  private static boolean isVoice(String name) {
    List<String> words =
        Stream.of(APART.split(name.toLowerCase(Locale.ROOT)))
            .filter(word -> !word.isEmpty() && !word.chars().allMatch(Character::isDigit))
            .toList();
    return words.stream().anyMatch(word -> VOICE.matcher(word).matches())
        && words.stream().allMatch(word -> VOICE.matcher(word).matches() || BESIDE.contains(word));
  }
}
