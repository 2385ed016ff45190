package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.musicxml.make.NoteRewrite;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.musicxml.text.TextSpan;
import stafette.score.Strand;

/**
 * Balances the slurs of voices some of whose notes sound no more. Where one end of a slur is gone,
 * the other goes; a player who keeps some of the notes under it keeps them slurred, within a voice.
 *
 * <p>A slur ends in the voice in which it began, if one of its number is open there; else in
 * another.
 */
final class SlurEdits {
  private static final Pattern SLUR = Pattern.compile("<slur\\s[^>]*/>");
  private static final Pattern TYPE = Pattern.compile("type\\s*=\\s*[\"'](\\w+)[\"']");
  private static final Pattern NUMBER = Pattern.compile("number\\s*=\\s*[\"'](\\d+)[\"']");

  private final EditedPart part;
  private final boolean keepsShare;

  /** The first note of each chord of each voice. */
  private final Map<Strand, List<TextSpan>> chords = new HashMap<>();

  /** Starts without their stops, the latest last. */
  private final List<End> open = new ArrayList<>();

  /**
   * One end of a slur.
   *
   * @param chord the number of the chord of its voice on which it stands
   * @param note the note on which it stands
   */
  private record End(Strand strand, int chord, TextSpan note, String tag) {
    boolean isNumberedLike(End other) {
      return numberOf(tag).equals(numberOf(other.tag));
    }
  }

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
    NoteText note = element.note().orElseThrow();
    Strand strand = new Strand(note.staff(), note.voice());
    List<TextSpan> own = chords.computeIfAbsent(strand, none -> new ArrayList<>());
    if (!note.chord() || own.isEmpty()) {
      own.add(element.span());
    }
    List<End> ends =
        SLUR.matcher(original)
            .results()
            .map(result -> new End(strand, own.size() - 1, element.span(), result.group()))
            .toList();
    ends.stream().filter(end -> isType(end.tag(), "stop")).forEach(this::close);
    ends.stream().filter(end -> isType(end.tag(), "start")).forEach(open::add);
  }

  private void close(End stop) {
    Optional<End> begun =
        open.stream()
            .filter(end -> end.isNumberedLike(stop))
            .reduce(
                (one, later) ->
                    one.strand().equals(stop.strand()) && !later.strand().equals(stop.strand())
                        ? one
                        : later);
    if (begun.isEmpty()) {
      return;
    }
    End start = begun.get();
    open.remove(start);
    if (keepsShare && start.strand().equals(stop.strand())) {
      keepShare(start, stop);
    } else if (part.isSilenced(start.note()) != part.isSilenced(stop.note())) {
      takeAway(part.isSilenced(start.note()) ? stop : start);
    }
  }

  /** Each run of two notes or more that stay side by side stays slurred. */
  private void keepShare(End start, End stop) {
    List<TextSpan> own = chords.getOrDefault(start.strand(), List.of());
    List<List<Integer>> runs = runs(own, start.chord(), stop.chord());
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
        addUnless(first == start.chord(), own.get(first), "start", start);
        addUnless(last == stop.chord(), own.get(last), "stop", start);
      }
    }
    takeAwayUnless(starts, start);
    takeAwayUnless(stops, stop);
  }

  private List<List<Integer>> runs(List<TextSpan> chords, int from, int to) {
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

  private void addUnless(boolean there, TextSpan chord, String type, End like) {
    if (!there) {
      String tag = "<slur type=\"" + type + "\" number=\"" + numberOf(like.tag()) + "\"/>";
      part.edit(chord, text -> NoteRewrite.withNotation(text, tag));
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
