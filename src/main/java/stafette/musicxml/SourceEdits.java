package stafette.musicxml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.musicxml.Origin.ElementText;
import stafette.musicxml.Origin.MeasureText;
import stafette.musicxml.Origin.NoteText;
import stafette.musicxml.Origin.PartText;
import stafette.plan.SourceTreatment;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Stroke;

/**
 * Turns the notes of lines, where they were taken from, into cue notes or rests, by small changes
 * to their text.
 */
final class SourceEdits {
  private static final Pattern SLUR = Pattern.compile("<slur\\s[^>]*/>");
  private static final Pattern TYPE = Pattern.compile("type\\s*=\\s*[\"'](\\w+)[\"']");
  private static final Pattern NUMBER = Pattern.compile("number\\s*=\\s*[\"'](\\d+)[\"']");

  private final Origin origin;
  private final PartText part;
  private final List<Line> lines;
  private final Optional<Assigned> own;

  /** The new texts of elements; empty for those that go. */
  private final Map<TextSpan, String> texts = new LinkedHashMap<>();

  /** Elements that sound no more. */
  private final Set<TextSpan> silenced = new HashSet<>();

  /** One end of a slur: its tag, and the note on which it stands. */
  private record SlurEnd(TextSpan note, String tag) {}

  /**
   * Edits to a part.
   *
   * @param lines of one voice; one, or one for each tone of its chords
   * @param own what the part's own player keeps of the lines
   */
  SourceEdits(Origin origin, PartText part, List<Line> lines, Optional<Assigned> own) {
    this.origin = origin;
    this.part = part;
    this.lines = lines;
    this.own = own;
  }

  List<Replacement> replacements(SourceTreatment treatment) {
    int end = lines.stream().mapToInt(SourceEdits::lastBar).max().orElseThrow() + 1;
    List<MeasureText> touched =
        part.measures().subList(source().firstBar(), Math.min(end, part.measures().size()));
    if (treatment == SourceTreatment.CUE) {
      touched.forEach(this::cue);
    } else {
      touched.forEach(this::remove);
      balanceSlurs();
      touched.forEach(this::balanceBeams);
    }
    return texts.entrySet().stream()
        .map(entry -> replacement(entry.getKey(), entry.getValue()))
        .toList();
  }

  private LineSource source() {
    return lines.get(0).source();
  }

  private static int lastBar(Line line) {
    return line.bars().at(line.span().end()).index();
  }

  /** An element that goes takes the white space before it along. */
  private Replacement replacement(TextSpan span, String text) {
    int start = span.start();
    while (text.isEmpty() && Character.isWhitespace(origin.text().charAt(start - 1))) {
      start--;
    }
    return new Replacement(new TextSpan(start, span.end()), text);
  }

  private void edit(TextSpan span, UnaryOperator<String> change) {
    texts.put(span, change.apply(texts.getOrDefault(span, span.in(origin.text()))));
  }

  private void cue(MeasureText measure) {
    for (ElementText element : measure.elements()) {
      if (isOfLine(element) && !element.note().orElseThrow().cue()) {
        boolean grace = element.note().get().grace();
        edit(element.span(), text -> NoteRewrite.cue(text, grace));
      }
    }
  }

  private void remove(MeasureText measure) {
    List<ElementText> elements = measure.elements();
    int i = 0;
    while (i < elements.size()) {
      int end = i + 1;
      if (elements.get(i).note().isPresent()) {
        while (end < elements.size()
            && elements.get(end).note().filter(NoteText::chord).isPresent()) {
          end++;
        }
        removeFrom(elements.subList(i, end));
      }
      i = end;
    }
  }

  /**
   * Takes the lines' tones out of one chord; what is left of it stays, and if nothing is, a rest.
   */
  private void removeFrom(List<ElementText> chord) {
    List<ElementText> gone = chord.stream().filter(this::isOfLine).toList();
    if (gone.isEmpty()) {
      return;
    }
    List<ElementText> left = chord.stream().filter(element -> !gone.contains(element)).toList();
    ElementText foremost = chord.get(0);
    if (left.isEmpty()) {
      boolean grace = foremost.note().orElseThrow().grace();
      gone.stream().skip(grace ? 0 : 1).forEach(this::delete);
      if (!grace) {
        edit(foremost.span(), NoteRewrite::rest);
        silenced.add(foremost.span());
      }
    } else if (gone.contains(foremost)) {
      String heir = left.get(0).span().in(origin.text());
      edit(foremost.span(), text -> NoteRewrite.withToneOf(text, heir));
      delete(left.get(0));
      gone.stream().skip(1).forEach(this::delete);
    } else {
      gone.forEach(this::delete);
    }
  }

