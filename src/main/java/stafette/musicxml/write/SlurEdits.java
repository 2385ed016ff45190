package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.musicxml.text.TextSpan;

/**
 * Balances the slurs of a voice some of whose notes sound no more. Where one end of a slur is gone,
 * the other goes; a player who keeps some of the notes under it keeps them slurred.
 */
final class SlurEdits {
  private static final Pattern SLUR = Pattern.compile("<slur\\s[^>]*/>");
  private static final Pattern TYPE = Pattern.compile("type\\s*=\\s*[\"'](\\w+)[\"']");
  private static final Pattern NUMBER = Pattern.compile("number\\s*=\\s*[\"'](\\d+)[\"']");

  private final EditedPart part;
  private final boolean keepsShare;

  /** The first note of each chord. */
  private final List<TextSpan> chords = new ArrayList<>();

  private final Map<String, End> open = new HashMap<>();

  /**
   * One end of a slur.
   *
   * @param chord the number of the chord on which it stands
   * @param note the note on which it stands
   */
  private record End(int chord, TextSpan note, String tag) {}

  private SlurEdits(EditedPart part, boolean keepsShare) {
    this.part = part;
    this.keepsShare = keepsShare;
  }

  /**
   * Balances them.
   *
   * @param keepsShare whether a player keeps a share of the notes
   */
  static void balance(
      EditedPart part,
      Origin origin,
      List<MeasureText> measures,
      Predicate<NoteText> inVoice,
      boolean keepsShare) {
    SlurEdits slurs = new SlurEdits(part, keepsShare);
    for (MeasureText measure : measures) {
      for (ElementText element : measure.elements()) {
        if (element.note().filter(note -> !note.rest()).filter(inVoice).isPresent()) {
          slurs.take(element, element.span().in(origin.text()));
        }
      }
    }
  }

  private void take(ElementText element, String original) {
    if (!element.note().orElseThrow().chord() || chords.isEmpty()) {
      chords.add(element.span());
    }
    List<End> ends =
        SLUR.matcher(original)
            .results()
            .map(result -> new End(chords.size() - 1, element.span(), result.group()))
            .toList();
    ends.stream().filter(end -> isType(end.tag(), "stop")).forEach(this::close);
    ends.stream()
        .filter(end -> isType(end.tag(), "start"))
        .forEach(end -> open.put(numberOf(end.tag()), end));
  }

  private void close(End stop) {
    End start = open.remove(numberOf(stop.tag()));
    if (start == null) {
      return;
    }
    if (keepsShare) {
      keepShare(start, stop);
    } else if (part.isSilenced(start.note()) != part.isSilenced(stop.note())) {
      takeAway(part.isSilenced(start.note()) ? stop : start);
    }
  }

  /** Each run of two notes or more that stay side by side stays slurred. */
  private void keepShare(End start, End stop) {
    List<List<Integer>> runs = runs(start.chord(), stop.chord());
    if (runs.size() == 1 && runs.get(0).size() == stop.chord() - start.chord() + 1) {
      return;
    }
    boolean starts = false;
    boolean stops = false;
    for (List<Integer> run : runs) {
      int first = run.get(0);
      int last = run.get(run.size() - 1);
      if (first < last) {
        starts |= first == start.chord();
        stops |= last == stop.chord();
        addUnless(first == start.chord(), first, "start", start);
        addUnless(last == stop.chord(), last, "stop", start);
      }
    }
    takeAwayUnless(starts, start);
    takeAwayUnless(stops, stop);
  }

  private List<List<Integer>> runs(int from, int to) {
    List<List<Integer>> runs = new ArrayList<>();
    boolean goesOn = false;
    for (int at = from; at <= to; at++) {
      boolean stays = !part.isSilenced(chords.get(at));
      if (stays && !goesOn) {
        runs.add(new ArrayList<>());
      }
      if (stays) {
        runs.get(runs.size() - 1).add(at);
      }
      goesOn = stays;
    }
    return runs;
  }

  private void addUnless(boolean there, int chord, String type, End like) {
    if (!there) {
      String tag = "<slur type=\"" + type + "\" number=\"" + numberOf(like.tag()) + "\"/>";
      part.edit(chords.get(chord), text -> NoteRewrite.withNotation(text, tag));
    }
  }

  private void takeAwayUnless(boolean stays, End end) {
    if (!stays) {
      takeAway(end);
    }
  }

  private void takeAway(End end) {
    if (!part.isSilenced(end.note())) {
      part.edit(end.note(), text -> NoteRewrite.withoutSlur(text, end.tag()));
    }
  }

  private static boolean isType(String tag, String type) {
    Matcher found = TYPE.matcher(tag);
    return found.find() && found.group(1).equals(type);
  }

  private static String numberOf(String tag) {
    Matcher found = NUMBER.matcher(tag);
    return found.find() ? found.group(1) : "1";
  }
}
