package stafette.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import stafette.limits.Instrument;
import stafette.limits.Spelling;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Seat;
import stafette.score.Line;
import stafette.score.Part;
import stafette.sound.Audio;
import stafette.sound.Background;
import stafette.sound.Clock;
import stafette.sound.LevelStep;
import stafette.sound.Manner;
import stafette.sound.Midi;
import stafette.sound.Performance;
import stafette.sound.Performer;
import stafette.sound.Synthesis;
import stafette.sound.UnusableBank;

/** Plays a plan into a file. */
public final class PlayPlan {
  private static final double LEAST_SPEED = 0.1;
  private static final double MOST_SPEED = 4;
  private static final long AROUND_MICROS = 2_000_000;
  private static final long PAUSE_MICROS = 1_000_000;
  private static final int PIANO = 1;

  private final JudgedPlan judged;
  private final OpenScore score;
  private final Request request;
  private final LimitsInForce limits;
  private final Performer performer;

  private PlayPlan(
      JudgedPlan judged,
      OpenScore score,
      Map<String, Seat> seats,
      Request request,
      LimitsInForce limits) {
    this.judged = judged;
    this.score = score;
    this.request = request;
    this.limits = limits;
    this.performer =
        new Performer(judged.plan(), new Manner(request.human(), request.speed(), seats));
  }

  /**
   * What to play, and into which file.
   *
   * @param file .wav or .mid
   * @param human whether onsets spread as with people
   * @param speed 1 for the planned tempo
   * @param withScore whether the rest of the score accompanies
   * @param compare whether one impossible player and the plan without overlaps come before the plan
   * @param handoff the number of a handoff, from 1, round which to play a few seconds
   * @param solo players of whom alone to hear; all if none
   * @param mute players not to hear
   * @param bank a sound bank of the user's own
   * @param replace whether the file may replace one that is there
   */
  public record Request(
      Path file,
      boolean human,
      double speed,
      boolean withScore,
      boolean compare,
      OptionalInt handoff,
      List<String> solo,
      List<String> mute,
      Optional<Path> bank,
      boolean replace) {
    /**
     * Checks it before anything is reckoned.
     *
     * @throws Refusal if the ending is another one, the speed is out of reach, two wishes exclude
     *     each other, or the file is there already
     */
    public void refuseWhatCannotBe() throws Refusal {
      if (!isWav() && !ends(".mid")) {
        throw Refusal.wrongUse(file + ": sound is written as .wav or .mid");
      }
      if (!(speed >= LEAST_SPEED && speed <= MOST_SPEED)) {
        throw Refusal.wrongUse("--speed goes from 10% to 400%");
      }
      if (compare && !(solo.isEmpty() && mute.isEmpty())) {
        throw Refusal.wrongUse("--compare plays all players; leave out --solo and --mute");
      }
      if (bank.isPresent() && !isWav()) {
        throw Refusal.wrongUse("--bank: a .mid file holds no sounds; name a .wav file");
      }
      FileDoor.refuseToReplace(file, replace);
    }

    boolean isWav() {
      return ends(".wav");
    }

    private boolean ends(String ending) {
      return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(ending);
    }
  }

  /**
   * What was written.
   *
   * @param seconds how long it is
   * @param stepDecibels for each handoff how much louder it is in the sound while both play than
   *     who leaves alone; empty where nothing is shared; no list for MIDI
   * @param togetherDecibel the same for all handoffs together
   */
  public record Sounded(
      double seconds, List<OptionalDouble> stepDecibels, OptionalDouble togetherDecibel) {
    public Sounded {
      stepDecibels = List.copyOf(stepDecibels);
    }
  }

  /**
   * Plays a plan.
   *
   * @param seats of players whose seats are known, by name
   * @throws Refusal if a player or a handoff is not there, the bank can't be used, or the file
   *     can't be written
   */
  public static Sounded sound(
      JudgedPlan judged,
      OpenScore score,
      Map<String, Seat> seats,
      Request request,
      LimitsInForce limits)
      throws Refusal {
    return new PlayPlan(judged, score, seats, request, limits).sound();
  }

