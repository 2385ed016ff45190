package stafette.musicxml.make;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.musicxml.text.TextSpan;

/** Small changes to the text of one note element; all else in it stays as it is. */
public final class NoteRewrite {
  static final Pattern TIE = Pattern.compile("\\s*<tie\\s[^>]*/>|\\s*<tie\\s[^>]*>\\s*</tie>");
  static final Pattern TIED = Pattern.compile("\\s*<tied\\s[^>]*/>|\\s*<tied\\s[^>]*>\\s*</tied>");
  static final Pattern START_TAG = Pattern.compile("<note(?:\\s[^>]*)?>");
  private static final Pattern SOUND =
      Pattern.compile("<(pitch|unpitched)[\\s>].*?</\\1>|<unpitched\\s*/>", Pattern.DOTALL);
  private static final Pattern ACCIDENTAL =
      Pattern.compile("\\s*<accidental[\\s>].*?</accidental>", Pattern.DOTALL);
  private static final Pattern COURTESY =
      Pattern.compile("(?:cautionary|parentheses|editorial|bracket)\\s*=\\s*[\"']yes");
  private static final Pattern BEFORE_ACCIDENTAL =
      Pattern.compile(
          "<(pitch|duration|voice|type)(?:\\s[^>]*)?>.*?</\\1>|<(?:tie|instrument|dot)(?:\\s[^>]*)?/>",
          Pattern.DOTALL);
  static final Pattern DURATION = Pattern.compile("<duration(?:\\s[^>]*)?>[^<]*</duration>");
  private static final Pattern NOTATIONS = Pattern.compile("<notations(?:\\s[^>/]*)?>");
  private static final Pattern EMPTY_NOTATIONS =
      Pattern.compile("\\s*<notations(?:\\s[^>]*)?>\\s*</notations>");
  private static final Pattern AFTER_NOTATIONS =
      Pattern.compile("<(?:lyric|play|listen)(?:\\s[^>]*)?>");
  private static final Pattern BEAM = Pattern.compile("(<beam(?:\\s[^>]*)?>)([^<]*)(</beam>)");
  private static final Pattern TUPLET =
      Pattern.compile("<tuplet\\s[^>]*/>|<tuplet\\s[^>]*>.*?</tuplet>", Pattern.DOTALL);

  /** What a rest keeps of the note that it replaces, in the schema's order. */
  private static final List<Pattern> KEPT_IN_RESTS =
      List.of(
          element("duration"),
          element("voice"),
          element("type"),
          Pattern.compile("<dot\\s*/>"),
          element("time-modification"),
          element("staff"));

  private NoteRewrite() {}

  /** As a rest of the same length at the same place. */
  public static String rest(String note) {
    Matcher tag = START_TAG.matcher(note);
    StringBuilder rest = new StringBuilder(tag.find() ? tag.group() : "<note>").append("<rest/>");
    for (Pattern kept : KEPT_IN_RESTS) {
      Matcher found = kept.matcher(note);
      while (found.find()) {
        rest.append(found.group());
      }
    }
    Matcher tuplet = TUPLET.matcher(note);
    StringBuilder brackets = new StringBuilder();
    while (tuplet.find()) {
      brackets.append(tuplet.group());
    }
    if (!brackets.isEmpty()) {
      rest.append("<notations>").append(brackets).append("</notations>");
    }
    return rest.append("</note>").toString();
  }

  /** The first note of a chord with tone, accidental and ties of another, whose element goes. */
  public static String withToneOf(String note, String other) {
    String plain = ACCIDENTAL.matcher(withoutTies(note)).replaceAll("");
    Matcher sound = SOUND.matcher(other);
    String tone = sound.find() ? sound.group() : "";
    String toned = SOUND.matcher(plain).replaceFirst(Matcher.quoteReplacement(tone));
    String tied = withTied(after(DURATION, toned, all(TIE, other)), all(TIED, other));
    String accidental = all(ACCIDENTAL, other);
    return accidental.isEmpty() ? tied : withAccidental(tied, accidental);
  }

  /** Without the accidental that it shows, unless that is a courtesy. */
  public static String withoutAccidental(String note) {
    return ACCIDENTAL
        .matcher(note)
        .replaceAll(
            found ->
                COURTESY.matcher(found.group()).find()
                    ? Matcher.quoteReplacement(found.group())
                    : "");
  }

  /**
   * With an accidental that it did not show.
   *
   * @param indented the accidental, and the white space before it
   */
  public static String withAccidental(String note, String indented) {
    int at = beforeAccidental(note).end();
    return note.substring(0, at) + indented + note.substring(at);
  }

  /** The element of a note after which its accidental stands. */
  public static TextSpan beforeAccidental(String note) {
    return BEFORE_ACCIDENTAL
        .matcher(note)
        .results()
        .map(found -> new TextSpan(found.start(), found.end()))
        .reduce((first, last) -> last)
        .orElseThrow();
  }

  /** Without one end of a slur. */
  public static String withoutSlur(String note, String tag) {
    int at = note.indexOf(tag);
    return at < 0
        ? note
        : tidy(note.substring(0, at).stripTrailing() + note.substring(at + tag.length()));
  }

  /** With one more notation. */
  public static String withNotation(String note, String tag) {
    if (NOTATIONS.matcher(note).find()) {
      return after(NOTATIONS, note, tag);
    }
    Matcher follower = AFTER_NOTATIONS.matcher(note);
    int at = follower.find() ? follower.start() : note.lastIndexOf("</note>");
    return note.substring(0, at) + "<notations>" + tag + "</notations>" + note.substring(at);
  }

  /** The value of its first beam; empty if it has none. */
  public static String firstBeam(String note) {
    Matcher beam = BEAM.matcher(note);
    return beam.find() ? beam.group(2).strip() : "";
  }

  public static int beams(String note) {
    return (int) BEAM.matcher(note).results().count();
  }

  /** With other values of its beams; without beams if there are none. */
  public static String withBeams(String note, List<String> values) {
    if (values.isEmpty()) {
      return note.replaceAll("\\s*" + BEAM.pattern(), "");
    }
    StringBuilder result = new StringBuilder();
    Matcher beam = BEAM.matcher(note);
    for (int i = 0; beam.find(); i++) {
      beam.appendReplacement(result, "$1" + values.get(i) + "$3");
    }
    return beam.appendTail(result).toString();
  }

  private static String withoutTies(String note) {
    return TIED.matcher(TIE.matcher(note).replaceAll("")).replaceAll("");
  }

  private static String withTied(String note, String tied) {
    return tidy(tied.isEmpty() ? note : withNotation(note, tied));
  }

  static String after(Pattern place, String note, String addition) {
    return place
        .matcher(note)
        .replaceFirst(found -> Matcher.quoteReplacement(found.group() + addition));
  }

  static String all(Pattern pattern, String text) {
    StringBuilder found = new StringBuilder();
    pattern.matcher(text).results().forEach(result -> found.append(result.group().strip()));
    return found.toString();
  }

  /** Without notations that hold nothing. */
  public static String tidy(String note) {
    return EMPTY_NOTATIONS.matcher(note).replaceAll("");
  }

  private static Pattern element(String name) {
    return Pattern.compile("<" + name + "(?:\\s[^>]*)?>.*?</" + name + ">", Pattern.DOTALL);
  }
}
