package stafette.check.alone;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.limits.Assurance;
import stafette.limits.Instrument;
import stafette.limits.Skill;
import stafette.limits.Technique;
import stafette.limits.Way;
import stafette.score.Line;

/** Tries one line on one instrument: what becomes of it in the hands of one fresh player. */
public final class LineTrial {
  private static final Comparator<LineVerdict> BETTER =
      Comparator.comparing(LineVerdict::ease)
          .thenComparing(Comparator.comparingDouble(LineVerdict::share).reversed())
          .thenComparing(verdict -> verdict.limiting() == Limiting.PEDALS)
          .thenComparingDouble(LineVerdict::strain);

  /** So many of 100 more are clearly more. */
  private static final double CLEARLY = 10;

  private LineTrial() {}

  /**
   * The verdict in the way in which most players manage, the first of equals. Where the instrument
   * lacks a note of the line it is out of range, and only a thinning that leaves it out can be
   * played.
   *
   * @param assurance the share of players for whom fastest tempo and thinning are told
   * @param techniques of that instrument, those that its players bring; at least one
   */
  public static LineVerdict of(
      Line line, Instrument instrument, Assurance assurance, List<Technique> techniques) {
    LineVerdict verdict =
        inEachWay(line, instrument, assurance, techniques)
            .map(LineTrial::judged)
            .reduce((one, other) -> BETTER.compare(other, one) < 0 ? other : one)
            .orElseThrow();
    return verdict.ease().compareTo(Ease.DEMANDING) <= 0
        ? verdict
        : verdict.with(helping(line, instrument, assurance, techniques, verdict));
  }

  /** A technique of the instrument with which clearly more would manage, the best of them. */
  private static Optional<LineVerdict.OtherTechnique> helping(
      Line line,
      Instrument instrument,
      Assurance assurance,
      List<Technique> techniques,
      LineVerdict verdict) {
    double sustained =
        techniques.stream().mapToDouble(each -> each.limit().sustainedPerSecond()).max().orElse(0);
    return instrument.techniques().stream()
        .filter(other -> !techniques.contains(other))
        .filter(other -> other.limit().sustainedPerSecond() > sustained)
        .map(
            other ->
                new LineVerdict.OtherTechnique(
                    other, share(line, instrument, assurance, with(techniques, other))))
        .filter(help -> help.share() >= verdict.share() + CLEARLY && Ease.of(help.share()).plays())
        .max(Comparator.comparingDouble(LineVerdict.OtherTechnique::share));
  }

  private static double share(
      Line line, Instrument instrument, Assurance assurance, List<Technique> techniques) {
    return inEachWay(line, instrument, assurance, techniques)
        .mapToDouble(SoloPlayer::share)
        .max()
        .orElse(0);
  }

  private static List<Technique> with(List<Technique> techniques, Technique other) {
    return Stream.concat(techniques.stream(), Stream.of(other)).toList();
  }

  /**
   * The largest share of a rate that the line takes; empty if there are notes without a technique.
   * A quick look: nothing is said of tiredness, breath, range and other tempi.
   */
  public static OptionalDouble leastUse(
      Line line, Instrument instrument, Assurance assurance, List<Technique> techniques) {
    return inEachWay(line, instrument, assurance, techniques)
        .filter(SoloPlayer::serves)
        .mapToDouble(SoloPlayer::use)
        .min();
  }

  /**
   * Whether so many of 100 players manage the line, whatever their instrument's range; empty if
   * there are notes without a technique.
   */
  public static Optional<Boolean> manages(
      Line line, Instrument instrument, Assurance share, List<Technique> techniques) {
    return techniques.isEmpty()
        ? Optional.empty()
        : inEachWay(line, instrument, share, techniques)
            .filter(SoloPlayer::serves)
            .map(solo -> solo.playsAt(1))
            .reduce(Boolean::logicalOr);
  }

  private static Stream<SoloPlayer> inEachWay(
      Line line, Instrument instrument, Assurance assurance, List<Technique> techniques) {
    List<Skill> skills =
        techniques.stream()
            .map(technique -> new Skill(technique, technique.limit().at(assurance)))
            .toList();
    return IntStream.range(0, Way.of(skills).size())
        .mapToObj(
            way -> new SoloPlayer(line, instrument.breathing(assurance), skills, way, assurance));
  }

  private static LineVerdict judged(SoloPlayer solo) {
    double share = solo.share();
    boolean holds = solo.holdsAt(1);
    SoloPlayer.Decides decides = solo.decides();
    return new LineVerdict(
        solo.instrument(),
        solo.techniques(),
        solo.highestPerSecond(),
        share,
        solo.ease(share),
        decides.limiting(),
        decides.stroke(),
        solo.planned(),
        solo.use(),
        solo.burst(),
        solo.tiredness(),
        solo.breath(),
        solo.lastsSeconds(),
        solo.fastestTempo(),
        holds ? Thinning.ALL : thinned(solo),
        decides.source(),
        Optional.empty());
  }

  /** The fullest pattern that leaves something out and can be played. */
  private static Thinning thinned(SoloPlayer solo) {
    return Thinning.partial().stream()
        .filter(
            pattern ->
                pattern.of(solo.line()).filter(rest -> solo.with(rest).holdsAt(1)).isPresent())
        .findFirst()
        .orElse(Thinning.NOTHING);
  }
}
