package stafette.desktop.relay;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.check.ShownTechnique;
import stafette.check.SpentReadings;
import stafette.check.Strain;
import stafette.check.Verdict;
import stafette.desktop.texts.Texts;
import stafette.picture.ribbon.RelayPieces;
import stafette.plan.Handoff;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;

/**
 * A plan with all that its picture needs, worked out once.
 *
 * @param reserves for each player
 * @param bars all in which something sounds
 * @param clock from times to places
 * @param rhythm of the first relay's line
 * @param staves what room notes take
 * @param faults what does not work
 * @param asWritten whether it is only the line before it is shared, of which nothing can be moved
 * @param texts for what stands in words
 */
record ShownPlan(
    Plan plan,
    Verdict verdict,
    RelayPieces pieces,
    List<SpentReadings> reserves,
    List<Bar> bars,
    BeatClock clock,
    Rhythm rhythm,
    Staves staves,
    List<RelayFault> faults,
    boolean asWritten,
    Texts texts) {
  /** Room between a key signature and the first note, for an accidental. */
  private static final double AFTER_KEY = 14;

  ShownPlan {
    reserves = List.copyOf(reserves);
    bars = List.copyOf(bars);
    faults = List.copyOf(faults);
  }

  static ShownPlan of(Plan plan, Verdict verdict, Texts texts) {
    return of(plan, verdict, RelayFault.found(plan, verdict.findings()), false, texts);
  }

  /** The line before it is shared, with what prevents a plan. */
  static ShownPlan asWritten(Plan plan, Verdict verdict, List<RelayFault> faults, Texts texts) {
    return of(plan, verdict, faults, true, texts);
  }

  private static ShownPlan of(
      Plan plan, Verdict verdict, List<RelayFault> faults, boolean asWritten, Texts texts) {
    RelayPieces pieces = RelayPieces.of(plan, verdict);
    return new ShownPlan(
        plan,
        verdict,
        pieces,
        SpentReadings.of(plan),
        pieces.bars(),
        new BeatClock(plan.line(), pieces.bars()),
        new Rhythm(plan.line()),
        new Staves(plan, pieces),
        faults,
        asWritten,
        texts);
  }

  /** A plan that takes over what was worked out for the one shown before. */
  ShownPlan after(ShownPlan other) {
    return new ShownPlan(
        plan,
        verdict,
        pieces,
        reserves,
        bars,
        clock,
        rhythm,
        staves.after(other.staves),
        faults,
        asWritten,
        texts);
  }

  List<Segment> segments() {
    return plan.segments();
  }

  int lanes() {
    return plan.brief().players().size();
  }

  /** In how many bars the score gives a player something. */
  long barsGiven(int player) {
    return bars.stream().filter(bar -> isGiven(player, bar.span())).count();
  }

  private boolean isGiven(int player, Span span) {
    long from = plan.line().micros(span.start());
    long to = plan.line().micros(span.end());
    return plan.brief().players().get(player).busy().stream()
        .anyMatch(busy -> busy.fromMicros() < to && from < busy.toMicros());
  }

  double strain(int segment) {
    return verdict.segments().get(segment).strain();
  }

  /** Whether a lock keeps just this segment. */
  boolean isLocked(Segment segment) {
    return locks().anyMatch(lock -> Lock.keeps(lock, segment));
  }

  /** Whether a lock keeps just this handoff. */
  boolean isLocked(Handoff handoff) {
    return locks().anyMatch(lock -> Lock.keeps(lock, handoff));
  }

  /** Whether the player of a segment must play some of it, though not just this segment. */
  boolean isPartlyLocked(Segment segment) {
    return locks()
        .filter(lock -> lock.relay() == segment.relay())
        .filter(lock -> Lock.playing(lock).stream().anyMatch(p -> p == segment.player()))
        .anyMatch(lock -> lock.first() <= segment.last() && segment.first() <= lock.last());
  }

  private Stream<Lock> locks() {
    return plan.brief().rules().locks().stream();
  }

  /** What can stand beside a segment, the fullest first: "96 % double tonguing". */
  List<String> labels(int segment) {
    String strain = Strain.percent(strain(segment));
    String technique = texts.say(ShownTechnique.inWords(plan, segments().get(segment)));
    return List.of(strain + "  " + technique, strain);
  }

  /** From where on a segment is not bridged to the one before. */
  Position free(int segment) {
    return handoffs()
        .filter(
            handoff ->
                plan.handoffs().get(handoff).enters().segments().contains(segments().get(segment)))
        .mapToObj(handoff -> pieces.handoffSpan(handoff).end())
        .findFirst()
        .orElseGet(() -> pieces.segmentSpan(segment).start());
  }

  /** All bars of a plan; of a line as written from its beginning, or where it fails, as music. */
  TimeScale firstTime(Viewport port) {
    TimeScale whole = TimeScale.whole(bars, lead(port), port);
    if (!asWritten) {
      return whole;
    }
    double wanted = pieces.pointsPerQuarterForMusic() * port.px(LaneShape.WANTED_MUSIC);
    TimeScale asMusic =
        whole.zoomed(Math.max(1, wanted / whole.pixelsPerQuarter()), whole.x(whole.start()));
    Span line = plan.line().span();
    return asMusic.showing(
        faults.stream().findFirst().map(fault -> new Span(fault.at(), line.end())).orElse(line));
  }

  /** By how much notes could be larger than on paper without touching one another. */
  double roomForMusic(TimeScale time) {
    return time.pixelsPerQuarter() / pieces.pointsPerQuarterForMusic();
  }

  /** How high the notes are on paper. */
  double noteInk() {
    return staves.ink();
  }

  /** What clef, key signature and a first accidental take left of the music, in pixels. */
  double lead(Viewport port) {
    return port.px(staves.header() * LaneShape.WANTED_MUSIC + AFTER_KEY);
  }

  /** Whether a time is within the bars shown. */
  boolean holds(Position at) {
    return bars.stream().anyMatch(bar -> bar.span().contains(at));
  }

  /** The handoffs among all of the plan, by number. */
  IntStream handoffs() {
    return IntStream.range(0, plan.handoffs().size());
  }
}
