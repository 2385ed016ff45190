package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import stafette.musicxml.make.BarText;
import stafette.musicxml.make.CueNote;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.make.NoteMaker;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.share.Sign;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.musicxml.text.TextStyle;
import stafette.plan.SourceTreatment;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/**
 * Writes out measured tremolos of which the part's own player has only some strokes, so that the
 * others' can go.
 */
final class SlashedShare {
  private static final Pattern TREMOLO = Pattern.compile("<tremolo[\\s>/]");
  private static final Pattern JOINED = Pattern.compile("<tremolo\\s[^>]*type\\s*=\\s*[\"']start");

  private final Origin origin;
  private final EditedPart part;
  private final List<Line> lines;
  private final LineNotes notes;
  private final Assigned own;
  private final Fragments fragments;
  private final TextStyle style;
  private final List<Span> writtenOut = new ArrayList<>();
  private final Set<Integer> leftWhole = new HashSet<>();

  SlashedShare(
      Origin origin,
      EditedPart part,
      List<Line> lines,
      LineNotes notes,
      Assigned own,
      Fragments fragments) {
    this.origin = origin;
    this.part = part;
    this.lines = lines;
    this.notes = notes;
    this.own = own;
    this.fragments = fragments;
    this.style = TextStyle.of(origin);
  }

  /** A tremolo on one chord or between two. */
  private record Slashed(List<ElementText> elements, Span span) {
    ElementText first() {
      return elements.get(0);
    }
  }

  /** Whether a place lies in a tremolo that was written out, with its signs. */
  boolean covers(Position at) {
    return writtenOut.stream().anyMatch(span -> span.contains(at));
  }

  /** Indices of bars in which a tremolo could not be taken apart. */
  Set<Integer> leftWhole() {
    return leftWhole;
  }

  void writeOut(MeasureText measure, Bar bar, SourceTreatment treatment) throws UnwritablePlan {
    for (Slashed slashed : slashedIn(measure)) {
      List<Stroke> strokes = notes.between(slashed.span().start(), slashed.span().end());
      boolean shared =
          strokes.stream().anyMatch(own::plays) && !strokes.stream().allMatch(own::plays);
      if (shared && canBeTakenApart(slashed, strokes, treatment)) {
        writeOut(slashed, measure, bar, treatment);
      } else if (shared) {
        leftWhole.add(bar.index());
      }
    }
  }

  private List<Slashed> slashedIn(MeasureText measure) {
    List<Slashed> all = new ArrayList<>();
    List<ElementText> elements = measure.elements();
    int next = 0;
    while (next < elements.size()) {
      int first = next;
      next = endOfChord(elements, first);
      List<ElementText> chord = elements.subList(first, next);
      if (isSlashedOfLine(chord)) {
        boolean pair =
            chord.stream().anyMatch(note -> JOINED.matcher(text(note)).find())
                && isNote(elements, next);
        next = pair ? endOfChord(elements, next) : next;
        ElementText last = elements.get(next - 1);
        Position stop = last.onset().plus(last.note().orElseThrow().length());
        all.add(new Slashed(elements.subList(first, next), new Span(chord.get(0).onset(), stop)));
      }
    }
    return all;
  }

  private boolean isSlashedOfLine(List<ElementText> chord) {
    return chord.stream().anyMatch(note -> !notes.in(note).isEmpty())
        && chord.stream().anyMatch(note -> TREMOLO.matcher(text(note)).find());
  }

  private static boolean isNote(List<ElementText> elements, int index) {
    return index < elements.size() && elements.get(index).note().isPresent();
  }

  private static int endOfChord(List<ElementText> elements, int first) {
    int end = first + 1;
    while (end < elements.size() && elements.get(end).note().filter(NoteText::chord).isPresent()) {
      end++;
    }
    return end;
  }

  /**
   * Only where nothing but the lines sounds, no slur leads in or out, nor from what sounds to a
   * cue, and one line alone is cued.
   */
  private boolean canBeTakenApart(
      Slashed slashed, List<Stroke> strokes, SourceTreatment treatment) {
    return slashed.elements().stream().noneMatch(element -> notes.in(element).isEmpty())
        && strokes.stream().noneMatch(stroke -> isSlurredBeyond(stroke, slashed.span()))
        && (treatment != SourceTreatment.CUE
            || (lines.size() == 1 && strokes.stream().noneMatch(Stroke::slurred)));
  }

  private static boolean isSlurredBeyond(Stroke stroke, Span tremolo) {
    return (stroke.slurred() && stroke.onset().equals(tremolo.start()))
        || (stroke.slurContinues() && stroke.span().end().equals(tremolo.end()));
  }

  private void writeOut(Slashed slashed, MeasureText measure, Bar bar, SourceTreatment treatment)
      throws UnwritablePlan {
    ElementText first = slashed.first();
    NoteText note = first.note().orElseThrow();
    Origin.Attributes inForce = first.attributes();
    Optional<Integer> staff = inForce.staves() > 1 ? Optional.of(note.staff()) : Optional.empty();
    BarAccidentals accidentals = new BarAccidentals(origin, measure, bar, gone(measure, slashed));
    BarText text =
        new BarText(
            fragments,
            treatment == SourceTreatment.CUE ? Assigned.all(own.player(), lines.get(0)) : own,
            bar,
            slashed.span(),
            new NoteMaker(
                own.spelling(NoteMaker.spellingIn(inForce)),
                accidentals.before(first.onset(), note.staff(), inForce.fifths()),
                note.voice(),
                staff),
            staff,
            List.of());
    String lineBreak = style.breakWithin(origin.text(), measure);
    List<String> pieces = pieces(text, slashed, bar, inForce.divisions(), treatment, lineBreak);
    part.writeAnew(
        slashed.elements().stream().map(ElementText::span).toList(),
        String.join(lineBreak, pieces));
    writtenOut.add(slashed.span());
  }

  private Set<ElementText> gone(MeasureText measure, Slashed slashed) {
    Set<ElementText> gone = new HashSet<>(slashed.elements());
    measure.elements().stream().filter(e -> notes.goes(e, Optional.of(own))).forEach(gone::add);
    return gone;
  }

  private List<String> pieces(
      BarText text,
      Slashed slashed,
      Bar bar,
      Rational now,
      SourceTreatment treatment,
      String lineBreak)
      throws UnwritablePlan {
    int divisions = text.divisions(now);
    List<Sign> words =
        own.signs(bar.index()).stream()
            .filter(sign -> sign.words().isPresent() && slashed.span().contains(sign.at()))
            .toList();
    List<String> pieces = new ArrayList<>();
    for (BarText.BarPiece piece : text.pieces(divisions, words)) {
      boolean cued = treatment == SourceTreatment.CUE && isOthers(piece);
      String set = style.set(piece.text(), lineBreak);
      pieces.add(cued ? CueNote.of(set, set.contains("<grace")) : set);
    }
    Rational here = Rational.of(divisions);
    if (!here.equals(now)) {
      pieces.add(0, style.set(text.divisionsElement(here), lineBreak));
      pieces.add(style.set(text.divisionsElement(now), lineBreak));
    }
    return pieces;
  }

  private boolean isOthers(BarText.BarPiece piece) {
    return piece.text().startsWith("<note") && notes.at(piece.at()).stream().noneMatch(own::plays);
  }

  private String text(ElementText element) {
    return element.span().in(origin.text());
  }
}
