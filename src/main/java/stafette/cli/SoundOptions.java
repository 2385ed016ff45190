package stafette.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import stafette.ask.SoundWish;
import stafette.keep.LimitsInForce;
import stafette.keep.Outputs;
import stafette.time.Rational;
import stafette.words.Refusal;
import stafette.work.PlayPlan;

/** Options that say what is to be heard, and in which file. */
final class SoundOptions {
  @Option(
      names = "--sound",
      paramLabel = "FILE",
      description = "Plays the plan into FILE.wav or FILE.mid.")
  private @Nullable Path sound;

  @Option(
      names = "--with-score",
      description = "Of the sound: with the rest of the score as a quiet background.")
  private boolean withScore;

  @Option(
      names = "--spread",
      paramLabel = "WHAT",
      description =
          "Of the sound: on (default), players a little apart as in an ensemble, and by their seats; off, together.")
  private @Nullable OnOff spread;

  @Option(
      names = "--handoff",
      paramLabel = "N",
      description = "Of the sound: only some seconds round handoff N, counted from 1.")
  private @Nullable Integer handoff;

  @Option(
      names = "--solo",
      paramLabel = "NAMES",
      description = "Of the sound: only these players, \"Flute 1, Flute 2\".")
  private @Nullable String solo;

  @Option(
      names = "--mute",
      paramLabel = "NAMES",
      description = "Of the sound: without these players.")
  private @Nullable String mute;

  @Option(
      names = "--speed",
      paramLabel = "SHARE",
      description = "Of the sound: slower or faster than planned, such as 50%%.")
  private @Nullable String speed;

  @Option(
      names = "--compare",
      description =
          "Of the sound: by one impossible player, by the plan without overlaps, and by the plan, one after another.")
  private boolean compare;

  @Option(
      names = "--bank",
      paramLabel = "FILE",
      description = "Of the sound: a soundbank of your own, FILE.sf2 or FILE.dls.")
  private @Nullable Path bank;

  /** What it reads. */
  List<Path> inputs() {
    return Optional.ofNullable(bank).stream().toList();
  }

  private enum OnOff {
    ON,
    OFF
  }

  /** Says before the search what would make it impossible to play after it. */
  void refuseWhatCannotBe(boolean replace, Outputs outputs) throws Refusal {
    Optional<PlayPlan.SoundRequest> request = request(replace);
    if (request.isPresent()) {
      request.get().refuseWhatCannotBe(outputs);
    }
  }

  void play(PlayPlan.PlayedPiece what, LimitsInForce limits, boolean replace, Output output)
      throws Refusal {
    Optional<PlayPlan.SoundRequest> request = request(replace);
    if (request.isPresent()) {
      PlayPlan.Heard heard = PlayPlan.play(what, limits, request.get());
      output.out().print(SoundText.of(what, request.get(), heard));
    }
  }

  private Optional<PlayPlan.SoundRequest> request(boolean replace) throws Refusal {
    if (sound == null) {
      Map<String, Boolean> others = new LinkedHashMap<>();
      others.put("--with-score", withScore);
      others.put("--spread", spread != null);
      others.put("--handoff", handoff != null);
      others.put("--solo", solo != null);
      others.put("--mute", mute != null);
      others.put("--speed", speed != null);
      others.put("--compare", compare);
      others.put("--bank", bank != null);
      List<String> given =
          others.entrySet().stream().filter(Map.Entry::getValue).map(Map.Entry::getKey).toList();
      if (!given.isEmpty()) {
        throw Refusal.wrongUse(String.join(", ", given) + ": go with --sound FILE.wav or FILE.mid");
      }
      return Optional.empty();
    }
    return Optional.of(
        new PlayPlan.SoundRequest(
            sound,
            withScore,
            spread != OnOff.OFF,
            Optional.ofNullable(handoff),
            names("--solo", solo),
            names("--mute", mute),
            speed == null ? Rational.ONE : Conversions.read("--speed", speed, SoundWish::speed),
            compare,
            Optional.ofNullable(bank),
            replace));
  }

  private static List<String> names(String option, @Nullable String text) throws Refusal {
    return text == null ? List.of() : Conversions.read(option, text, SoundWish::names);
  }
}
