package stafette.musicxml.write;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stafette.musicxml.make.BarText;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.make.NoteMaker;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.share.Sign;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Origin.NoteText;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.TextSpan;
import stafette.musicxml.text.TextStyle;
import stafette.notation.Accidentals;
import stafette.notation.BarItem;
import stafette.score.Line;
import stafette.score.Part;
import stafette.score.Pitch;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Rational;
import stafette.time.Span;
import stafette.words.Sentence;

/**
 * Writes what a player has of the line into a part that the score has already, in place of rests.
 */
final class PartWriter {
  private static final Pattern DIVISIONS =
      Pattern.compile("\\s*<divisions(?:\\s[^>]*)?>[^<]*</divisions>");

  private final Origin origin;
  private final PartText part;
  private final Part voices;
  private final Line line;
  private final Assigned assigned;
  private final Fragments fragments;
  private final TextStyle style;
  private final FormerDynamics dynamics;
  private final RunSigns signs;
  private final Optional<Sharing> sharing;

  /**
   * How a staff is shared.
   *
   * @param all what says that all of its players play
   * @param stream which of those that are written there, from 0; each has a voice of its own
   * @param streams how many are written there
   */
  record Sharing(String all, int stream, int streams) {
    boolean isFirst() {
      return stream == 0;
    }

    boolean isAlone() {
      return streams == 1;
    }
  }

  /** The last bar in which others of the staff have notes beside it. */
  private int besideOthers = -2;

  /**
   * Writes into a part.
   *
   * @param voices the part as it was read
   * @param sharing how the staff is shared; empty if the part has one player
   */
  PartWriter(
      Origin origin,
      PartText part,
      Part voices,
      Line line,
      Assigned assigned,
      Fragments fragments,
      Optional<Sharing> sharing) {
    this.sharing = sharing;
    this.origin = origin;
    this.part = part;
    this.voices = voices;
    this.line = line;
    this.assigned = assigned;
    this.fragments = fragments;
    this.style = TextStyle.of(origin);
    this.dynamics = new FormerDynamics(origin, part);
    this.signs = new RunSigns(origin, assigned, fragments, dynamics, voices.marks().hairpins());
  }

  /** What changes: stretches of bars, and signs for the part's own notes that follow them. */
  List<Replacement> replacements() throws UnwritablePlan {
    List<Replacement> replacements =
        new ArrayList<>(MannerSigns.addTo(assigned, origin, part, fragments));
    for (int index : assigned.touched()) {
      Bar bar = line.bars().get(index);
      if (besideOthers == index - 1 && !assigned.sounds(index).isEmpty()) {
        assigned.labelAgain(assigned.sounds(index).get(0).span().start());
      }
      if (index < part.measures().size()) {
        replacements.addAll(inBar(bar, part.measures().get(index)));
      } else if (!assigned.sounds(index).isEmpty()) {
        throw new UnwritablePlan(
            Sentence.of(
                "{0}, bar {1}: this part ends before that bar; fill it up with rests, or give the"
                    + " player a new part by another name",
                assigned.player().name(), bar.number()));
      }
    }
    if (sharing.map(Sharing::isFirst).orElse(true)) {
      replacements.addAll(dynamics.restored(voices, assigned, fragments));
      replacements.addAll(
          FormerWords.character(origin, part, voices)
              .restored(assigned.characters(), assigned, any -> false, fragments));
      sharing.ifPresent(
          shared ->
              replacements.addAll(
                  FormerWords.labels(origin, part, voices, shared.all())
                      .restored(assigned.labels(), assigned, any -> false, fragments)));
    }
    return replacements;
  }

  /**
   * One replacement for each stretch of rests in which the player has something to play, or to play
   * no more.
   */
  private List<Replacement> inBar(Bar bar, MeasureText measure) throws UnwritablePlan {
    List<Replacement> replacements = new ArrayList<>();
    Set<ElementText> own = ownIn(measure);
    Set<ElementText> free = new HashSet<>(own);
    free.addAll(cues(bar, measure));
    BarAccidentals accidentals = new BarAccidentals(origin, measure, bar, own);
    Deque<Span> left = new ArrayDeque<>();
    assigned.sounds(bar.index()).forEach(sound -> left.add(sound.span()));
    if (assigned.clears()) {
      if (stands(bar, own)) {
        return List.of();
      }
      measure.elements().stream()
          .filter(element -> own.contains(element) && !lengthOf(element).isZero())
          .forEach(element -> left.add(Span.of(element.onset(), lengthOf(element))));
    }
    while (!left.isEmpty()) {
      VoiceRun run =
          run(measure, bar, left, free)
              .orElseThrow(
                  () ->
                      new UnwritablePlan(
                          Sentence.of(
                              "{0}, bar {1}: no voice of this part has a rest where the line goes,"
                                  + " though nothing sounds there; write rests into that bar, or"
                                  + " give the player a new part by another name",
                              assigned.player().name(), bar.number())));
      boolean alone = sharing.map(Sharing::isAlone).orElse(true);
      if (sharing.isPresent() && (!alone || isBesideOthers(measure, run, free))) {
        besideOthers = bar.index();
        assigned.labelInVoice(bar.index(), run.voice(), left.getFirst().start());
      }
      left.removeIf(span -> run.span().contains(span.start()));
      over(bar, measure, run, accidentals).ifPresent(replacements::add);
    }
    replacements.addAll(accidentals.needed());
    return replacements;
  }

