package stafette.score;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
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
  private final LineSource source;
  private final List<Stroke> strokes;
  private final List<Integer> cover;
  private final Bars bars;
  private final TempoMap tempo;
  private final Keys keys;
  private final Expression expression;
  private final LineClock clock;
  private final long[] onsets;
  private final long[] ends;
  private final long[] beats;
  private int @Nullable [] phrases;
  private final Rank[] ranks;
  private final boolean[] rests;
  private final int[] threes;
  private final boolean[] inThrees;
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
    this(
        source,
        strokes,
        cover,
        bars,
        tempo,
        keys,
        Expression.NONE,
        clock(strokes, cover, bars, tempo));
  }

  private Line(
      LineSource source,
      List<Stroke> strokes,
      List<Integer> cover,
      Bars bars,
      TempoMap tempo,
      Keys keys,
      Expression expression,
      LineClock clock) {
    this.source = source;
    this.strokes = List.copyOf(strokes);
    this.cover = List.copyOf(cover);
    this.bars = bars;
    this.tempo = tempo;
    this.keys = keys;
    this.expression = expression;
    this.clock = clock;
    int count = this.strokes.size();
    onsets = new long[count];
    ends = new long[count];
    beats = new long[count];
    ranks = new Rank[count];
    rests = new boolean[count];
    threes = new int[count];
    inThrees = new boolean[count];
    sameBeat = new boolean[count];
    reckon();
  }

  private Line(Line whole, List<Integer> kept, boolean keepThrees, LineClock clock) {
    this(
        whole.source,
        kept.stream().map(whole.strokes::get).toList(),
        kept.stream().map(whole.cover::get).toList(),
        whole.bars,
        whole.tempo,
        whole.keys,
        whole.expression,
        clock);
    for (int i = 0; i < strokes.size(); i++) {
      threes[i] = keepThrees ? whole.threes[kept.get(i)] : -1;
      inThrees[i] = keepThrees && whole.inThrees[kept.get(i)];
    }
  }

  private static LineClock clock(
      List<Stroke> strokes, List<Integer> cover, Bars bars, TempoMap tempo) {
    if (strokes.isEmpty() || cover.size() != strokes.size()) {
      throw new IllegalArgumentException(
          "a line needs strokes, and a cover for each: "
              + strokes.size()
              + " strokes, "
              + cover.size()
              + " covers");
    }
    return new LineClock(bars, tempo, strokes.get(0).onset());
  }

  private void reckon() {
    Position beatBefore = Position.START;
    for (int i = 0; i < count(); i++) {
      Stroke stroke = strokes.get(i);
      onsets[i] = clock.micros(stroke.onset());
      ends[i] = clock.micros(stroke.span().end());
      LineClock.BeatOnClock beat = clock.beat(stroke.onset());
      sameBeat[i] = i > 0 && beat.start().equals(beatBefore);
      beats[i] = sameBeat[i] ? beats[i - 1] : beat.micros();
      ranks[i] = beat.rank();
      if (i > 0 && !strokes.get(i - 1).onset().isBefore(stroke.onset())) {
        throw new IllegalArgumentException("strokes must follow one another: " + stroke.onset());
      }
      rests[i] = i > 0 && isSilentBefore(i);
      beatBefore = beat.start();
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
    Span beat = clock.beat(strokes.get(index - 1).onset()).span();
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

  /** Whether all of it is plucked on a bowed instrument. */
  public boolean isPlucked() {
    return strokes.stream().allMatch(stroke -> stroke.manner().isPlucked());
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

  /** What stands beside it and is meant for who plays it. */
  public Expression expression() {
    return expression;
  }

  /**
   * "Piano, staff 1, voice 1, bars 5-16", or "Piano, both hands, bars 5-16"; where a number is
   * printed twice they are counted too, and the movement is told: "bars 5-16 (#125-#136, movement
   * 2)"; slurs that it was given are told too.
   *
   * @param to what stands between the first bar and the last
   */
  public String where(String to) {
    return source.partName()
        + ", "
        + source.strands().inWords()
        + ", "
        + barsInWords(to)
        + changeInWords();
  }

  private String changeInWords() {
    String read = source.reading() == Reading.ALL ? "" : ", " + source.reading().text() + " notes";
    String slurred =
        source.slurring() == Slurring.AS_WRITTEN ? "" : ", changed: " + source.slurring().text();
    return read + slurred;
  }

  /**
   * "bars 5-16", counted too where a number is printed twice, as {@link #where} has it.
   *
   * @param to what stands between the first bar and the last
   */
  public String barsInWords(String to) {
    Bar first = bars.get(source.firstBar());
    Bar last = bars.get(source.lastBar());
    boolean once = bars.isPrintedOnce(first.number()) && bars.isPrintedOnce(last.number());
    String counted = range("#" + (first.index() + 1), to, "#" + (last.index() + 1));
    return (first.equals(last) ? "bar " : "bars ")
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

  /** How long the bar lasts in which a stroke falls, an incomplete one as if it were full. */
  public long barMicros(int index) {
    return clock.barMicros(strokes.get(index).onset());
  }

  /**
   * The number of a stroke's bar in its phrase, counted from 0 at the line's first full bar, anew
   * where the metre or a section changes or the line itself shows a phrase; bars before the first
   * full one count back from −1.
   */
  public int phrase(int index) {
    int[] known = phrases;
    if (known == null) {
      known = Phrases.of(strokes, bars);
      phrases = known;
    }
    return known[index];
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
    return clock.micros(position);
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
   * The place of a stroke in a group of three, 0 to 2, where its beat has three equal parts, or
   * tuplets divide it into equal threes; else -1: sixteenths in 6/8 are no threes. A beat with a
   * rest in it has none.
   */
  public int placeInThree(int index) {
    return threes[index];
  }

  /**
   * Whether a stroke is one of threes that are felt as such: a beat of three or nine equal parts,
   * or of more that are written as triplets, beamed by threes, or accented on the first of each. A
   * bare sextuplet goes in twos (common practice, no source).
   */
  public boolean goesInThrees(int index) {
    return inThrees[index];
  }

  private void markThrees(int first, int last) {
    int inBeat = last - first + 1;
    LineClock.BeatOnClock beat = clock.beat(strokes.get(first).onset());
    boolean even = inBeat == 3 || (inBeat % 3 == 0 && areTuplets(beat, inBeat));
    for (int i = first; even && i <= last; i++) {
      Rational share = beat.length().quarters().times(i - first).dividedBy(inBeat);
      even = strokes.get(i).onset().equals(beat.start().plus(new Length(share)));
    }
    for (int i = first; i <= last; i++) {
      threes[i] = even ? (i - first) % 3 : -1;
    }
    Arrays.fill(inThrees, first, last + 1, even && goInThrees(first, last));
  }

  /** Whether the threes of a beat are no pairs, or are written or accented as threes. */
  private boolean goInThrees(int first, int last) {
    List<Stroke> beat = strokes.subList(first, last + 1);
    boolean written =
        beat.stream()
            .allMatch(each -> each.values().get(0).tuplet().filter(Tuplet::isInThrees).isPresent());
    boolean accented =
        IntStream.range(1, beat.size()).allMatch(i -> beat.get(i).accented() == (i % 3 == 0));
    return beat.size() % 2 == 1 || written || accented;
  }

  /** Whether so many equal parts of a beat are no halves of halves of it, but tuplets. */
  private static boolean areTuplets(LineClock.BeatOnClock beat, int parts) {
    return beat.length().quarters().dividedBy(parts).denominator().bitCount() > 1;
  }

  /** Whether a stroke stands in the same beat as the one before. */
  public boolean sameBeat(int index) {
    return index > 0 && sameBeat[index];
  }

  /** Where the line's clock has zero. */
  public Position clockStart() {
    return clock.start();
  }

  /** The same line, of which it is known how it was read. */
  public Line read(Reading how) {
    return how == source.reading() ? this : with(source.with(how), strokes);
  }

  /** The same line with strokes made otherwise, one for each. */
  Line with(LineSource changed, List<Stroke> others) {
    return new Line(changed, others, cover, bars, tempo, keys, expression, clock);
  }

  /** The same line with a clock that begins elsewhere. */
  public Line withClockFrom(Position start) {
    LineClock other = new LineClock(bars, tempo, start);
    return new Line(this, IntStream.range(0, count()).boxed().toList(), true, other);
  }

  /**
   * A line of other strokes in the same bars, with the same clock.
   *
   * @param others at least one, onsets strictly increasing
   * @param covers one for each, as for any line
   */
  public Line of(List<Stroke> others, List<Integer> covers) {
    return new Line(source, others, covers, bars, tempo, keys, expression, clock);
  }

  /**
   * A line of some of these strokes, with the same clock.
   *
   * @param kept their numbers, rising, at least one
   * @param keepThrees whether strokes keep their places in groups of three; else they have none
   */
  public Line only(List<Integer> kept, boolean keepThrees) {
    return new Line(this, kept, keepThrees, clock);
  }

  /** The same line with marks beside it. */
  public Line expressed(Expression marks) {
    return new Line(source, strokes, cover, bars, tempo, keys, marks, clock);
  }

  /** The same line at other tempi. */
  public Line at(TempoMap other) {
    Line same = new Line(source, strokes, cover, bars, other, keys).expressed(expression);
    return clockStart().equals(same.clockStart()) ? same : same.withClockFrom(clockStart());
  }
}
