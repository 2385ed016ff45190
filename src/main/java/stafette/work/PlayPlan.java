package stafette.work;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Soundbank;
import stafette.check.JudgedPlan;
import stafette.check.ear.Ear;
import stafette.check.ear.HandoffEar;
import stafette.keep.FileDoor;
import stafette.keep.FileEnding;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.keep.Outputs;
import stafette.keep.RereadProof;
import stafette.limits.TypedNames;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Seat;
import stafette.sound.Audio;
import stafette.sound.Comparison;
import stafette.sound.Excerpts;
import stafette.sound.Hearing;
import stafette.sound.LevelStep;
import stafette.sound.NoSound;
import stafette.sound.Performance;
import stafette.sound.Timing;
import stafette.time.Rational;
import stafette.time.Span;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.words.Settable;

/** Plays a plan into a file. */
public final class PlayPlan {
  private PlayPlan() {}

  /** By the ending of the file's name. */
  private enum SoundFormat {
    WAV,
    MID;

    RereadProof proof() {
      return this == WAV
          ? RereadProof.frame("RIFF", "")
          : RereadProof.frame("MThd", "\u00ff/\u0000");
    }
  }

  /**
   * Where and how to play.
   *
   * @param file .wav or .mid
   * @param withScore whether the rest of the score is heard behind the line
   * @param spread whether the players are a little apart, as in an ensemble
   * @param handoff the number of the one handoff to hear, from 1; empty for the whole line
   * @param solo the only players to hear; all if none is named
   * @param mute players not to hear
   * @param speed factor on all tempi
   * @param compare whether to hear the line by one player and without overlaps first
   * @param bank a soundbank of the user's own
   * @param replace whether it may replace a file that is there
   */
  public record SoundRequest(
      Path file,
      boolean withScore,
      boolean spread,
      Optional<Integer> handoff,
      List<String> solo,
      List<String> mute,
      Rational speed,
      boolean compare,
      Optional<Path> bank,
      boolean replace) {
    public SoundRequest {
      solo = List.copyOf(solo);
      mute = List.copyOf(mute);
    }

    /**
     * Checks it before anything is reckoned.
     *
     * @param outputs where it is declared
     * @throws Refusal if the ending is neither, two wishes exclude each other, the bank can't be
     *     read, or the file can't be written
     */
    public void refuseWhatCannotBe(Outputs outputs) throws Refusal {
      if (format(file) == SoundFormat.MID && bank.isPresent()) {
        throw Refusal.wrongUse(
            Sentence.of(
                "a soundbank{0} gives sounds to a .wav file; a .mid file has notes only, so leave"
                    + " it out",
                Settable.SOUNDBANK));
      }
      if (compare && !(solo.isEmpty() && mute.isEmpty())) {
        throw Refusal.wrongUse(
            Sentence.of(
                "a comparison{0} plays everybody; leave out who is heard alone{1} and who is"
                    + " silent{2}",
                Settable.COMPARISON, Settable.SOLO, Settable.MUTE));
      }
      if (bank.isPresent()) {
        read(bank.get());
      }
      outputs.add(file, replace);
    }
  }

  /**
   * What is played.
   *
   * @param seats of players whose seats are known, by name
   */
  public record PlayedPiece(JudgedPlan judged, OpenScore score, Map<String, Seat> seats) {}

  /**
   * What came of it.
   *
   * @param musicSeconds what the tempo map makes of it, pauses between takes reckoned in
   * @param fileSeconds how long the file is: in a .wav file notes may ring on
   * @param steps the handoffs that can be heard in full; none in a .mid file
   * @param mean of those measured, as the level of the mean ratio of energies
   */
  public record Heard(
      double musicSeconds, double fileSeconds, List<PlayStep> steps, Optional<PlayStep> mean) {
    public Heard {
      steps = List.copyOf(steps);
    }
  }

  /**
   * The step in level at a handoff, in decibels; empty where nothing is shared, or there is nothing
   * to compare with.
   *
   * @param number of the handoff in the plan, from 1
   * @param published by the published sum of unrelated sources
   * @param overOne measured, against the same strokes without who enters
   * @param overBefore measured, against the strokes just before
   */
  public record PlayStep(
      int number, OptionalDouble published, OptionalDouble overOne, OptionalDouble overBefore) {}

