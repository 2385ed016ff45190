package stafette.work;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import javax.sound.midi.Sequence;
import stafette.limits.Instrument;
import stafette.plan.Plan;
import stafette.plan.Seat;
import stafette.plan.Segment;
import stafette.score.Part;
import stafette.sound.Excerpts;
import stafette.sound.Hearing;
import stafette.sound.Performance;
import stafette.sound.RestOfScore;
import stafette.sound.Timing;
import stafette.sound.Voice;
import stafette.time.Rational;
import stafette.time.Span;

/** A plan made ready for a sequencer, and the way from what it plays back to the plan. */
public final class Playback {
  private final Performance performance;

  private Playback(Performance performance) {
    this.performance = performance;
  }

  /**
   * A whole plan.
   *
   * @param seats of players whose seats are known, by name
   * @param spread whether the players are a little apart, as in an ensemble
   * @param speed factor on all tempi, above zero
   * @param score the score whose rest is heard softly behind the line, if it is to be
   */
  public static Playback of(
      Plan plan,
      Map<String, Seat> seats,
      boolean spread,
      Rational speed,
      Optional<OpenScore> score,
      LimitsInForce limits) {
    return of(plan, Excerpts.whole(plan), seats, spread, speed, score, limits);
  }

  /**
   * Some seconds round a handoff.
   *
   * @param handoff its number in the plan, from 0
   */
  public static Playback ofHandoff(
      Plan plan,
      int handoff,
      Map<String, Seat> seats,
      boolean spread,
      Rational speed,
      Optional<OpenScore> score,
      LimitsInForce limits) {
    Span excerpt = Excerpts.round(plan, plan.handoffs().get(handoff));
    return of(plan, excerpt, seats, spread, speed, score, limits);
  }

  private static Playback of(
      Plan plan,
      Span excerpt,
      Map<String, Seat> seats,
      boolean spread,
      Rational speed,
      Optional<OpenScore> score,
      LimitsInForce limits) {
    Hearing hearing =
        new Hearing(
            speed,
            spread ? Timing.ENSEMBLE : Timing.TOGETHER,
            seats,
            plan.segments().stream().map(Segment::player).collect(Collectors.toSet()),
            score.map(open -> rest(open, limits)));
    return new Playback(Performance.of(plan, excerpt, hearing));
  }

  static RestOfScore rest(OpenScore score, LimitsInForce limits) {
    Map<String, Instrument> instruments = new HashMap<>();
    for (Part part : score.score().parts()) {
      limits.catalogue().of(part).ifPresent(instrument -> instruments.put(part.id(), instrument));
    }
    return new RestOfScore(score.score(), instruments);
  }

  /**
   * To be played: one tick is one microsecond. Its first track has the tempo; then comes one for
   * each voice, in order, to be muted or heard alone.
   */
  public Sequence sequence() {
    return performance.sequence();
  }

  /** The names of the voices: players who have something to play, then parts of the score. */
  public List<String> voices() {
    return performance.voices().stream().map(Voice::name).toList();
  }

  /** How long the music lasts. */
  public long lengthMicros() {
    return performance.lengthMicros();
  }

  /** Where a moment is on the plan's own clock, in seconds; empty after the end. */
  public OptionalDouble lineSeconds(long micros) {
    return performance.lineSeconds(micros);
  }

  /** When a moment of the plan's own clock is heard; may lie outside of what is played. */
  public long micros(double lineSeconds) {
    return performance.micros(lineSeconds);
  }

  /** The stroke of a relay's line that was written last by a moment; empty before the first. */
  public OptionalInt strokeAt(int relay, long micros) {
    return performance.strokeAt(relay, micros);
  }
}