  /** Where several share the staff, all that stands in a bar goes into one voice, or a new one. */
  private Optional<VoiceRun> run(
      MeasureText measure, Bar bar, Collection<Span> left, Set<ElementText> free) {
    VoiceRun.Own own = (element, note) -> free.contains(element);
    if (sharing.isEmpty()) {
      return VoiceRun.covering(measure, bar, left, own);
    }
    return VoiceRun.coveringAll(measure, bar, left, own)
        .filter(run -> sharing.get().isFirst() || hasIn(run.voice(), free))
        .or(() -> ExtraVoice.in(measure, bar));
  }

  private static boolean hasIn(String voice, Set<ElementText> notes) {
    return notes.stream()
        .flatMap(element -> element.note().stream())
        .anyMatch(note -> note.voice().equals(voice));
  }

  /** Whether other voices of the staff have notes in a measure. */
  private static boolean isBesideOthers(MeasureText measure, VoiceRun run, Set<ElementText> free) {
    return measure.elements().stream()
        .filter(element -> !free.contains(element))
        .flatMap(element -> element.note().stream())
        .anyMatch(
            note ->
                !note.rest()
                    && !note.cue()
                    && note.staff() == run.staff()
                    && !note.voice().equals(run.voice()));
  }

  /** Whether what the player has in a bar stands there already, and nothing else of the line. */
  private boolean stands(Bar bar, Set<ElementText> own) {
    Set<String> standing = new HashSet<>();
    for (ElementText element : own) {
      NoteText note = element.note().orElseThrow();
      if (!note.grace()) {
        standing.add(element.onset() + " " + note.length() + " " + note.key());
      }
    }
    Set<String> wanted = new HashSet<>();
    for (BarItem.SoundingItem sound : assigned.sounds(bar.index())) {
      for (Tone tone : assigned.stroke(sound.stroke()).tones()) {
        wanted.add(sound.span().start() + " " + sound.span().length() + " " + tone.key());
      }
    }
    return standing.equals(wanted);
  }

  private static Length lengthOf(ElementText element) {
    return element.note().orElseThrow().length();
  }

  /**
   * The notes of a measure that may be written anew: those of chords all of whose tones may, as
   * nothing else of a chord is left to stand.
   */
  private Set<ElementText> ownIn(MeasureText measure) {
    Set<ElementText> own = new HashSet<>();
    List<ElementText> chord = new ArrayList<>();
    for (ElementText element : measure.elements()) {
      Optional<NoteText> note = element.note();
      if (note.isPresent() && !note.get().chord()) {
        chord.clear();
      }
      if (note.isPresent() && !note.get().rest()) {
        chord.add(element);
        own.addAll(chord.stream().allMatch(this::isOwn) ? chord : List.of());
        own.removeAll(chord.stream().allMatch(this::isOwn) ? List.of() : chord);
      }
    }
    return own;
  }

  private boolean isOwn(ElementText element) {
    return assigned.owns(element.onset(), element.note().orElseThrow());
  }

  /**
   * Cue notes in whose place the player plays; all of a beam or a tuplet go together. Others stay.
   */
  private List<ElementText> cues(Bar bar, MeasureText measure) {
    List<ElementText> gone = new ArrayList<>();
    for (List<ElementText> group : ExistingCueGroups.of(origin, measure)) {
      boolean played =
          assigned.sounds(bar.index()).stream()
              .anyMatch(
                  sound ->
                      group.stream()
                          .anyMatch(
                              cue -> Span.of(cue.onset(), lengthOf(cue)).overlaps(sound.span())));
      gone.addAll(played ? group : List.of());
    }
    return gone;
  }

