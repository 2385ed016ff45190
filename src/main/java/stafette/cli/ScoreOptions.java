package stafette.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import stafette.ask.LineRequest;
import stafette.ask.TempoWish;
import stafette.keep.LimitsInForce;
import stafette.limits.Assurance;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.score.Reading;
import stafette.score.Slurring;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;
import stafette.words.Refusal;

/** Options that say which line is meant, how it is read, and by which limits. */
final class ScoreOptions {
  @Option(names = "--part", paramLabel = "P", description = "The line's part: its id or name.")
  private @Nullable String part;

  @Option(
      names = "--staff",
      paramLabel = "N",
      description = "The line's staff, from 1; 1+2 where hands share it.")
  private @Nullable String staff;

  @Option(
      names = "--voice",
      paramLabel = "N",
      description = "The line's voice; 1+2 where voices share it.")
  private @Nullable String voice;

  @Option(
      names = "--reading",
      paramLabel = "HOW",
      description = "Broken octaves and chords: all, or only their upper or lower notes.")
  private Reading reading = Reading.ALL;

  @Option(
      names = "--bars",
      paramLabel = "A-B",
      description = "Bars as printed (12-20), or counted from 1 (#12-#20).")
  private @Nullable String bars;

  @Option(
      names = "--tone",
      paramLabel = "TONE",
      description =
          "Of chords: top, bottom, a number from the top, all, or (split) each with its own players.")
  private @Nullable String tone;

  @Option(
      names = "--tempo",
      paramLabel = "TEMPO",
      description = "Another tempo at the line's start: 92, or \"dotted quarter = 92\".")
  private @Nullable String tempo;

  @Option(
      names = "--tremolo",
      paramLabel = "HOW",
      description = "Read every tremolo as measured or as unmeasured, whatever the tempo.")
  private Tremolo tremolo = Tremolo.AS_WRITTEN;

  @Option(
      names = "--slur",
      paramLabel = "HOW",
      description =
          "Slurs the line where its pitch changes: pairs, fours, or two-and-two (slur two, tongue two).")
  private Slurring slurring = Slurring.AS_WRITTEN;

  @Option(
      names = "--assurance",
      paramLabel = "PERCENT",
      description = "The share of players who should manage (default: 84).")
  private double assurance = Assurance.DEFAULT.percent();

  @Option(
      names = "--limits",
      paramLabel = "DIR",
      description = "A folder with tables of your own, laid over the built-in ones.")
  private @Nullable Path limits;

  /** What was asked for besides the line, as it is asked for again. */
  List<String> again() {
    List<String> words = new ArrayList<>();
    add(words, "--tempo", tempo);
    if (tremolo != Tremolo.AS_WRITTEN) {
      add(words, "--tremolo", tremolo.name().toLowerCase(Locale.ROOT));
    }
    if (slurring != Slurring.AS_WRITTEN) {
      add(words, "--slur", slurring.word());
    }
    add(words, "--limits", limits);
    if (assurance != Assurance.DEFAULT.percent()) {
      add(words, "--assurance", Conversions.plain(assurance));
    }
    return words;
  }

  private static void add(List<String> words, String option, @Nullable Object value) {
    if (value != null) {
      words.addAll(List.of(option, value.toString()));
    }
  }

  /** Reads "pairs", "fours" or "two-and-two". */
  static Slurring slurring(String text) throws Refusal {
    return Slurring.parse(text)
        .orElseThrow(
            () -> Refusal.wrongUse("write pairs, fours, two-and-two, or as-written for no more"));
  }

  private static List<Integer> staves(String text) throws Refusal {
    if (!text.matches("[1-9][0-9]?(\\+[1-9][0-9]?)*")) {
      throw Refusal.wrongUse("write the number of a staff, or 1+2 for both hands");
    }
    return Arrays.stream(text.split("\\+")).map(Integer::valueOf).distinct().sorted().toList();
  }

  boolean namesALine() {
    return part != null;
  }

  boolean narrowsWithoutPart() {
    boolean narrows = staff != null || voice != null || bars != null || tone != null;
    boolean changes = slurring != Slurring.AS_WRITTEN || reading != Reading.ALL;
    return part == null && (narrows || changes);
  }

  LineRequest request(Path file, boolean cues) throws Refusal {
    if (part == null) {
      throw Refusal.wrongUse("which line? Name its part with --part, and its bars with --bars");
    }
    LineChoice choice =
        new LineChoice(
            part,
            Optional.ofNullable(bars).map(BarChoice::new),
            staff == null ? List.of() : Conversions.read("--staff", staff, ScoreOptions::staves),
            voice == null ? List.of() : List.of(voice.split("\\+")),
            toneChoice(),
            reading);
    return new LineRequest(file, choice, tempoWish(), tremolo(), cues, slurring);
  }

  Optional<TempoWish> tempoWish() throws Refusal {
    return tempo == null
        ? Optional.empty()
        : Optional.of(Conversions.read("--tempo", tempo, TempoWish::parse));
  }

  Tremolo tremolo() {
    return tremolo;
  }

  Assurance assurance() throws Refusal {
    if (!(assurance > 0 && assurance < 100)) {
      throw Refusal.wrongUse("--assurance lies between 0 and 100 per cent, such as 84");
    }
    return new Assurance(assurance);
  }

  LimitsInForce limits() throws Refusal {
    return LimitsInForce.load(Optional.ofNullable(limits));
  }

  /** What it reads beside the score. */
  List<Path> inputs() {
    return limits == null ? List.of() : LimitsInForce.tables(limits);
  }

  /** Whether each tone of chords is to have players of its own. */
  boolean eachTone() {
    return "each".equalsIgnoreCase(tone);
  }

  private Optional<ToneChoice> toneChoice() throws Refusal {
    if (tone == null) {
      return Optional.empty();
    }
    if (eachTone()) {
      return Optional.of(new ToneChoice.All());
    }
    Optional<ToneChoice> choice = ToneChoice.parse(tone);
    if (choice.isEmpty()) {
      throw Refusal.wrongUse(
          "--tone is top, bottom, all, each, or a number counted from the top, not \""
              + tone
              + "\"");
    }
    return choice;
  }
}
