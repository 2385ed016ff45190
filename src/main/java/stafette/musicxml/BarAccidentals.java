package stafette.musicxml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.musicxml.Origin.ElementText;
import stafette.musicxml.Origin.MeasureText;
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
  private final List<Noted> notes = new ArrayList<>();
  private boolean anyAdded;

  /**
   * A pitch as it is written.
   *
   * @param element where it stands; empty if it is written now
   */
  private record Noted(Position at, int staff, Pitch written, Optional<ElementText> element) {}

  /**
   * The accidentals of a bar.
   *
   * @param replaced notes that don't stay as they are
   */
  BarAccidentals(Origin origin, MeasureText measure, Bar bar, Set<ElementText> replaced) {
    this.origin = origin;
    this.style = TextStyle.of(origin);
    for (ElementText element : measure.elements()) {
      if (!replaced.contains(element) && bar.span().contains(element.onset())) {
        noted(element).ifPresent(notes::add);
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
    anyAdded = true;
  }

  /** Accidentals for notes that need one only because of what was written before them. */
  List<Replacement> needed() {
    List<Replacement> needed = new ArrayList<>();
    if (!anyAdded) {
      return needed;
    }
    Map<Integer, Accidentals> alone = new HashMap<>();
    Map<Integer, Accidentals> together = new HashMap<>();
    notes.sort(Comparator.comparing(Noted::at));
    for (Noted note : notes) {
      boolean shown = in(together, note).mustShow(note.written());
      if (note.element().isPresent()) {
        ElementText element = note.element().get();
        boolean shownAlone = in(alone, note).mustShow(note.written());
        String text = element.span().in(origin.text());
        boolean hasSign = Math.abs(note.written().alter()) <= 2;
        if (shown && !shownAlone && hasSign && !text.contains("<accidental")) {
          needed.add(with(element, text, note.written()));
        }
      }
    }
    return needed;
  }

  private Accidentals in(Map<Integer, Accidentals> staves, Noted note) {
    int fifths =
        notes.stream()
            .flatMap(each -> each.element().stream())
            .findFirst()
            .map(element -> element.attributes().fifths())
            .orElse(0);
    return staves.computeIfAbsent(note.staff(), staff -> new Accidentals(fifths));
  }

  private Replacement with(ElementText element, String text, Pitch written) {
    TextSpan before = NoteRewrite.beforeAccidental(text);
    int start = element.span().start();
    String lineBreak = style.breakLike(origin.text(), start + before.start());
    int at = start + before.end();
    return new Replacement(
        new TextSpan(at, at),
        lineBreak + "<accidental>" + Accidentals.sign(written).value() + "</accidental>");
  }
}
