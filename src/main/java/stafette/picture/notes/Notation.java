package stafette.picture.notes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import stafette.plan.Played;
import stafette.score.Stroke;
import stafette.score.Tuplet;
import stafette.score.Value;
import stafette.time.Bar;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/**
 * How what a player plays is written: its notes, and rests where it plays nothing. Rests are cut at
 * beats and keep to the tuplets of the notes beside them.
 */
final class Notation {
  private final List<Stroke> strokes;
  private final List<Span> silent;

  private Notation(List<Stroke> strokes, List<Span> silent) {
    this.strokes = strokes;
    this.silent = silent;
  }

  /**
   * What is written in some bars.
   *
   * @param plays all that the player plays
   * @param given where it plays something else, so that no rests are written
   */
  static List<NotatedItem> of(List<Played> plays, List<Span> given, List<Bar> bars) {
    Span all = new Span(bars.get(0).span().start(), bars.get(bars.size() - 1).span().end());
    List<Stroke> strokes =
        plays.stream()
            .flatMap(p -> p.line().strokes().subList(p.first(), p.last() + 1).stream())
            .filter(stroke -> stroke.span().overlaps(all))
            .sorted(Comparator.comparing(Stroke::onset))
            .toList();
    Notation notation = new Notation(strokes, given);
    return bars.stream().flatMap(bar -> notation.bar(bar).stream()).toList();
  }

  private List<NotatedItem> bar(Bar bar) {
    List<NotatedItem> notes = notes(bar);
    List<NotatedItem> result = new ArrayList<>();
    Position at = bar.span().start();
    for (NotatedItem note : notes) {
      if (at.isBefore(note.onset())) {
        result.addAll(rests(bar, new Span(at, note.onset()), notes));
      }
      result.add(note);
      at = note.span().end().isAfter(at) ? note.span().end() : at;
    }
    if (at.isBefore(bar.span().end())) {
      result.addAll(rests(bar, new Span(at, bar.span().end()), notes));
    }
    return result;
  }

  private List<NotatedItem> notes(Bar bar) {
    List<NotatedItem> notes = new ArrayList<>();
    for (Stroke stroke : strokes) {
      Position at = stroke.onset();
      for (int i = 0; i < stroke.values().size(); i++) {
        Value value = stroke.values().get(i);
        Span span = Span.of(at, value.length());
        if (bar.span().contains(at)) {
          notes.add(note(stroke, i, value, span));
        }
        at = span.end();
      }
    }
    return notes;
  }

  private static NotatedItem note(Stroke stroke, int part, Value value, Span span) {
    Length written = value.tuplet().map(t -> written(value.length(), t)).orElse(value.length());
    return new NotatedItem(
        span, nearest(written), Optional.of(stroke), part, value.tuplet(), false);
  }

  private static Length written(Length sounding, Tuplet tuplet) {
    return sounding.times(Rational.of(tuplet.actual(), tuplet.normal()));
  }

  /** The form of a value; of one that has no form, the longest that is no longer. */
  private static NoteForm nearest(Length written) {
    return NoteForm.of(written)
        .orElseGet(
            () -> {
              int halvings = 0;
              while (halvings < 8
                  && Rational.of(4, 1L << halvings).compareTo(written.quarters()) > 0) {
                halvings++;
              }
              return new NoteForm(halvings, 0);
            });
  }

  private List<NotatedItem> rests(Bar bar, Span gap, List<NotatedItem> notes) {
    if (gap.equals(bar.span()) && !isGiven(gap)) {
      return List.of(
          new NotatedItem(gap, new NoteForm(0, 0), Optional.empty(), 0, Optional.empty(), true));
    }
    List<NotatedItem> rests = new ArrayList<>();
    for (Span piece : cut(bar, gap, notes)) {
      if (!isGiven(piece)) {
        rests.addAll(cutRests(bar, piece, tupletAt(piece, notes)));
      }
    }
    return rests;
  }

  private boolean isGiven(Span span) {
    return silent.stream().anyMatch(span::overlaps);
  }

  private static List<Span> cut(Bar bar, Span gap, List<NotatedItem> notes) {
    TreeSet<Position> edges = new TreeSet<>();
    bar.beats().forEach(beat -> edges.add(beat.start()));
    for (NotatedItem note : notes) {
      note.tuplet().map(Tuplet::span).ifPresent(span -> edges.add(span.start()));
      note.tuplet().map(Tuplet::span).ifPresent(span -> edges.add(span.end()));
    }
    List<Span> pieces = new ArrayList<>();
    Position at = gap.start();
    for (Position edge : edges.subSet(gap.start(), false, gap.end(), false)) {
      pieces.add(new Span(at, edge));
      at = edge;
    }
    pieces.add(new Span(at, gap.end()));
    return pieces;
  }

  private static Optional<Tuplet> tupletAt(Span piece, List<NotatedItem> notes) {
    return notes.stream()
        .flatMap(note -> note.tuplet().stream())
        .filter(tuplet -> tuplet.span().contains(piece.start()))
        .findFirst();
  }

  /** Short rests first where the piece does not begin on a beat, so that strong places show. */
  private static List<NotatedItem> cutRests(Bar bar, Span piece, Optional<Tuplet> tuplet) {
    Length written = tuplet.map(t -> written(piece.length(), t)).orElse(piece.length());
    boolean wholeBeat =
        bar.beats().contains(piece) && NoteForm.of(written).isPresent() && tuplet.isEmpty();
    List<Length> parts = new ArrayList<>(wholeBeat ? List.of(written) : NoteForm.sumOf(written));
    if (bar.beats().stream().noneMatch(beat -> beat.start().equals(piece.start()))) {
      Collections.reverse(parts);
    }
    if (parts.isEmpty()) {
      return List.of(rest(piece, written, tuplet));
    }
    List<NotatedItem> rests = new ArrayList<>();
    Position at = piece.start();
    for (Length part : parts) {
      Length sounding =
          tuplet.map(t -> part.times(Rational.of(t.normal(), t.actual()))).orElse(part);
      Span span = Span.of(at, sounding);
      rests.add(rest(span, part, tuplet));
      at = span.end();
    }
    return rests;
  }

  private static NotatedItem rest(Span span, Length written, Optional<Tuplet> tuplet) {
    return new NotatedItem(span, nearest(written), Optional.empty(), 0, tuplet, false);
  }
}
