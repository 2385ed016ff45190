package stafette.check.ear;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.limits.Instrument;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Seat;
import stafette.score.Line;

/**
 * Estimates what the handoffs of a plan do to the ear: the step in level ({@link Acoustics}), how
 * far the two players' onsets lie apart ({@link OnsetSpread}) beside what is just noticed, and how
 * late they hear each other. Of hocket pairs those two are meant who play the landing note.
 */
public final class Ear {
  /** On what the estimate of distances rests, in words for people. */
  public static final String DISTANCE =
      "distance: sound takes 2.91 ms a metre (343 m/s, dry air at 20 degrees Celsius)";

  /** On what the whole estimate rests, in words for people. */
  public static final List<String> SOURCES =
      List.of(
          "levels: those of the players as planned with; unrelated sources add up as 10 log10(10^(L1/10) + 10^(L2/10)), two equal ones to 3.01 dB more than either",
          "onsets apart: one standard deviation between two players, from R. A. Rasch, Acustica 43 (1979), 121-131, as a thesis sums it up: 27 to 37 ms in trios of oboe, clarinet and bassoon (taken here for all woodwinds), 37 to 49 ms in string trios, 27 to 49 ms taken where nothing was measured",
          "just noticed: one onset of an even row displaced by 6 ms, or by 2.5 % of the time between notes if that is more; A. Friberg and J. Sundberg, J. Acoust. Soc. Am. 98 (1995), 2524-2531, measured from 100 to 1000 ms between notes",
          DISTANCE);

  private static final double NOTICEABLE_MILLIS = 6;
  private static final double NOTICEABLE_SHARE = 0.025;

  private Ear() {}

  /**
   * One estimate for each handoff, in order.
   *
   * @param seats by players' names; may leave players out
   */
  public static List<HandoffEar> of(Plan plan, Map<String, Seat> seats) {
    return plan.handoffs().stream().map(handoff -> of(plan, handoff, seats)).toList();
  }

  private static HandoffEar of(Plan plan, Handoff handoff, Map<String, Seat> seats) {
    int landing = handoff.leaves().last();
    int entry = handoff.enters().first();
    Player leaving = plan.player(handoff.leaves(), landing);
    Player entering = plan.player(handoff.enters(), Math.max(entry, landing));
    return new HandoffEar(
        handoff,
        entering.instrument().levelDecibel() - leaving.instrument().levelDecibel(),
        handoff.shared() > 0
            ? Optional.of(
                together(
                    leaving.instrument(),
                    entering.instrument(),
                    millisBefore(plan.brief().line(handoff.enters().relay()), entry)))
            : Optional.empty(),
        distance(seats, leaving, entering));
  }

  private static HandoffEar.Together together(
      Instrument leaving, Instrument entering, double millisBetweenNotes) {
    double one = leaving.levelDecibel();
    double other = entering.levelDecibel();
    double both = Acoustics.togetherDecibel(one, other);
    return new HandoffEar.Together(
        both - one,
        both - Math.max(one, other),
        OnsetSpread.between(leaving, entering),
        noticeableMillis(millisBetweenNotes));
  }

  /**
   * How far one onset in an even row must be displaced to be noticed: 6 ms where notes follow in
   * less than some 240 ms, 2.5 % of the time between them where they are slower (Friberg and
   * Sundberg 1995, measured from 100 to 1000 ms; here taken to hold outside of that too).
   */
  static double noticeableMillis(double millisBetweenNotes) {
    return Math.max(NOTICEABLE_MILLIS, NOTICEABLE_SHARE * millisBetweenNotes);
  }

  /** From the stroke before, which the ear counts on, to the first of who enters. */
  private static double millisBefore(Line line, int entry) {
    return entry == 0 ? 0 : (line.onsetMicros(entry) - line.onsetMicros(entry - 1)) / 1e3;
  }

  private static Optional<HandoffEar.Distance> distance(
      Map<String, Seat> seats, Player leaving, Player entering) {
    Seat one = seats.get(leaving.name());
    Seat other = seats.get(entering.name());
    if (one == null || other == null) {
      return Optional.empty();
    }
    double metres = one.metresTo(other);
    return Optional.of(new HandoffEar.Distance(metres, Acoustics.delayMillis(metres)));
  }
}
