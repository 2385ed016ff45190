package stafette.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import stafette.plan.Seat;
import stafette.work.JudgedPlan;
import stafette.work.LimitsInForce;
import stafette.work.OpenScore;
import stafette.work.PlayPlan;
import stafette.work.Refusal;

/** Options that say what to play, and into which file. */
final class SoundOptions {
  @Option(
      names = "--sound",
      paramLabel = "FILE",
      description = "Plays the plan into FILE.wav or FILE.mid.")
  private @Nullable Path sound;

  @Option(
      names = "--with-score",
      description = "The rest of the score accompanies, quietly; else the line is heard alone.")
  private boolean withScore;

  @Option(
      names = "--spread",
      paramLabel = "on|off",
      description =
          "Onsets spread as with people, and come late from seats far back (default on; off for machine time).")
  private String spread = "on";

  @Option(
      names = "--handoff",
      paramLabel = "N",
      description = "Plays only a few seconds round handoff number N.")
  private @Nullable Integer handoff;

  @Option(names = "--solo", paramLabel = "NAMES", description = "Only these players are heard.")
  private String solo = "";

  @Option(names = "--mute", paramLabel = "NAMES", description = "These players are not heard.")
  private String mute = "";

  @Option(
      names = "--speed",
      paramLabel = "PERCENT",
      description = "How fast it is played, such as 50%%; 100%% is the planned tempo.")
  private String speed = "100%";

  @Option(
      names = "--compare",
      description =
          "One after another: the line by one impossible player, by the plan without overlaps, and by the plan.")
  private boolean compare;

  @Option(
      names = "--bank",
      paramLabel = "FILE",
      description = "A sound bank of your own for the .wav file (.sf2 or .dls).")
  private @Nullable Path bank;

  /** Says before the search what would make playing impossible after it. */
  void refuseWhatCannotBe(boolean replace) throws Refusal {
    if (sound == null && isAnythingElseAsked()) {
      throw Refusal.wrongUse(
          "--with-score, --spread, --handoff, --solo, --mute, --speed, --compare and --bank need --sound FILE");
    }
    Optional<PlayPlan.Request> request = request(replace);
    if (request.isPresent()) {
      request.get().refuseWhatCannotBe();
    }
  }

  private boolean isAnythingElseAsked() {
    return withScore
        || compare
        || handoff != null
        || bank != null
        || !spread.equals("on")
        || !speed.equals("100%")
        || !solo.isEmpty()
        || !mute.isEmpty();
  }

  void play(
      JudgedPlan judged,
      OpenScore score,
      Map<String, Seat> seats,
      LimitsInForce limits,
      boolean replace,
      Output output)
      throws Refusal {
    Optional<PlayPlan.Request> request = request(replace);
    if (request.isPresent()) {
      PlayPlan.Sounded sounded = PlayPlan.sound(judged, score, seats, request.get(), limits);
      output.out().print(SoundText.of(judged.plan(), request.get().file(), sounded));
    }
  }

  private Optional<PlayPlan.Request> request(boolean replace) throws Refusal {
    if (sound == null) {
      return Optional.empty();
    }
    return Optional.of(
        new PlayPlan.Request(
            sound,
            isHuman(),
            speed(),
            withScore,
            compare,
            handoff == null ? OptionalInt.empty() : OptionalInt.of(handoff),
            names(solo),
            names(mute),
            Optional.ofNullable(bank),
            replace));
  }

  private boolean isHuman() throws Refusal {
    return switch (spread) {
      case "on" -> true;
      case "off" -> false;
      default -> throw Refusal.wrongUse("--spread is on or off, not \"" + spread + "\"");
    };
  }

  private double speed() throws Refusal {
    String number = speed.endsWith("%") ? speed.substring(0, speed.length() - 1) : speed;
    try {
      return Double.parseDouble(number.trim()) / 100;
    } catch (NumberFormatException e) {
      throw Refusal.wrongUse("--speed is a percentage such as 50%, not \"" + speed + "\"");
    }
  }

  private static List<String> names(String list) {
    return Stream.of(list.split(",", -1)).map(String::trim).filter(n -> !n.isEmpty()).toList();
  }
}
