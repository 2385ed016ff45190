package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stafette.musicxml.read.WrittenMeasure.PlacedWords;
import stafette.musicxml.read.WrittenMeasure.SectionMarks;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.Landmarks;
import stafette.time.Landmarks.BarLine;
import stafette.time.Landmarks.TempoWords;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Span;

/**
 * Lays the bars that all parts share. A bar is as long as the longest content in it, or as its
 * metre says where nothing stands in it. A bar shorter than its metre is
 *
 * <ul>
 *   <li>a pickup, counted from its end, if it is the first of the score,
 *   <li>the second half of a bar that was divided, counted on, if it fills up the one before,
 *   <li>counted from its end if it is marked as not counted and no half of a bar,
 *   <li>else a short bar, counted from its start.
 * </ul>
 *
 * <p>A full bar of a metre that leaves its groups open is counted by those of its notes ({@link
 * BarGroups}).
 */
final class BarLayout {
  private final List<LaidOutBar> written;
  private final List<Bar> bars = new ArrayList<>();
  private final Optional<String> title;

  private BarLayout(List<LaidOutBar> written, Optional<String> title) {
    this.written = written;
    this.title = title;
  }

  /** What all parts together say of one bar. */
  private record LaidOutBar(
      String number,
      boolean implicit,
      Meter meter,
      Meter counted,
      Length length,
      List<SectionMarks> marks) {
    boolean isShort() {
      return length.compareTo(meter.length()) < 0;
    }

    boolean filledUpBy(LaidOutBar next) {
      return isShort()
          && next.isShort()
          && meter.equals(next.meter)
          && length.plus(next.length).equals(meter.length());
    }

    Length missing() {
      return meter.length().minus(length);
    }

    /** What stands at it in any part. */
    Landmarks landmarks(Span span) {
      return new Landmarks(
          marks.stream().flatMap(mark -> mark.rehearsal().stream()).findFirst(),
          marks.stream()
              .flatMap(mark -> mark.tempo().stream())
              .map(words -> new TempoWords(within(span, words), words.text()))
              .distinct()
              .toList(),
          first(SectionMarks::before),
          first(SectionMarks::after));
    }

    private static Position within(Span span, PlacedWords words) {
      Position at = TempoLayout.placed(span.start(), words.offset());
      return span.contains(at) ? at : span.start();
    }

    private BarLine first(Function<SectionMarks, BarLine> line) {
      return marks.stream()
          .map(line)
          .filter(each -> each != BarLine.PLAIN)
          .findFirst()
          .orElse(BarLine.PLAIN);
    }
  }

  /**
   * The bars of a score.
   *
   * @param title of its first movement
   */
  static Bars of(List<WrittenPart> parts, Optional<String> title) {
    int count = parts.stream().mapToInt(part -> part.measures().size()).max().orElseThrow();
    List<LaidOutBar> written = new ArrayList<>();
    Meter meter = Meter.COMMON;
    for (int i = 0; i < count; i++) {
      List<WrittenMeasure> measures = measuresAt(parts, i);
      meter = statedIn(measures).orElse(meter);
      written.add(written(measures, i, meter));
    }
    return new BarLayout(written, title).layOut();
  }

  private static List<WrittenMeasure> measuresAt(List<WrittenPart> parts, int index) {
    return parts.stream()
        .filter(part -> index < part.measures().size())
        .map(part -> part.measures().get(index))
        .toList();
  }

  private static Optional<Meter> statedIn(List<WrittenMeasure> measures) {
    return measures.stream().flatMap(measure -> measure.meter().stream()).findFirst();
  }

  private static LaidOutBar written(List<WrittenMeasure> measures, int index, Meter meter) {
    Length content =
        measures.stream()
            .map(WrittenMeasure::content)
            .max(Length::compareTo)
            .filter(longest -> !longest.isZero())
            .orElse(meter.length());
    String number = measures.get(0).number();
    return new LaidOutBar(
        number.isEmpty() ? Integer.toString(index + 1) : number,
        measures.stream().anyMatch(WrittenMeasure::implicit),
        meter,
        content.equals(meter.length()) ? BarGroups.counted(meter, measures) : meter,
        content,
        measures.stream().map(WrittenMeasure::section).toList());
  }

  private Bars layOut() {
    Position start = Position.START;
    boolean halfOpen = false;
    for (int i = 0; i < written.size(); i++) {
      LaidOutBar bar = written.get(i);
      boolean secondHalf = halfOpen;
      halfOpen =
          i > 0 && !secondHalf && i + 1 < written.size() && bar.filledUpBy(written.get(i + 1));
      Length lead = Length.ZERO;
      if (secondHalf) {
        lead = written.get(i - 1).length();
      } else if (bar.isShort() && !halfOpen && (i == 0 || bar.implicit())) {
        lead = bar.missing();
      }
      Span span = Span.of(start, bar.length());
      bars.add(
          new Bar(i, bar.number(), span, bar.meter(), lead, bar.counted(), bar.landmarks(span)));
      start = span.end();
    }
    return new Bars(bars, title);
  }
}
