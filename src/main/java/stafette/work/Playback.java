package stafette.work;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import javax.sound.midi.Sequence;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.limits.Instrument;
import stafette.plan.Plan;
import stafette.plan.Seat;
import stafette.plan.Segment;
import stafette.score.Part;
import stafette.sound.Comparison;
import stafette.sound.Excerpts;
import stafette.sound.Hearing;
import stafette.sound.Performance;
import stafette.sound.RestOfScore;
import stafette.sound.SoundingVoice;
import stafette.sound.Timing;
import stafette.time.Rational;

/** A plan made ready for a sequencer, and the way from what it plays back to the plan. */
public final class Playback {
  private final Performance performance;
  private final Sequence sequence;
  private final PlaybackManner manner;

  private Playback(Performance performance, PlaybackManner manner) {
    this.performance = performance;
    this.sequence = performance.sequence();
    this.manner = manner;
  }

  /**
   * How a plan is heard.
   *
   * @param seats of players whose seats are known, by name
   * @param speed factor on all tempi, above zero
   * @param byOne whether each line is heard as if the player who begins it had no limits and played
   *     all of it, exactly as written; else the players are a little apart, as in an ensemble
   * @param score the score whose rest is heard softly behind the line, if it is to be
   */
  public record PlaybackManner(
      Map<String, Seat> seats, Rational speed, boolean byOne, Optional<OpenScore> score) {
    public PlaybackManner {
      seats = Map.copyOf(seats);
    }
  }

  /** A whole plan. */
  public static Playback of(Plan plan, PlaybackManner manner, LimitsInForce limits) {
    Plan heard = manner.byOne() ? Comparison.byOne(plan) : plan;
    Hearing hearing =
        new Hearing(
            manner.speed(),
            manner.byOne() ? Timing.WRITTEN : Timing.ENSEMBLE,
            manner.seats(),
            heard.segments().stream().map(Segment::player).collect(Collectors.toSet()),
            manner.score().map(open -> rest(open, limits)));
    return new Playback(Performance.of(heard, Excerpts.whole(plan), hearing), manner);
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
    return sequence;
  }

  /** How it is heard. */
  public PlaybackManner manner() {
    return manner;
  }

  /** Whether a voice belongs to the rest of the score, not to the plan. */
  public boolean isBehind(int voice) {
    return performance.voices().get(voice).background();
  }

  /** The names of the voices: players who have something to play, then parts of the score. */
  public List<String> voices() {
    return performance.voices().stream().map(SoundingVoice::name).toList();
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
}
