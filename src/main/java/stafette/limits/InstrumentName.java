package stafette.limits;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * An instrument's name as a score or a person may write it, taken apart: "2. Klarinette in B" is a
 * "klarinette" with the key "bflat".
 *
 * @param written all its words in their order, chair numbers left out
 * @param base the words that name the instrument, without key, in alphabetical order
 * @param key "bflat", "a" …; empty if none is given
 */
record InstrumentName(String written, Set<String> base, String key) {
  private static final Pattern TOGETHER = Pattern.compile("\\ba (due|tre|[2-9])\\b|\\ba[2-9]\\b");
  private static final Pattern GLUED = Pattern.compile("([a-z]{2,})([0-9]+)");
  private static final Pattern NUMBER =
      Pattern.compile("[0-9]+([a-h]|st|nd|rd|th|er|ere|re|e|eme|o)?|i{1,3}|iv|vi{0,3}|ix|x");

  private static final Set<String> WORDS_APART =
      Set.of(
          "in",
          "en",
          "first",
          "second",
          "third",
          "fourth",
          "principal",
          "solo",
          "section",
          "desk",
          "div",
          "divisi",
          "geteilt",
          "outside",
          "inside",
          "of",
          "tutti",
          "no",
          "nr",
          "and",
          "und",
          "et",
          "e",
          "part",
          "player");

  private static final Map<String, Pattern> KEYS = new LinkedHashMap<>();

  static {
    KEYS.put("bflat", key("b flat|bflat|bb|sib|si b|si flat|si bemolle|si bemol|b"));
    KEYS.put("eflat", key("e flat|eflat|eb|es|mib|mi b|mi flat|mi bemolle|mi bemol"));
    KEYS.put("aflat", key("a flat|aflat|ab|lab|la flat|la bemolle|la bemol"));
    KEYS.put("dflat", key("d flat|dflat|db|des|re flat|re bemolle|re bemol"));
    KEYS.put("a", Pattern.compile("\\b((in|en) (a|la)|a)\\b"));
    KEYS.put("c", Pattern.compile("\\b((in|en) (c|do|ut)|c)\\b"));
    KEYS.put("d", Pattern.compile("\\b((in|en) (d|re)|d)\\b"));
    KEYS.put("e", Pattern.compile("\\b(in|en) (e|mi)\\b"));
    KEYS.put("f", Pattern.compile("\\b((in|en) (f|fa)|f)\\b"));
    KEYS.put("g", Pattern.compile("\\b((in|en) (g|sol)|g)\\b"));
  }

  static InstrumentName of(String text) {
    String plain = TOGETHER.matcher(TypedNames.plain(text)).replaceAll(" ");
    List<String> words =
        Arrays.stream(plain.split(" "))
            .map(InstrumentName::unglued)
            .map(InstrumentName::singular)
            .toList();
    String written = withoutNumbers(words);
    for (Map.Entry<String, Pattern> entry : KEYS.entrySet()) {
      Matcher matcher = entry.getValue().matcher(written);
      if (matcher.find()) {
        String rest = matcher.replaceFirst(" ").trim();
        return new InstrumentName(written, base(rest), entry.getKey());
      }
    }
    return new InstrumentName(written, base(written), "");
  }

  /** Whether a text is nothing but a key: "B♭", "in A". */
  static boolean isKey(String text) {
    InstrumentName name = of(text);
    return !name.key.isEmpty() && name.base.isEmpty();
  }

  boolean hasKey() {
    return !key.isEmpty();
  }

  private static Pattern key(String spellings) {
    return Pattern.compile("\\b(?:in |en )?(?:" + spellings + ")\\b");
  }

  private static String unglued(String word) {
    Matcher matcher = GLUED.matcher(word);
    return matcher.matches() ? matcher.group(1) : word;
  }

  private static String singular(String word) {
    boolean plural = word.length() > 3 && word.endsWith("s") && !word.endsWith("ss");
    return plural ? word.substring(0, word.length() - 1) : word;
  }

  /** Drops chair numbers, arabic or roman, unless nothing else is there. */
  private static String withoutNumbers(List<String> words) {
    String rest =
        words.stream()
            .filter(word -> !NUMBER.matcher(word).matches())
            .collect(Collectors.joining(" "));
    return rest.isEmpty() ? String.join(" ", words) : rest;
  }

  private static Set<String> base(String rest) {
    return Arrays.stream(rest.split(" "))
        .filter(word -> !word.isEmpty() && !WORDS_APART.contains(word))
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
