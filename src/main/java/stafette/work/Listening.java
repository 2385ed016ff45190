package stafette.work;

import java.util.Map;
import java.util.function.Predicate;
import javax.sound.midi.Sequence;
import stafette.limits.Instrument;
import stafette.plan.Plan;
import stafette.plan.Seat;
import stafette.score.Part;
import stafette.sound.Background;
import stafette.sound.Clock;
import stafette.sound.Manner;
import stafette.sound.Midi;
import stafette.sound.Performance;
import stafette.sound.Performer;

/** A plan to be listened to at once, with the way from what is heard to the line's clock. */
public final class Listening {
  private static final int PIANO = 1;

  private final Sequence sequence;
  private final Clock clock;

  private Listening(Sequence sequence, Clock clock) {
    this.sequence = sequence;
    this.clock = clock;
  }

  /**
   * A plan as people would play it.
   *
   * @param seats of players whose seats are known, by name
   * @param speed 1 for the planned tempo
   * @param heard which players, by name
   */
  public static Listening to(
      Plan plan, Map<String, Seat> seats, double speed, Predicate<String> heard) {
    Performer performer = new Performer(plan, new Manner(true, speed, seats));
    Performance performance = performer.asPlanned().only(chair -> heard.test(chair.name()));
    return new Listening(Midi.sequence(performance), performer.clock());
  }

  /** The same with the rest of the score, quietly. */
  public static Listening withScore(
      Plan plan,
      Map<String, Seat> seats,
      double speed,
      Predicate<String> heard,
      OpenScore score,
      LimitsInForce limits) {
    Performer performer = new Performer(plan, new Manner(true, speed, seats));
    Performance players = performer.asPlanned().only(chair -> heard.test(chair.name()));
    Performance rest =
        Background.of(score.score(), plan.line(), performer.clock(), part -> program(part, limits));
    return new Listening(Midi.sequence(players.with(rest)), performer.clock());
  }

  private static int program(Part part, LimitsInForce limits) {
    return limits.catalogue().of(part).map(Instrument::midiProgram).orElse(PIANO);
  }

  public Sequence sequence() {
    return sequence;
  }

  /** Where on the line's clock a moment of the sequence is. */
  public long lineMicros(long heardMicros) {
    return clock.ofLine(heardMicros);
  }

  /** When in the sequence a moment on the line's clock is heard. */
  public long heardMicros(long lineMicros) {
    return clock.performed(lineMicros);
  }
}