  private Optional<Replacement> over(
      Bar bar, MeasureText measure, VoiceRun found, BarAccidentals accidentals)
      throws UnwritablePlan {
    Origin.Attributes inForce = inForceBefore(measure, found.from());
    Optional<Integer> staff = inForce.staves() > 1 ? Optional.of(found.staff()) : Optional.empty();
    VoiceRun run = signs.around(measure, found, staff, bar);
    List<ElementText> kept = kept(measure, run, staff, bar);
    BarText text =
        new BarText(
            fragments,
            assigned,
            bar,
            run.span(),
            maker(run, inForce, staff, accidentals, bar),
            staff,
            kept.stream().map(ElementText::onset).toList());
    int divisions = text.divisions(inForce.divisions());
    String lineBreak = style.breakWithin(origin.text(), measure);
    List<Sign> written = signs.in(measure, run, staff, bar);
    written.forEach(sign -> dynamics.add(sign, staff));
    List<String> pieces = merged(text.pieces(divisions, written), kept, divisions, lineBreak);
    Rational here = Rational.of(divisions);
    if (!run.lead().isZero()) {
      pieces.add(0, style.set(text.back(run.lead(), divisions), lineBreak));
    }
    if (!here.equals(inForce.divisions())) {
      pieces.add(0, style.set(text.divisionsElement(here), lineBreak));
    }
    if (!run.overhang().isZero()) {
      pieces.add(style.set(text.back(run.overhang(), divisions), lineBreak));
    }
    Rational after = inForceBefore(measure, run.to()).divisions();
    if (!here.equals(after)) {
      pieces.add(style.set(text.divisionsElement(after), lineBreak));
    }
    return replacement(measure, run, pieces, lineBreak);
  }

  private Origin.Attributes inForceBefore(MeasureText measure, int index) {
    return index == 0 ? measure.attributes() : measure.elements().get(index - 1).attributes();
  }

  private NoteMaker maker(
      VoiceRun run,
      Origin.Attributes inForce,
      Optional<Integer> staff,
      BarAccidentals accidentals,
      Bar bar) {
    UnaryOperator<Pitch> spelling = assigned.spelling(NoteMaker.spellingIn(inForce));
    Accidentals before = accidentals.before(run.span().start(), run.staff(), inForce.fifths());
    for (BarItem.SoundingItem sound : assigned.sounds(bar.index())) {
      if (run.span().contains(sound.span().start()) && sound.first()) {
        written(assigned.stroke(sound.stroke()))
            .map(spelling)
            .forEach(pitch -> accidentals.add(sound.span().start(), run.staff(), pitch));
      }
    }
    return new NoteMaker(spelling, before, run.voice(), staff);
  }

  /** The pitches of a stroke and of its grace notes. */
  private static Stream<Pitch> written(Stroke stroke) {
    return Stream.concat(
            stroke.graces().stream().flatMap(grace -> grace.tones().stream()),
            stroke.tones().stream())
        .filter(Pitch.class::isInstance)
        .map(Pitch.class::cast);
  }

  /** Elements of the run that stay: all but its notes, forwards and our own signs. */
  private List<ElementText> kept(
      MeasureText measure, VoiceRun run, Optional<Integer> staff, Bar bar) {
    return measure.elements().subList(run.from(), run.to()).stream()
        .filter(element -> element.note().isEmpty() && !element.name().equals("forward"))
        .filter(element -> !signs.isOwn(element, run, staff, bar))
        .toList();
  }

  /** What we made is set like its neighbours; what was kept is already. */
  private List<String> merged(
      List<BarText.BarPiece> pieces, List<ElementText> kept, int divisions, String lineBreak) {
    List<String> result = new ArrayList<>();
    int next = 0;
    for (BarText.BarPiece piece : pieces) {
      while (next < kept.size() && !kept.get(next).onset().isAfter(piece.at())) {
        result.add(keptText(kept.get(next++), divisions));
      }
      result.add(style.set(piece.text(), lineBreak));
    }
    while (next < kept.size()) {
      result.add(keptText(kept.get(next++), divisions));
    }
    result.removeIf(String::isEmpty);
    return result;
  }

  /** The element as it was, without divisions other than those in which the run is written. */
  private String keptText(ElementText element, int divisions) {
    String text = element.span().in(origin.text());
    if (!element.name().equals("attributes")
        || element.attributes().divisions().equals(Rational.of(divisions))
        || !DIVISIONS.matcher(text).find()) {
      return text;
    }
    String rest = DIVISIONS.matcher(text).replaceFirst("");
    return TextStyle.bare(rest).matches("<attributes[^>]*></attributes>") ? "" : rest;
  }

  private Optional<Replacement> replacement(
      MeasureText measure, VoiceRun run, List<String> pieces, String lineBreak) {
    String text = origin.text();
    String written = String.join(lineBreak, pieces);
    if (measure.empty()) {
      String open = measure.startTag().in(text).replaceFirst("\\s*/>$", ">");
      String close = style.breakLike(text, measure.whole().start()) + "</measure>";
      return Optional.of(new Replacement(measure.whole(), open + lineBreak + written + close));
    }
    if (run.from() == run.to()) {
      int at =
          run.from() == 0
              ? measure.startTag().end()
              : measure.elements().get(run.from() - 1).span().end();
      return Optional.of(new Replacement(new TextSpan(at, at), lineBreak + written));
    }
    TextSpan span =
        new TextSpan(
            measure.elements().get(run.from()).span().start(),
            measure.elements().get(run.to() - 1).span().end());
    return TextStyle.bare(written).equals(TextStyle.bare(span.in(text)))
        ? Optional.empty()
        : Optional.of(new Replacement(span, written));
  }
}
