package stafette.score;

import java.util.List;
import java.util.stream.IntStream;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Rank;
import stafette.time.Rational;
import stafette.time.Span;
import stafette.time.TempoMap;

/**
 * One continuous stream of fast notes, with its clock. It may rest. A line is not a part, nor a
 * staff: it is what the ear follows.
 *
 * <p>Strokes are numbered from 0. Clock times are in microseconds since the first onset, or that of
 * the line from which this one was taken, each rounded once from its exact value.
 */
public final class Line {
  private static final Rational MICROS = Rational.of(1_000_000);

  private final LineSource source;
  private final List<Stroke> strokes;
  private final List<Integer> cover;
  private final Bars bars;
  private final TempoMap tempo;
  private final Keys keys;
  private final Position clockStart;
  private final Rational zeroSeconds;
  private final long[] onsets;
  private final long[] ends;
  private final long[] beats;
  private final Rank[] ranks;
  private final boolean[] rests;
  private final int[] threes;
  private final boolean[] sameBeat;

  /** A line that stands under no key signature. */
  public Line(
      LineSource source, List<Stroke> strokes, List<Integer> cover, Bars bars, TempoMap tempo) {
    this(source, strokes, cover, bars, tempo, Keys.NONE);
  }

  /**
   * A line of the given strokes.
   *
   * @param strokes at least one, onsets strictly increasing
   * @param cover for each stroke how much others cover a handoff there, in points of cost
   * @param keys the key signatures under which it stands
   * @throws IllegalArgumentException if there is no stroke, onsets don't increase, or covers are
   *     not one for each stroke
   */
  public Line(
      LineSource source,
      List<Stroke> strokes,
      List<Integer> cover,
      Bars bars,
      TempoMap tempo,
      Keys keys) {
    this.source = source;
    this.strokes = List.copyOf(strokes);
    this.cover = List.copyOf(cover);
    this.bars = bars;
    this.tempo = tempo;
    this.keys = keys;
    int count = this.strokes.size();
    if (count == 0 || this.cover.size() != count) {
      throw new IllegalArgumentException(
          "a line needs strokes, and a cover for each: "
              + count
              + " strokes, "
              + cover.size()
              + " covers");
    }
    clockStart = this.strokes.get(0).onset();
    zeroSeconds = tempo.secondsAt(clockStart);
    onsets = new long[count];
    ends = new long[count];
    beats = new long[count];
    ranks = new Rank[count];
    rests = new boolean[count];
    threes = new int[count];
    sameBeat = new boolean[count];
    reckon();
  }

  private Line(Line whole, List<Integer> kept, boolean keepThrees, Position clockStart) {
    this.source = whole.source;
    this.strokes = kept.stream().map(whole.strokes::get).toList();
    this.cover = kept.stream().map(whole.cover::get).toList();
    this.bars = whole.bars;
    this.tempo = whole.tempo;
    this.keys = whole.keys;
    this.clockStart = clockStart;
    zeroSeconds = tempo.secondsAt(clockStart);
    int count = strokes.size();
    onsets = new long[count];
    ends = new long[count];
    beats = new long[count];
    ranks = new Rank[count];
    rests = new boolean[count];
    threes = new int[count];
    sameBeat = new boolean[count];
    reckon();
    for (int i = 0; i < count; i++) {
      threes[i] = keepThrees ? whole.threes[kept.get(i)] : -1;
    }
  }

  private void reckon() {
    Position beatBefore = Position.START;
    for (int i = 0; i < count(); i++) {
      Stroke stroke = strokes.get(i);
      onsets[i] = micros(stroke.onset());
      ends[i] = micros(stroke.span().end());
      Position beatStart = beatStart(i);
      sameBeat[i] = i > 0 && beatStart.equals(beatBefore);
      beats[i] = sameBeat[i] ? beats[i - 1] : beatMicros(Span.of(beatStart, beatLength(i)));
      ranks[i] = bars.rankOf(stroke.onset());
      if (i > 0 && !strokes.get(i - 1).onset().isBefore(stroke.onset())) {
        throw new IllegalArgumentException("strokes must follow one another: " + stroke.onset());
      }
      rests[i] = i > 0 && isSilentBefore(i);
      beatBefore = beatStart;
    }
    for (int first = 0; first < count(); ) {
      int last = first;
      while (last + 1 < count() && sameBeat(last + 1)) {
        last++;
      }
      markThrees(first, last);
      first = last + 1;
    }
  }

  /** Exact, since a silence of a beat on paper may be a microsecond less on the clock. */
  private boolean isSilentBefore(int index) {
    Position end = strokes.get(index - 1).span().end();
    Position onset = strokes.get(index).onset();
    if (onset.isBefore(end) || onsets[index] - ends[index - 1] < beats[index - 1] - 2) {
      return false;
    }
    Span beat = Span.of(beatStart(index - 1), beatLength(index - 1));
    return tempo.secondsOf(new Span(end, onset)).compareTo(tempo.secondsOf(beat)) >= 0;
  }

  public LineSource source() {
    return source;
  }

