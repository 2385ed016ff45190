package stafette.score;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.time.Position;
import stafette.time.Span;
import stafette.time.TempoMap;

/**
 * The notes of two hands, or of two voices of one staff, as one stream, and where they make one
 * line of it: the hands alternate (left right, left left right, by fours) or complete each other.
 *
 * <p>That is so where in each {@link #WINDOW} onsets in a row both take part, neither has more than
 * {@link #MOST_OF_ONE}, and no more than {@link #MOST_TOGETHER} are struck by both at once; where
 * the strokes follow nearly evenly; and where the hands lie near each other, as the ear hears no
 * line in a bass and its chords. So it is no line where one hand goes on by itself, as an Alberti
 * figure does under a melody. In one staff a note that is held over the other voice's next is a
 * part of a chord rather than of a line. All that is our judgement from piano writing; common
 * practice, no source.
 */
public final class SharedHands {
  private static final int WINDOW = 8;
  private static final int MOST_OF_ONE = 6;
  private static final int MOST_TOGETHER = 2;

  /** How much longer than its neighbour a gap may be. */
  private static final double EVEN = 1.34;

  /** Slower strokes make no line for which hands would be needed in turn. */
  private static final double SLOW_SECONDS = 0.25;

  /** An octave, in semitones. */
  private static final int NEAR = 12;

  private final Weave weave;
  private final boolean onOneStaff;
  private final Set<Strand> upper;

  private SharedHands(List<Voice> upper, List<Voice> lower, Span span) {
    List<Voice> both = Stream.concat(upper.stream(), lower.stream()).toList();
    this.weave = Weave.of(both, span);
    this.onOneStaff = both.stream().map(Voice::staff).distinct().count() == 1;
    this.upper = Set.copyOf(upper.stream().map(Strand::of).toList());
  }

  /** Each two hands of a part, and each two voices of one of its staves, within a span. */
  public static List<SharedHands> in(Part part, Span span) {
    List<List<Voice>> staves =
        part.voices().stream()
            .map(Voice::staff)
            .distinct()
            .map(staff -> part.voices().stream().filter(v -> v.staff() == staff).toList())
            .toList();
    List<SharedHands> pairs = new ArrayList<>();
    for (int i = 0; i + 1 < staves.size(); i++) {
      pairs.add(new SharedHands(staves.get(i), staves.get(i + 1), span));
    }
    for (List<Voice> staff : staves) {
      for (int i = 0; i + 1 < staff.size(); i++) {
        pairs.add(new SharedHands(staff.subList(i, i + 1), staff.subList(i + 1, i + 2), span));
      }
    }
    return pairs;
  }

  /** All that they play, in one stream. */
  public List<Stroke> strokes() {
    return weave.strokes();
  }

  /**
   * A line that hands share.
   *
   * @param strands the voices that have some of it
   * @param strokes in a row
   */
  public record SharedLine(Strands strands, List<Stroke> strokes) {
    public SharedLine {
      strokes = List.copyOf(strokes);
    }
  }

  /** The lines among them that go at more than {@link #SLOW_SECONDS} a stroke. */
  List<SharedLine> atTempo(TempoMap tempo) {
    List<SharedLine> lines = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= strokes().size(); i++) {
      if (i == strokes().size() || isSlow(tempo, i)) {
        lines.addAll(lines(first, i - 1));
        first = i;
      }
    }
    return lines;
  }

  private boolean isSlow(TempoMap tempo, int index) {
    Span gap = new Span(strokes().get(index - 1).onset(), strokes().get(index).onset());
    return tempo.secondsOf(gap).toDouble() > SLOW_SECONDS;
  }

  /**
   * The lines that the hands share within some strokes in a row.
   *
   * @param run of {@link #strokes}
   */
  public List<SharedLine> within(List<Stroke> run) {
    int first = strokes().indexOf(run.get(0));
    return lines(first, first + run.size() - 1);
  }

  private List<SharedLine> lines(int first, int last) {
    BitSet shared = new BitSet();
    for (int start = first; start + WINDOW - 1 <= last; start++) {
      if (isShared(start)) {
        shared.set(start, start + WINDOW);
      }
    }
    List<SharedLine> lines = new ArrayList<>();
    for (int from = shared.nextSetBit(0); from >= 0; ) {
      int end = shared.nextClearBit(from);
      pieces(from, end - 1).stream().map(this::line).forEach(lines::add);
      from = shared.nextSetBit(end);
    }
    return lines;
  }

  private SharedLine line(Stretch piece) {
    List<Strand> strands =
        IntStream.rangeClosed(piece.first, piece.last)
            .boxed()
            .flatMap(index -> weave.by(index).stream())
            .toList();
    return new SharedLine(new Strands(strands), strokes().subList(piece.first, piece.last + 1));
  }

  /**
   * Strokes in a row.
   *
   * @param last included
   */
  private record Stretch(int first, int last) {
    int count() {
      return last - first + 1;
    }
  }

  private boolean isShared(int start) {
    int above = 0;
    int below = 0;
    for (int i = start; i < start + WINDOW; i++) {
      above += isAbove(i) ? 1 : 0;
      below += isBelow(i) ? 1 : 0;
    }
    return above <= MOST_OF_ONE && below <= MOST_OF_ONE && above + below - WINDOW <= MOST_TOGETHER;
  }

  private boolean isAbove(int index) {
    return weave.by(index).stream().anyMatch(upper::contains);
  }

  private boolean isBelow(int index) {
    return !upper.containsAll(weave.by(index));
  }

  /** The even pieces of a stretch in which the hands lie near each other. */
  private List<Stretch> pieces(int first, int last) {
    List<Stretch> pieces = new ArrayList<>();
    int from = first;
    for (int i = first + 1; i <= last + 1; i++) {
      if (i > last || (i > from + 1 && !isEven(i)) || (onOneStaff && weave.isHeldBefore(i))) {
        Stretch piece = withoutChords(from, i - 1);
        if (piece.count() >= WINDOW && isNear(piece)) {
          pieces.add(piece);
        }
        from = i > last || weave.isHeldBefore(i) ? i : i - 1;
      }
    }
    return pieces;
  }

  /** What both hands strike before the line begins, or where it arrives, is none of it. */
  private Stretch withoutChords(int first, int last) {
    int from = first;
    int to = last;
    while (from < to && isAbove(from) && isBelow(from)) {
      from++;
    }
    while (to > from && isAbove(to) && isBelow(to)) {
      to--;
    }
    return new Stretch(from, to);
  }

  private boolean isEven(int index) {
    double gap = gap(index);
    double before = gap(index - 1);
    return gap <= EVEN * before && before <= EVEN * gap;
  }

  private double gap(int index) {
    Position before = strokes().get(index - 1).onset();
    return strokes().get(index).onset().since(before).quarters().toDouble();
  }

  /** Whether half of the changes from hand to hand, or more, are no more than an octave. */
  private boolean isNear(Stretch piece) {
    int changes = 0;
    int near = 0;
    for (int i = piece.first + 1; i <= piece.last; i++) {
      if (isAbove(i) != isAbove(i - 1)) {
        changes++;
        near += distance(strokes().get(i - 1), strokes().get(i)) <= NEAR ? 1 : 0;
      }
    }
    return 2 * near > changes;
  }

  /** Between their nearest tones, in semitones; none between those without pitch. */
  private static int distance(Stroke one, Stroke other) {
    return one.tones().stream()
        .flatMap(
            tone -> other.tones().stream().map(another -> Math.abs(tone.key() - another.key())))
        .min(Integer::compare)
        .orElse(0);
  }
}
