package stafette.musicxml.make;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes notes that a player plays no more as cue notes, and back. */
public final class CueNote {
  private static final Pattern CUE =
      Pattern.compile("\\s*<cue(?:\\s[^>]*)?/>|\\s*<cue(?:\\s[^>]*)?>\\s*</cue>");
  private static final Pattern GRACE =
      Pattern.compile("<grace(?:\\s[^>]*)?/>|<grace(?:\\s[^>]*)?>\\s*</grace>");

  private CueNote() {}

  /** A note as a cue; those have no ties that sound, but keep the curves. */
  public static String of(String note, boolean grace) {
    Matcher anchor = (grace ? GRACE : NoteRewrite.START_TAG).matcher(note);
    if (!anchor.find()) {
      return note;
    }
    String after = note.substring(anchor.end());
    String silent = anchor.replaceFirst("$0<cue/>");
    String curves =
        signs(
            "tied",
            missing(
                NoteRewrite.all(NoteRewrite.TIE, after), NoteRewrite.all(NoteRewrite.TIED, after)));
    String cue = NoteRewrite.TIE.matcher(silent).replaceAll("");
    return curves.isEmpty() ? cue : NoteRewrite.withNotation(cue, curves);
  }

  /** A cue note as one that sounds, with the ties whose curves it shows. */
  public static String sounding(String cue) {
    String note = CUE.matcher(cue).replaceFirst("");
    return NoteRewrite.after(
        NoteRewrite.DURATION,
        note,
        signs("tie", missing(NoteRewrite.all(NoteRewrite.TIED, cue), "")));
  }

  /** What begins or ends in one text and not in the other. */
  private static List<String> missing(String signs, String others) {
    return Stream.of("stop", "start")
        .filter(type -> says(signs, type) && !says(others, type))
        .toList();
  }

  private static boolean says(String signs, String type) {
    return signs.matches("(?s).*type\\s*=\\s*[\"']" + type + "[\"'].*");
  }

  private static String signs(String name, List<String> types) {
    return types.stream()
        .map(type -> "<" + name + " type=\"" + type + "\"/>")
        .collect(Collectors.joining());
  }
}
