package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.score.Expression;
import stafette.score.PartMarks;
import stafette.score.Strand;
import stafette.score.Words;
import stafette.time.Bars;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rational;
import stafette.time.Span;

/** What stands in a part beside its notes: words, hairpins, pedals and beams. */
final class MarksBeside {
  private static final String OUTERMOST = "1";

  private final List<Words> words = new ArrayList<>();
  private final RightPedal pedal = new RightPedal();
  private final List<PartMarks.Beamed> beams = new ArrayList<>();
  private final List<PartMarks.Trembled> trembled = new ArrayList<>();

  /** Where two notes have begun that slashes join. */
  private final Map<Strand, Position> joined = new HashMap<>();

  /** Where beams have begun that have not ended. */
  private final Map<Strand, Position> begun = new HashMap<>();

  private int shortNotes;
  private int underBeams;

  private MarksBeside() {}

  static PartMarks of(WrittenPart part, Bars bars) {
    MarksBeside marks = new MarksBeside();
    for (int i = 0; i < part.measures().size(); i++) {
      marks.take(part.measures().get(i), bars.get(i).span().start());
    }
    marks.words.sort(Comparator.comparing(Words::at));
    return new PartMarks(
        marks.words,
        marks.pedal.down(bars.span().end()),
        Hairpins.of(part, bars),
        marks.beamed(),
        marks.trembled);
  }

  private void take(WrittenMeasure measure, Position start) {
    for (WrittenMeasure.PlacedWords each : measure.words()) {
      words.add(new Words(at(start, each.offset()), each.staff(), each.voice(), each.text()));
    }
    measure
        .elements()
        .forEach(
            child ->
                child
                    .note()
                    .ifPresent(
                        note -> {
                          beam(child, note, start);
                          tremble(child, note, start);
                        }));
    for (WrittenMeasure.PlacedPedal each : measure.pedals()) {
      pedal.add(at(start, each.offset()), each.sign());
    }
  }

  /** None where most short notes have no beams, as the score then says nothing by them. */
  private List<PartMarks.Beamed> beamed() {
    return 2 * underBeams < shortNotes ? List.of() : beams;
  }

  private void beam(WrittenMeasure.Child child, WrittenNote note, Position start) {
    Strand strand = new Strand(note.text().staff(), note.text().voice());
    Position onset = start.plus(child.onset());
    boolean isShort = note.text().length().compareTo(Length.QUARTER) < 0;
    if (isShort && !note.text().rest() && !note.text().grace() && !note.text().chord()) {
      shortNotes++;
      underBeams += note.beams().beamed() ? 1 : 0;
    }
    if (!note.text().grace() && note.beams().begun().contains(OUTERMOST)) {
      begun.put(strand, onset);
    }
    if (note.beams().ended().contains(OUTERMOST) && begun.containsKey(strand)) {
      Position first = begun.remove(strand);
      beams.add(new PartMarks.Beamed(new Span(first, onset.plus(note.text().length())), strand));
    }
  }

  private void tremble(WrittenMeasure.Child child, WrittenNote note, Position start) {
    if (note.notations().tremolo().isEmpty() || note.text().chord() || note.text().grace()) {
      return;
    }
    Strand strand = new Strand(note.text().staff(), note.text().voice());
    Position onset = start.plus(child.onset());
    Position end = onset.plus(note.text().length());
    switch (note.notations().tremolo().get().joined()) {
      case WITH_NEXT -> joined.put(strand, onset);
      case WITH_PREVIOUS ->
          Optional.ofNullable(joined.remove(strand))
              .ifPresent(first -> add(new Span(first, end), true, strand));
      case NOTHING -> add(new Span(onset, end), false, strand);
      default -> throw new IllegalStateException("unknown slashes: " + note.notations().tremolo());
    }
  }

  private void add(Span span, boolean alternates, Strand strand) {
    trembled.add(new PartMarks.Trembled(new Expression.SlashedSpan(span, alternates), strand));
  }

  private static Position at(Position start, Rational offset) {
    return TempoLayout.placed(start, offset);
  }
}
