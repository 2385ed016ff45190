package stafette.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.limits.Burst;
import stafette.limits.Demand;
import stafette.limits.Instrument;
import stafette.limits.PedalCourse;
import stafette.limits.Technique;
import stafette.limits.Way;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Place;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.words.Sentence;

/** What holds inside a segment, whatever its player did before: range, technique, rates. */
public final class SegmentRules {
  /** What needs in whole nanoseconds may be beside the exact ones. */
  private static final double ROUNDED = 1e-7;

  private static final int PEDAL_STEPS = 40;

  private final Line line;
  private final int first;
  private final int last;
  private final Segment segment;
  private final Player player;
  private final Way way;
  private final Demand demand;
  private final double pedalStretch;

  public SegmentRules(Played played, Player player, Way way, Demand demand, Segment segment) {
    this(played, player, way, demand, segment, 1);
  }

  private SegmentRules(
      Played played, Player player, Way way, Demand demand, Segment segment, double pedalStretch) {
    this.pedalStretch = pedalStretch;
    this.line = played.line();
    this.first = played.first();
    this.last = played.last();
    this.segment = segment;
    this.player = player;
    this.way = way;
    this.demand = demand;
  }

  static SegmentRules of(Plan plan, Segment segment, Demands demands) {
    return new SegmentRules(
        demands.played(segment),
        plan.player(segment),
        plan.way(segment),
        demands.of(segment),
        segment,
        plan.brief().rules().margin().stretch());
  }

  List<Finding> findings(double stretch) {
    List<Finding> findings = new ArrayList<>();
    range().ifPresent(findings::add);
    uncovered().ifPresent(findings::add);
    if (way.twinStrings() && !TechniqueRules.twins(line, first, last)) {
      findings.add(TechniqueRules.withoutTwins(place(first)));
    }
    unpedalled(stretch).ifPresent(findings::add);
    rate(worst(Finding.FindingKind.PEAK), stretch).ifPresent(findings::add);
    rate(worst(Finding.FindingKind.MOVING), stretch).ifPresent(findings::add);
    return findings;
  }

  /** The largest share of a limit in the segment, and where. */
  public Use worst() {
    Use peak = worst(Finding.FindingKind.PEAK);
    Use moving = worst(Finding.FindingKind.MOVING);
    return moving.share > peak.share ? moving : peak;
  }

  SegmentReport report(double tiredness, double breath) {
    double use = worst().share;
    double strain = Math.max(use, Math.max(tiredness, breath));
    return new SegmentReport(segment, highestPerSecond(), use, tiredness, breath, strain);
  }

  /** The highest rate from note to note, whatever it is held against; 0 for a single note. */
  public double highestPerSecond() {
    long gap = Long.MAX_VALUE;
    for (int j = first + 1; j <= last; j++) {
      gap = Math.min(gap, line.onsetMicros(j) - line.onsetMicros(j - 1));
    }
    return gap == Long.MAX_VALUE ? 0 : 1e6 / gap;
  }

  /**
   * How much of a limit a stroke takes with the last gaps before it.
   *
   * @param share 0 where nothing is tested
   */
  public record Use(Finding.FindingKind kind, int stroke, double share) {
    private Burst burst() {
      return kind == Finding.FindingKind.PEAK ? Burst.STROKES : Burst.NOTES;
    }
  }

  private Use worst(Finding.FindingKind kind) {
    Use worst = new Use(kind, first, 0);
    for (int j = first + 1; j <= last; j++) {
      double share = worst.burst().use(demand, line, first, j);
      if (share > worst.share) {
        worst = new Use(kind, j, share);
      }
    }
    return worst;
  }

  /** Which notes make out the largest share of a limit; empty where nothing is tested. */
  public Optional<Burst.Tightest> tightest() {
    return tightest(worst());
  }

  private Optional<Burst.Tightest> tightest(Use use) {
    return use.burst().tightest(demand, line, first, use.stroke);
  }

  private Optional<Finding> rate(Use use, double stretch) {
    double share = use.share / stretch;
    return Tolerance.within(share, 1)
        ? Optional.empty()
        : tightest(use)
            .map(burst -> tooFast(use, burst, stretch, advice(share)))
            .map(sentence -> Finding.at(use.kind, place(use.stroke), sentence));
  }