  public List<Stroke> strokes() {
    return strokes;
  }

  public Stroke stroke(int index) {
    return strokes.get(index);
  }

  public int count() {
    return strokes.size();
  }

  public Bars bars() {
    return bars;
  }

  public TempoMap tempo() {
    return tempo;
  }

  /** The key signatures under which it stands, as they sound. */
  public Keys keys() {
    return keys;
  }

  /**
   * "Piano, staff 1, voice 1, bars 5-16"; where a number is printed twice they are counted too, and
   * the movement is told: "bars 5-16 (#125-#136, movement 2)".
   *
   * @param to what stands between the first bar and the last
   */
  public String where(String to) {
    Bar first = bars.get(source.firstBar());
    Bar last = bars.get(source.lastBar());
    boolean once = bars.isPrintedOnce(first.number()) && bars.isPrintedOnce(last.number());
    String counted = range("#" + (first.index() + 1), to, "#" + (last.index() + 1));
    return source.partName()
        + ", staff "
        + source.staff()
        + ", voice "
        + source.voice()
        + (first.equals(last) ? ", bar " : ", bars ")
        + range(first.number(), to, last.number())
        + (once ? "" : " (" + counted + movement(first) + ")");
  }

  private String movement(Bar bar) {
    return bars.movementOf(bar).map(movement -> ", " + movement).orElse("");
  }

  private static String range(String first, String to, String last) {
    return first.equals(last) ? first : first + to + last;
  }

  /** The onset of a stroke on the line's clock. */
  public long onsetMicros(int index) {
    return onsets[index];
  }

  /** The end of a stroke's sound as written, ties included, on the line's clock. */
  public long endMicros(int index) {
    return ends[index];
  }

  /**
   * How long the beat lasts in which a stroke falls, rounded up: onsets that are a beat apart on
   * paper are never further apart than that on the clock.
   */
  public long beatMicros(int index) {
    return beats[index];
  }

  public Rank rank(int index) {
    return ranks[index];
  }

  /** What others' attacks at this stroke take off the price of a handoff that lands on it. */
  public int cover(int index) {
    return cover.get(index);
  }

  /** Where a stroke stands, for people. */
  public Place placeOf(int index) {
    return new Place(source.partName(), bars.nameOf(strokes.get(index).onset()));
  }

  /** Any position of the score on the line's clock; negative before the line. */
  public long micros(Position position) {
    return tempo.secondsAt(position).minus(zeroSeconds).times(MICROS).rounded().longValueExact();
  }

  /** From the first onset to the end of the last sound. */
  public Span span() {
    return new Span(strokes.get(0).onset(), strokes.get(strokes.size() - 1).span().end());
  }

  /**
   * Whether the line is silent before stroke {@code index} for at least the beat in which the
   * silence begins.
   */
  public boolean restsBefore(int index) {
    return index > 0 && rests[index];
  }

  /**
   * The place of a stroke in a group of three, 0 to 2, when its beat is divided into equal threes
   * (three or six or nine or twelve strokes); else -1. A beat with a rest in it is no such beat.
   */
  public int placeInThree(int index) {
    return threes[index];
  }

  private long beatMicros(Span beat) {
    Rational exact = tempo.secondsOf(beat).times(MICROS);
    return exact.negated().floor().negate().longValueExact();
  }

  private void markThrees(int first, int last) {
    int inBeat = last - first + 1;
    Length beat = beatLength(first);
    Position start = beatStart(first);
    boolean even = inBeat % 3 == 0;
    for (int i = first; even && i <= last; i++) {
      Rational share = beat.quarters().times(i - first).dividedBy(inBeat);
      even = strokes.get(i).onset().equals(start.plus(new Length(share)));
    }
    for (int i = first; i <= last; i++) {
      threes[i] = even ? (i - first) % 3 : -1;
    }
  }

  /** Whether a stroke stands in the same beat as the one before. */
  public boolean sameBeat(int index) {
    return index > 0 && sameBeat[index];
  }

  /** Where the line's clock has zero. */
  public Position clockStart() {
    return clockStart;
  }

  /** The same line with a clock that begins elsewhere. */
  public Line withClockFrom(Position start) {
    return new Line(this, IntStream.range(0, count()).boxed().toList(), true, start);
  }

  /**
   * A line of some of these strokes, with the same clock.
   *
   * @param kept their numbers, rising, at least one
   * @param keepThrees whether strokes keep their places in groups of three; else they have none
   */
  public Line only(List<Integer> kept, boolean keepThrees) {
    return new Line(this, kept, keepThrees, clockStart);
  }

  /** The same line at other tempi. */
  public Line at(TempoMap other) {
    Line same = new Line(source, strokes, cover, bars, other, keys);
    return clockStart.equals(same.clockStart) ? same : same.withClockFrom(clockStart);
  }

  private Position beatStart(int index) {
    Position onset = strokes.get(index).onset();
    return bars.at(onset).beatStart(onset);
  }

  private Length beatLength(int index) {
    Position onset = strokes.get(index).onset();
    return bars.at(onset).beatLengthAt(onset);
  }
}