  /**
   * Plays a plan.
   *
   * @throws Refusal if there is no such player or handoff, or the file can't be written
   */
  public static Heard play(PlayedPiece what, LimitsInForce limits, SoundRequest request)
      throws Refusal {
    Plan plan = what.judged().plan();
    Span excerpt = excerpt(plan, request);
    Hearing hearing = hearing(what, limits, request);
    Performance performance = performance(plan, excerpt, hearing, request);
    return format(request.file()) == SoundFormat.MID
        ? written(performance, request)
        : rendered(performance, Comparison.withoutOverlaps(plan, excerpt, hearing), what, request);
  }

  /**
   * Plays a plan into a file, unless it is ended; nothing is measured.
   *
   * @param stop asked often; once it says yes there is no file
   * @return whether there is one
   * @throws Refusal if there is no such player, or the file can't be written
   */
  static boolean render(
      PlayedPiece what, LimitsInForce limits, SoundRequest request, BooleanSupplier stop)
      throws Refusal {
    Plan plan = what.judged().plan();
    Hearing hearing = hearing(what, limits, request);
    Performance performance = performance(plan, excerpt(plan, request), hearing, request);
    if (format(request.file()) == SoundFormat.MID) {
      written(performance, request);
      return true;
    }
    try {
      Optional<Audio> audio = performance.audio(bank(request), stop);
      if (audio.isPresent()) {
        write(audio.get().wav(), request);
      }
      return audio.isPresent();
    } catch (NoSound e) {
      throw silent(request, e);
    }
  }

  private static Hearing hearing(PlayedPiece what, LimitsInForce limits, SoundRequest request)
      throws Refusal {
    return new Hearing(
        request.speed(),
        timing(request),
        what.seats(),
        heard(what.judged().plan(), request),
        request.withScore() ? Optional.of(Playback.rest(what.score(), limits)) : Optional.empty());
  }

  private static Performance performance(
      Plan plan, Span excerpt, Hearing hearing, SoundRequest request) {
    return request.compare()
        ? Comparison.of(plan, excerpt, hearing)
        : Performance.of(plan, excerpt, hearing);
  }

  private static Heard written(Performance performance, SoundRequest request) throws Refusal {
    write(performance.midi(), request);
    double seconds = performance.lengthMicros() / 1e6;
    return new Heard(seconds, seconds, List.of(), Optional.empty());
  }

  private static Heard rendered(
      Performance performance, Performance withoutOverlaps, PlayedPiece what, SoundRequest request)
      throws Refusal {
    Optional<Soundbank> bank = bank(request);
    try {
      Audio audio = performance.audio(bank);
      write(audio.wav(), request);
      List<LevelStep> measured =
          LevelStep.measured(performance, audio, withoutOverlaps.audio(bank));
      List<PlayStep> steps = steps(measured, what, request);
      return new Heard(performance.lengthMicros() / 1e6, audio.seconds(), steps, mean(steps));
    } catch (NoSound e) {
      throw silent(request, e);
    }
  }

  private static void write(byte[] bytes, SoundRequest request) throws Refusal {
    FileDoor.write(request.file(), bytes, request.replace(), format(request.file()).proof());
  }

  private static Optional<Soundbank> bank(SoundRequest request) throws Refusal {
    return request.bank().isPresent() ? Optional.of(read(request.bank().get())) : Optional.empty();
  }

  private static Refusal silent(SoundRequest request, NoSound why) {
    return Refusal.ofFile(
        Sentence.of("{0}: {1}", request.bank().orElse(request.file()), why.inWords()));
  }

  private static List<PlayStep> steps(
      List<LevelStep> measured, PlayedPiece what, SoundRequest request) {
    List<HandoffEar> ears = Ear.of(what.judged().plan(), what.seats());
    boolean everybody = request.solo().isEmpty() && request.mute().isEmpty();
    List<PlayStep> steps = new ArrayList<>();
    for (int i = 0; i < measured.size(); i++) {
      boolean asked = request.handoff().isEmpty() || request.handoff().get() == i + 1;
      if (asked && (everybody || measured.get(i).overOne().isPresent())) {
        OptionalDouble published =
            ears.get(i)
                .together()
                .map(both -> OptionalDouble.of(both.aboveLeavingDecibel()))
                .orElse(OptionalDouble.empty());
        steps.add(
            new PlayStep(
                i + 1,
                published,
                LevelStep.decibel(measured.get(i).overOne()),
                LevelStep.decibel(measured.get(i).overBefore())));
      }
    }
    return steps;
  }