  private Sounded sound() throws Refusal {
    refuseWhoIsNotThere();
    Performance performance = performance();
    if (!request.isWav()) {
      FileDoor.write(request.file(), Midi.file(performance), request.replace());
      return new Sounded(performance.lengthMicros() / 1e6, List.of(), OptionalDouble.empty());
    }
    try {
      Synthesis synthesis = synthesis();
      Audio audio = synthesis.render(performance);
      FileDoor.write(request.file(), audio.wav(), request.replace());
      LevelStep.Measured levels = LevelStep.measure(plan(), performer, synthesis);
      return new Sounded(
          audio.seconds(),
          levels.steps().stream().map(LevelStep::decibel).toList(),
          levels.together());
    } catch (UnusableBank e) {
      throw Refusal.ofFile(
          request.bank().map(Path::toString).orElse("the sound bank") + ": " + e.getMessage());
    }
  }

  private Synthesis synthesis() throws Refusal, UnusableBank {
    return request.bank().isPresent()
        ? Synthesis.with(FileDoor.read(request.bank().get()))
        : Synthesis.plain();
  }

  private Plan plan() {
    return judged.plan();
  }

  private void refuseWhoIsNotThere() throws Refusal {
    for (List<String> names : List.of(request.solo(), request.mute())) {
      for (String name : names) {
        if (plan().brief().players().stream().noneMatch(p -> Spelling.same(p.name(), name))) {
          throw Refusal.wrongUse(
              name
                  + " is none of the players: "
                  + String.join(
                      ", ", plan().brief().players().stream().map(Player::name).toList()));
        }
      }
    }
    int handoffs = plan().handoffs().size();
    if (request.handoff().isPresent()
        && (request.handoff().getAsInt() < 1 || request.handoff().getAsInt() > handoffs)) {
      throw Refusal.wrongUse(
          handoffs == 0
              ? "--handoff: the plan has no handoffs"
              : "--handoff goes from 1 to " + handoffs + " in this plan");
    }
  }

  private Performance performance() {
    if (!request.compare()) {
      return arranged(Performer::asPlanned);
    }
    return arranged(Performer::byOneAlone)
        .then(arranged(Performer::withoutOverlaps), PAUSE_MICROS)
        .then(arranged(Performer::asPlanned), PAUSE_MICROS);
  }

  private Performance arranged(Function<Performer, Performance> how) {
    Performance players = how.apply(performer).only(chair -> isHeard(chair.name()));
    Clock clock = performer.clock();
    Performance all =
        request.withScore()
            ? players.with(Background.of(score.score(), plan().line(), clock, this::program))
            : players;
    return request.handoff().isPresent() ? around(all, request.handoff().getAsInt() - 1) : all;
  }

  private boolean isHeard(String player) {
    boolean chosen =
        request.solo().isEmpty()
            || request.solo().stream().anyMatch(name -> Spelling.same(name, player));
    return chosen && request.mute().stream().noneMatch(name -> Spelling.same(name, player));
  }

  private int program(Part part) {
    return limits.catalogue().of(part).map(Instrument::midiProgram).orElse(PIANO);
  }

  private Performance around(Performance performance, int number) {
    Handoff handoff = plan().handoffs().get(number);
    Line line = plan().brief().line(handoff.enters().relay());
    Clock clock = performer.clock();
    long from = clock.performed(line.onsetMicros(handoff.enters().first())) - AROUND_MICROS;
    long to = clock.performed(line.endMicros(handoff.leaves().last())) + AROUND_MICROS;
    return performance.between(
        Math.max(0, from), Math.min(performance.lengthMicros(), Math.max(to, from + 1)));
  }
}
