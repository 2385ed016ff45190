package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.musicxml.make.NoteMaker;
import stafette.musicxml.make.NoteRewrite;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.musicxml.text.Origin.MeasureText;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.TextSpan;
import stafette.musicxml.text.TextStyle;
import stafette.notation.Accidentals;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.time.Bar;
import stafette.time.Position;

/**
 * The accidentals of one bar of a part: those of the notes that stay, and those of what is written
 * between them. Each staff has its own.
 */
final class BarAccidentals {
  private static final Pattern WRITTEN_PITCH =
      Pattern.compile(
          "<step>\\s*([A-G])\\s*</step>\\s*(?:<alter>\\s*(-?\\d+)[^<]*</alter>\\s*)?<octave>\\s*(\\d)");

  private final Origin origin;
  private final TextStyle style;
  private final List<Noted> before = new ArrayList<>();
  private final List<Noted> notes = new ArrayList<>();

  /**
   * A pitch as it is written.
   *
   * @param element where it stands; empty if it is written now
   */
  private record Noted(Position at, int staff, Pitch written, Optional<ElementText> element) {}

  /**
   * An accidental that a note must show now.
   *
   * @param text the accidental, and the white space before it
   */
  record MissingSign(ElementText element, String text) {}

  /**
   * The accidentals of a bar.
   *
   * @param replaced notes that don't stay as they are
   */
  BarAccidentals(Origin origin, MeasureText measure, Bar bar, Set<ElementText> replaced) {
    this.origin = origin;
    this.style = TextStyle.of(origin);
    for (ElementText element : measure.elements()) {
      if (bar.span().contains(element.onset())) {
        noted(element).ifPresent(before::add);
        noted(element).filter(note -> !replaced.contains(element)).ifPresent(notes::add);
      }
    }
  }

  private Optional<Noted> noted(ElementText element) {
    Matcher pitch = WRITTEN_PITCH.matcher(element.span().in(origin.text()));
    if (element.note().filter(note -> !note.rest() && !note.tiedFrom()).isEmpty()
        || !pitch.find()) {
      return Optional.empty();
    }
    int alter = pitch.group(2) == null ? 0 : Integer.parseInt(pitch.group(2));
    Pitch written =
        new Pitch(Step.valueOf(pitch.group(1)), alter, Integer.parseInt(pitch.group(3)));
    int staff = element.note().orElseThrow().staff();
    return Optional.of(new Noted(element.onset(), staff, written, Optional.of(element)));
  }

  /** What holds on a staff when a place is reached. */
  Accidentals before(Position at, int staff, int fifths) {
    Accidentals accidentals = new Accidentals(fifths);
    notes.stream()
        .filter(note -> note.staff() == staff && note.at().isBefore(at))
        .sorted(Comparator.comparing(Noted::at))
        .forEach(note -> accidentals.mustShow(note.written()));
    return accidentals;
  }

  /** Takes note of what is written. */
  void add(Position at, int staff, Pitch written) {
    notes.add(new Noted(at, staff, written, Optional.empty()));
  }

  /**
   * Accidentals for notes that stay and need one only because of what goes or comes before them.
   */
  List<MissingSign> missing() {
    if (notes.equals(before)) {
      return List.of();
    }
    Set<ElementText> shownBefore = new HashSet<>();
    shown(before).forEach(note -> note.element().ifPresent(shownBefore::add));
    List<MissingSign> missing = new ArrayList<>();
    for (Noted note : shown(notes)) {
      note.element()
          .filter(element -> !shownBefore.contains(element))
          .flatMap(element -> missing(element, note.written()))
          .ifPresent(missing::add);
    }
    return missing;
  }

  /**
   * Notes that stay and showed an accidental that they need no more, as what it took back is gone.
   */
  Set<ElementText> idle() {
    Set<ElementText> needed = new HashSet<>();
    shown(notes).forEach(note -> note.element().ifPresent(needed::add));
    Set<ElementText> staying = new HashSet<>();
    notes.forEach(note -> note.element().ifPresent(staying::add));
    Set<ElementText> idle = new HashSet<>();
    shown(before).forEach(note -> note.element().ifPresent(idle::add));
    idle.retainAll(staying);
    idle.removeAll(needed);
    return idle;
  }

  /** The notes that must show their accidental. */
  private List<Noted> shown(List<Noted> all) {
    Map<Integer, Accidentals> staves = new HashMap<>();
    return all.stream()
        .sorted(Comparator.comparing(Noted::at))
        .filter(note -> in(staves, note).mustShow(note.written()))
        .toList();
  }

  /** What is missing as insertions into the text. */
  List<Replacement> needed() {
    return missing().stream()
        .map(
            missing -> {
              TextSpan span = missing.element().span();
              int at = span.start() + NoteRewrite.beforeAccidental(span.in(origin.text())).end();
              return new Replacement(new TextSpan(at, at), missing.text());
            })
        .toList();
  }

  private Accidentals in(Map<Integer, Accidentals> staves, Noted note) {
    int fifths =
        before.stream()
            .flatMap(each -> each.element().stream())
            .findFirst()
            .map(element -> element.attributes().fifths())
            .orElse(0);
    return staves.computeIfAbsent(note.staff(), staff -> new Accidentals(fifths));
  }

  private Optional<MissingSign> missing(ElementText element, Pitch written) {
    String text = element.span().in(origin.text());
    if (Math.abs(written.alter()) > 2 || text.contains("<accidental")) {
      return Optional.empty();
    }
    String lineBreak =
        style.breakLike(
            origin.text(), element.span().start() + NoteRewrite.beforeAccidental(text).start());
    return Optional.of(
        new MissingSign(
            element,
            lineBreak + "<accidental>" + NoteMaker.sign(written).value() + "</accidental>"));
  }
}