  private void delete(ElementText element) {
    edit(element.span(), text -> "");
    silenced.add(element.span());
  }

  /** Where one end of a slur is gone, the other goes. */
  private void balanceSlurs() {
    Map<String, SlurEnd> open = new HashMap<>();
    for (MeasureText measure : part.measures()) {
      for (ElementText element : measure.elements()) {
        if (element.note().filter(this::isInVoice).isPresent()) {
          List<SlurEnd> ends = slurEnds(element);
          ends.stream().filter(end -> isType(end, "stop")).forEach(end -> close(open, end));
          ends.stream()
              .filter(end -> isType(end, "start"))
              .forEach(end -> open.put(numberOf(end), end));
        }
      }
    }
  }

  private List<SlurEnd> slurEnds(ElementText element) {
    return SLUR.matcher(element.span().in(origin.text()))
        .results()
        .map(result -> new SlurEnd(element.span(), result.group()))
        .toList();
  }

  private void close(Map<String, SlurEnd> open, SlurEnd stop) {
    SlurEnd start = open.remove(numberOf(stop));
    if (start != null && silenced.contains(start.note()) != silenced.contains(stop.note())) {
      SlurEnd left = silenced.contains(start.note()) ? stop : start;
      edit(left.note(), text -> NoteRewrite.withoutSlur(text, left.tag()));
    }
  }

  private static boolean isType(SlurEnd end, String type) {
    Matcher found = TYPE.matcher(end.tag());
    return found.find() && found.group(1).equals(type);
  }

  private static String numberOf(SlurEnd end) {
    Matcher found = NUMBER.matcher(end.tag());
    return found.find() ? found.group(1) : "1";
  }

  /** Beams that lose notes are drawn anew over those that stay side by side. */
  private void balanceBeams(MeasureText measure) {
    List<TextSpan> group = new ArrayList<>();
    for (ElementText element : measure.elements()) {
      if (element.note().filter(n -> isInVoice(n) && !n.chord() && !n.grace()).isPresent()) {
        String beam = NoteRewrite.firstBeam(element.span().in(origin.text()));
        if (beam.equals("begin")) {
          group.clear();
        }
        if (!beam.isEmpty()) {
          group.add(element.span());
        }
        if (beam.equals("end") && group.stream().anyMatch(silenced::contains)) {
          beamAnew(group);
        }
      }
    }
  }

  private void beamAnew(List<TextSpan> group) {
    int from = 0;
    while (from < group.size()) {
      int to = from;
      while (to < group.size() && !silenced.contains(group.get(to))) {
        to++;
      }
      beamTogether(group.subList(from, to));
      from = to + 1;
    }
  }

  private void beamTogether(List<TextSpan> notes) {
    List<Integer> flags =
        notes.stream().map(note -> NoteRewrite.beams(note.in(origin.text()))).toList();
    List<List<String>> beams = Beams.over(flags);
    for (int i = 0; i < notes.size(); i++) {
      List<String> values = beams.get(i);
      edit(notes.get(i), text -> NoteRewrite.withBeams(text, values));
    }
  }

  private boolean isInVoice(NoteText note) {
    return note.voice().equals(source().voice()) && note.staff() == source().staff();
  }

  /** Whether a note element is one of a line's, and holds no stroke that its own player keeps. */
  private boolean isOfLine(ElementText element) {
    Optional<NoteText> note = element.note().filter(n -> !n.rest()).filter(this::isInVoice);
    if (note.isEmpty()) {
      return false;
    }
    List<Stroke> held =
        lines.stream()
            .flatMap(line -> line.strokes().stream())
            .filter(stroke -> isPartOf(element, note.get(), stroke))
            .toList();
    return !held.isEmpty()
        && own.map(assigned -> held.stream().noneMatch(assigned::plays)).orElse(true);
  }

  /** Whether a note element holds a stroke, or is tied to it; one with slashes holds several. */
  private static boolean isPartOf(ElementText element, NoteText note, Stroke stroke) {
    if (note.grace()) {
      return element.onset().equals(stroke.onset()) && !stroke.graces().isEmpty();
    }
    boolean sounding = stroke.tones().stream().anyMatch(tone -> tone.key() == note.key());
    boolean holds =
        !stroke.onset().isBefore(element.onset())
            && stroke.onset().isBefore(element.onset().plus(note.length()));
    return sounding && (holds || stroke.span().contains(element.onset()));
  }
}