  private Sentence tooFast(Use use, Burst.Tightest burst, double stretch, Sentence advice) {
    double rate = burst.perSecond() / stretch;
    BigDecimal above = Wording.above(rate, burst.limitPerSecond());
    BigDecimal below = Wording.below(rate, burst.limitPerSecond());
    Technique technique = way.skills().get(demand.skill(use.stroke)).technique();
    if (burst.strokes() <= Burst.MOST_GAPS) {
      return Sentence.of(
          "{0} notes at {1} a second are beyond the {2} at which so few go with {3}; {4}",
          burst.strokes(), above, below, technique, advice);
    }
    return use.kind == Finding.FindingKind.PEAK
        ? Sentence.of(
            "{0} strokes a second is beyond the {1} of {2}; {3}", above, below, technique, advice)
        : Sentence.of(
            "{0} changing notes a second is beyond the {1} of {2}; {3}",
            above, below, technique, advice);
  }

  private Sentence advice(double share) {
    Sentence tempo = Wording.tempo(line, (1 + ROUNDED) / share);
    return Sentence.of("give it to a faster player, or lower the tempo to {0}", tempo);
  }

  /** The first stroke of the harp for which pedals come too late, if there is one. */
  private Optional<Finding> unpedalled(double stretch) {
    int reached = pedalledUpTo(stretch);
    return reached < last
        ? Optional.of(TechniqueRules.unpedalled(place(Math.max(first, reached + 1))))
        : Optional.empty();
  }

  /** The last stroke for which the pedals of a harp are in time; of others the last one. */
  public int pedalledUpTo(double stretch) {
    return way.isPedalled()
        ? Math.min(last, PedalCourse.from(line, first, stretch * pedalStretch).last())
        : last;
  }

  /**
   * The largest factor of the tempo at which the pedals of a harp are in time, by bisection.
   *
   * @param holds a factor that is taken to do
   * @param most returned where it will do too, as it does for other instruments
   */
  public double pedalledUpToFactor(double holds, double most) {
    if (pedalledUpTo(1 / most) >= last) {
      return most;
    }
    double slower = holds;
    double faster = most;
    for (int step = 0; step < PEDAL_STEPS; step++) {
      double middle = Math.sqrt(slower * faster);
      boolean inTime = pedalledUpTo(1 / middle) >= last;
      slower = inTime ? middle : slower;
      faster = inTime ? faster : middle;
    }
    return slower;
  }

  /** The first stroke that no technique covers, if there is one. */
  private Optional<Finding> uncovered() {
    return IntStream.rangeClosed(first, last)
        .filter(j -> !demand.covered(j))
        .mapToObj(j -> TechniqueRules.uncovered(place(j), line.stroke(j), player.instrument()))
        .findFirst();
  }

  private Optional<Finding> range() {
    Instrument instrument = player.instrument();
    int outside = 0;
    int where = first;
    for (int j = last; j >= first; j--) {
      if (!inRange(instrument, line.stroke(j))) {
        outside++;
        where = j;
      }
    }
    if (outside == 0) {
      return Optional.empty();
    }
    Sentence note = outOf(line.stroke(where));
    Sentence sentence =
        outside == 1
            ? Sentence.of(
                "{0} is out of the range of the {1}; give these notes to an instrument that has"
                    + " them",
                note, instrument)
            : Sentence.of(
                "{0} is, with {2} more, out of the range of the {1}; give these notes to an"
                    + " instrument that has them",
                note, instrument, outside - 1);
    return Optional.of(Finding.at(Finding.FindingKind.RANGE, place(where), sentence));
  }

  public static boolean inRange(Instrument instrument, Stroke stroke) {
    return stroke.tones().stream().allMatch(instrument::reaches);
  }

  private Sentence outOf(Stroke stroke) {
    return stroke.tones().stream()
        .filter(tone -> !player.instrument().reaches(tone))
        .map(Tone::inWords)
        .findFirst()
        .orElseThrow();
  }

  private Place place(int stroke) {
    return Whereabouts.of(player, line, stroke);
  }
}
