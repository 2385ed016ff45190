package stafette.plan.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.limits.Instrument;
import stafette.notation.NoteShape;
import stafette.score.Expression;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/**
 * Which strokes of a passage are written as one note with slashes through its stem, or as two notes
 * with slashes between them, as they are where they come from. What is played of such a note in
 * part, or with marks within it, is written out; so is what would be read otherwise on the player's
 * instrument: three slashes or beams on bows, mallets and keys are no measured ones, two notes are
 * slurred on winds and only there, and each string of a harp has its own note.
 */
final class SlashedNotes {
  /** Three beams or slashes. */
  private static final Rational UNMEASURED = Rational.of(1, 8);

  private final Line line;
  private final List<Stroke> strokes;
  private final Optional<Instrument> instrument;

  private SlashedNotes(Line line, List<Stroke> strokes, Optional<Instrument> instrument) {
    this.line = line;
    this.strokes = strokes;
    this.instrument = instrument;
  }

  /**
   * The notes, in order.
   *
   * @param strokes as they are written
   * @param instrument that reads them; empty for who reads the line where it stands
   */
  static List<SlashedNote> in(Line line, List<Stroke> strokes, Optional<Instrument> instrument) {
    List<SlashedNote> notes = new ArrayList<>();
    SlashedNotes all = new SlashedNotes(line, strokes, instrument);
    for (Expression.SlashedSpan slashed : line.expression().slashed()) {
      all.note(slashed).ifPresent(notes::add);
    }
    return notes;
  }

  private Optional<SlashedNote> note(Expression.SlashedSpan slashed) {
    Span span = slashed.span();
    int first = 0;
    while (first < strokes.size() && strokes.get(first).onset().isBefore(span.start())) {
      first++;
    }
    int end = first;
    while (end < strokes.size() && strokes.get(end).onset().isBefore(span.end())) {
      end++;
    }
    List<Stroke> own = strokes.subList(first, end);
    if (own.size() < 2 || !fill(own, span) || !isPlain(own) || !isRead(own, slashed)) {
      return Optional.empty();
    }
    return slashes(own.size(), slashed)
        .map(count -> new SlashedNote(span, own.size(), count, slashed.alternates()));
  }

  /** Whether they are all of a note, each as long as the others, within one bar. */
  private boolean fill(List<Stroke> own, Span span) {
    Length each = own.get(0).length();
    Position at = span.start();
    for (Stroke stroke : own) {
      if (!stroke.onset().equals(at) || !stroke.length().equals(each)) {
        return false;
      }
      at = stroke.span().end();
    }
    return at.equals(span.end()) && !span.end().isAfter(line.bars().at(span.start()).span().end());
  }

  /** Whether no mark of its own stands at any but the first. */
  private boolean isPlain(List<Stroke> own) {
    Stroke first = own.get(0);
    Span within = new Span(own.get(1).onset(), own.get(own.size() - 1).span().end());
    Expression expression = line.expression();
    return own.stream().skip(1).allMatch(stroke -> isPlain(stroke, first))
        && expression.words().stream().noneMatch(words -> within.contains(words.at()))
        && expression.hairpins().stream()
            .map(hairpin -> hairpin.span())
            .noneMatch(span -> within.contains(span.start()) || within.contains(span.end()));
  }

  private static boolean isPlain(Stroke stroke, Stroke first) {
    return stroke.graces().isEmpty()
        && stroke.articulations().isEmpty()
        && stroke.measured()
        && stroke.dynamic() == first.dynamic()
        && stroke.manner().equals(first.manner());
  }

  private boolean isRead(List<Stroke> own, Expression.SlashedSpan slashed) {
    int period = slashed.alternates() ? 2 : 1;
    for (int i = period; i < own.size(); i++) {
      if (!own.get(i).tones().equals(own.get(i - period).tones())) {
        return false;
      }
    }
    boolean slurredAround = own.get(0).slurred() || own.get(own.size() - 1).slurContinues();
    boolean slurredWithin = own.stream().skip(1).anyMatch(Stroke::slurred);
    boolean allWithin = own.stream().skip(1).allMatch(Stroke::slurred);
    if (instrument.isEmpty()) {
      boolean alike = slashed.alternates() ? slurredWithin == allWithin : !slurredWithin;
      return !slurredAround && alike;
    }
    boolean wind = instrument.get().isWind();
    boolean counted = wind || own.get(0).length().quarters().compareTo(UNMEASURED) > 0;
    boolean asWanted = (slashed.alternates() && wind) ? allWithin : !slurredWithin;
    return !slurredAround && !instrument.get().isHarp() && counted && asWanted;
  }

  /** How many slashes stand beside the note's own beams; empty where it has no plain value. */
  private static Optional<Integer> slashes(int strokes, Expression.SlashedSpan slashed) {
    if (slashed.alternates() && strokes % 2 == 1) {
      return Optional.empty();
    }
    Rational whole = slashed.span().length().quarters();
    Rational each = whole.dividedBy(strokes);
    Rational unit = Rational.ONE;
    while (unit.compareTo(whole) > 0) {
      unit = unit.dividedBy(2);
    }
    int count = 0;
    while (unit.compareTo(each) > 0) {
      unit = unit.dividedBy(2);
      count++;
    }
    return count > 0 && unit.equals(each) && NoteShape.of(whole).isPresent()
        ? Optional.of(count)
        : Optional.empty();
  }
}
