package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import stafette.musicxml.make.CueNote;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.make.NoteRewrite;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.TextSpan;
import stafette.plan.SourceTreatment;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.Part;
import stafette.time.Bar;

/**
 * Turns the notes of lines, where they were taken from, into cue notes or rests, by small changes
 * to their text. What the part's own player has of the lines stays: the part becomes its share.
 */
final class SourceEdits {
  private final Origin origin;
  private final PartText part;
  private final Part voices;
  private final List<Line> lines;
  private final Optional<Assigned> own;
  private final Fragments fragments;
  private final List<MeasureText> touched;
  private final LineNotes notes;
  private final EditedPart edited;
  private final Optional<SlashedShare> slashed;
  private final Optional<NewSlurs> slurs;

  /** Of chords whose first note goes: the note whose tone that takes, and the first note. */
  private final Map<TextSpan, TextSpan> heirs = new HashMap<>();

  /**
   * Edits to a part.
   *
   * @param voices the part as it was read
   * @param lines of one voice; one, or one for each tone of its chords
   * @param own what the part's own player keeps of the lines, if it takes part
   */
  SourceEdits(
      Origin origin,
      PartText part,
      Part voices,
      List<Line> lines,
      Optional<Assigned> own,
      Fragments fragments) {
    this.origin = origin;
    this.part = part;
    this.voices = voices;
    this.lines = lines;
    this.own = own;
    this.fragments = fragments;
    int end = lines.stream().mapToInt(SourceEdits::lastBar).max().orElseThrow() + 1;
    touched = part.measures().subList(source().firstBar(), Math.min(end, part.measures().size()));
    notes = new LineNotes(voices, lines, touched);
    edited = new EditedPart(origin);
    slurs = own.map(share -> new NewSlurs(edited, voices, source(), notes, share));
    slashed = own.map(share -> new SlashedShare(origin, edited, lines, notes, share, fragments));
  }

  List<Replacement> replacements(SourceTreatment treatment) throws UnwritablePlan {
    for (int i = 0; slashed.isPresent() && i < touched.size(); i++) {
      slashed.get().writeOut(touched.get(i), bar(i), treatment);
    }
    if (treatment == SourceTreatment.CUE) {
      touched.forEach(this::cue);
    } else {
      touched.forEach(this::remove);
      mend();
    }
    slurs.ifPresent(all -> all.addTo(touched));
    List<Replacement> all = new ArrayList<>();
    own.ifPresent(share -> all.addAll(signs(share)));
    all.addAll(edited.replacements());
    return all;
  }

  /** Makes whole what is left where notes have gone. */
  private void mend() {
    SlurEdits.balance(edited, origin, part.measures(), notes::isInVoice, own.isPresent());
    BeamEdits beams = new BeamEdits(origin, edited);
    touched.forEach(measure -> beams.balance(measure, notes::isInVoice));
    each(this::showAccidentals);
    IdleMarks idle = new IdleMarks(origin, edited, part, voices.marks(), touched);
    idle.removeLines();
    if (own.isEmpty()) {
      idle.removeDynamicsAndCharacter();
    }
    each(new RestRuns(origin, edited, notes::isInVoice, fragments)::draw);
  }

  private void each(BiConsumer<MeasureText, Bar> change) {
    for (int i = 0; i < touched.size(); i++) {
      change.accept(touched.get(i), bar(i));
    }
  }

  private Bar bar(int index) {
    return lines.get(0).bars().get(source().firstBar() + index);
  }

  private List<Replacement> signs(Assigned share) {
    return new SourceSigns(origin, part, lines.get(0), share, fragments)
        .replacements(at -> slashed.map(s -> s.covers(at)).orElse(false));
  }

  /** Whether a note is one of the lines'. */
  boolean isOfLine(ElementText element) {
    return !notes.in(element).isEmpty();
  }

  /** Indices of the bars in which notes of the lines are others'. */
  List<Integer> othersBars() {
    Set<Integer> bars = new TreeSet<>();
    for (Line line : lines) {
      line.strokes().stream()
          .filter(stroke -> own.map(share -> !share.plays(stroke)).orElse(true))
          .forEach(stroke -> bars.add(line.bars().at(stroke.onset()).index()));
    }
    return List.copyOf(bars);
  }

  /** Indices of the bars in which a tremolo is left whole, though others have some of it. */
  List<Integer> wholeTremolos() {
    return slashed.map(share -> share.leftWhole().stream().sorted().toList()).orElse(List.of());
  }

  private LineSource source() {
    return lines.get(0).source();
  }

  private static int lastBar(Line line) {
    return line.bars().at(line.span().end()).index();
  }

  private void cue(MeasureText measure) {
    for (ElementText element : measure.elements()) {
      boolean isCue = element.note().map(NoteText::cue).orElse(false);
      if (goes(element) && !isCue) {
        boolean grace = element.note().orElseThrow().grace();
        edited.edit(element.span(), text -> CueNote.of(text, grace));
      } else if (isCue && stays(element)) {
        edited.edit(element.span(), CueNote::sounding);
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
    List<ElementText> gone = chord.stream().filter(this::goes).toList();
    if (gone.isEmpty()) {
      return;
    }
    List<ElementText> left = chord.stream().filter(element -> !gone.contains(element)).toList();
    ElementText foremost = chord.get(0);
    if (left.isEmpty()) {
      boolean grace = foremost.note().orElseThrow().grace();
      gone.stream().skip(grace ? 0 : 1).forEach(this::delete);
      if (!grace) {
        edited.edit(foremost.span(), NoteRewrite::rest);
        edited.silence(foremost.span());
      }
    } else if (gone.contains(foremost)) {
      String heir = left.get(0).span().in(origin.text());
      edited.edit(foremost.span(), text -> NoteRewrite.withToneOf(text, heir));
      heirs.put(left.get(0).span(), foremost.span());
      delete(left.get(0));
      gone.stream().skip(1).forEach(this::delete);
    } else {
      gone.forEach(this::delete);
    }
  }

  private void delete(ElementText element) {
    edited.delete(element.span());
    edited.silence(element.span());
  }

  /** Notes that stay show the accidentals that others before them showed. */
  private void showAccidentals(MeasureText measure, Bar bar) {
    Set<ElementText> gone =
        measure.elements().stream()
            .filter(element -> isPitchGone(element.span()))
            .collect(Collectors.toSet());
    BarAccidentals accidentals = new BarAccidentals(origin, measure, bar, gone);
    for (ElementText idle : accidentals.idle()) {
      if (!edited.isWrittenAnew(idle.span())) {
        edited.edit(heirs.getOrDefault(idle.span(), idle.span()), NoteRewrite::withoutAccidental);
      }
    }
    for (BarAccidentals.MissingSign missing : accidentals.missing()) {
      TextSpan note = missing.element().span();
      if (!edited.isWrittenAnew(note)) {
        edited.edit(
            heirs.getOrDefault(note, note),
            text -> NoteRewrite.withAccidental(text, missing.text()));
      }
    }
  }

  private boolean isPitchGone(TextSpan note) {
    return heirs.containsValue(note) || (edited.isSilenced(note) && !heirs.containsKey(note));
  }

  private boolean goes(ElementText element) {
    return !edited.isWrittenAnew(element.span()) && notes.goes(element, own);
  }

  private boolean stays(ElementText element) {
    return !edited.isWrittenAnew(element.span())
        && own.isPresent()
        && !notes.in(element).isEmpty()
        && !notes.goes(element, own);
  }
}