  private static Optional<PlayStep> mean(List<PlayStep> steps) {
    List<PlayStep> whole = steps.stream().filter(step -> step.overBefore().isPresent()).toList();
    return whole.size() < 2
        ? Optional.empty()
        : Optional.of(
            new PlayStep(
                0,
                mean(whole, PlayStep::published),
                mean(whole, PlayStep::overOne),
                mean(whole, PlayStep::overBefore)));
  }

  private static OptionalDouble mean(
      List<PlayStep> steps, Function<PlayStep, OptionalDouble> level) {
    return LevelStep.decibel(
        steps.stream()
            .flatMapToDouble(step -> level.apply(step).stream())
            .map(decibel -> Math.pow(10, decibel / 10))
            .average());
  }

  private static Timing timing(SoundRequest request) throws Refusal {
    if (request.spread()) {
      return Timing.ENSEMBLE;
    }
    return format(request.file()) == SoundFormat.MID ? Timing.WRITTEN : Timing.TOGETHER;
  }

  private static Span excerpt(Plan plan, SoundRequest request) throws Refusal {
    if (request.handoff().isEmpty()) {
      return Excerpts.whole(plan);
    }
    int number = request.handoff().get();
    int last = plan.handoffs().size();
    if (number < 1 || number > last) {
      throw Refusal.wrongUse(
          last == 0
              ? Sentence.of("there is no handoff {0}: this plan has none; hear all of it", number)
              : Sentence.of(
                  "there is no handoff {0}: the plan's handoffs are numbered 1 to {1}",
                  number, last));
    }
    return Excerpts.round(plan, plan.handoffs().get(number - 1));
  }

  private static Set<Integer> heard(Plan plan, SoundRequest request) throws Refusal {
    Set<Integer> heard = new TreeSet<>();
    plan.segments().forEach(segment -> heard.add(segment.player()));
    if (!request.solo().isEmpty()) {
      heard.retainAll(numbers(plan, request.solo()));
    }
    heard.removeAll(numbers(plan, request.mute()));
    if (heard.isEmpty()) {
      throw Refusal.wrongUse(
          Sentence.of(
              "who is heard alone{0} and who is silent{1} leave nobody to hear; name fewer, or"
                  + " others",
              Settable.SOLO, Settable.MUTE));
    }
    return heard;
  }

  private static Set<Integer> numbers(Plan plan, List<String> names) throws Refusal {
    List<Player> players = plan.brief().players();
    Set<Integer> numbers = new TreeSet<>();
    for (String name : names) {
      int number = 0;
      while (number < players.size() && !TypedNames.same(players.get(number).name(), name)) {
        number++;
      }
      if (number == players.size() || plan.segmentsOf(number).isEmpty()) {
        Sentence playing = Sentence.list(plan.playing());
        throw Refusal.wrongUse(
            number == players.size()
                ? Sentence.of("{0} is none of the players; it is played by {1}", name, playing)
                : Sentence.of(
                    "{0} has nothing to play in this plan; it is played by {1}", name, playing));
      }
      numbers.add(number);
    }
    return numbers;
  }

  private static Soundbank read(Path file) throws Refusal {
    byte[] bytes = FileDoor.read(file);
    try {
      return MidiSystem.getSoundbank(new ByteArrayInputStream(bytes));
    } catch (InvalidMidiDataException | IOException e) {
      throw Refusal.ofFile(Sentence.of("{0}: is no soundbank that can be read (SF2 or DLS)", file));
    }
  }

  private static SoundFormat format(Path file) throws Refusal {
    return FileEnding.of(file, SoundFormat.class)
        .orElseThrow(
            () -> Refusal.wrongUse(Sentence.of("{0}: a plan is played into .wav or .mid", file)));
  }
}
