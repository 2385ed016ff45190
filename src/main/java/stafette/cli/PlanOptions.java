package stafette.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stafette.ask.LockWish;
import stafette.ask.PlayerWish;
import stafette.ask.Relaying;
import stafette.ask.SplitRequest;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.Margin;
import stafette.plan.OverlapRule;
import stafette.plan.Rules;
import stafette.words.Refusal;

/** Options that say among whom a line is split, and by which rules. */
final class PlanOptions {
  /** As many notes as a beat has. */
  static final String BEAT = "beat";

  private static final Pattern OVERLAP =
      Pattern.compile("([0-9]{1,3})(?:\\.\\.([0-9]{1,3}|beat))?");

  @Option(
      names = "--players",
      paramLabel = "NAMES",
      description =
          "Who may play: \"Flute 1, Clarinet 1, Anna = bassoon\" (default: the best crew that who finds).")
  private @Nullable String players;

  @Option(
      names = "--players-file",
      paramLabel = "FILE",
      description = "Players with measured limits; all of them play if --players names nobody.")
  private @Nullable Path playersFile;

  @Mixin private TechniqueOptions techniques = new TechniqueOptions();

  @Option(
      names = "--overlap",
      paramLabel = "MIN..MAX",
      description = "How many notes two players share: 1..3, or 1..beat (default).")
  private OverlapRule overlap = OverlapRule.DEFAULT;

  @Option(
      names = "--ready",
      paramLabel = "SECONDS",
      description = "Rest before an entry (default: 0.5).")
  private double ready = Rules.DEFAULT_READY_SECONDS;

  @Option(
      names = "--margin",
      paramLabel = "PERCENT",
      description =
          "How far the tempo may drift either way while the plan holds (default: 3); where none does, one without it is found.")
  private double margin = Margin.DEFAULT.percent();

  @Option(
      names = "--favour",
      paramLabel = "WHAT",
      description =
          "balance (default), handoffs (few), strain (little), blend, players (few), regular (rotation).")
  private Favour favour = Favour.BALANCE;

  @Option(
      names = "--hocket",
      paramLabel = "UNIT",
      description = "Pairs may take turns by stroke, group or beat (default: no).")
  private Hocket hocket = Hocket.NO;

  @Option(
      names = "--double",
      paramLabel = "N",
      description = "Always so many players at a time, each with a relay of its own (default: 1).")
  private int together = 1;

  @Option(
      names = "--lock",
      paramLabel = "WHAT",
      description =
          "Keeps something: \"Flute 1: 12.1-13.1\" (plays there), \"Flute 1 = 12.1-13.1\" (just there),"
              + " \"not Flute 1: 12.1-13.1\", \"handoff: 13.1\"; may come several times.")
  private List<LockWish> locks = new ArrayList<>();

  @Mixin private TimeOptions search = new TimeOptions();

  SplitRequest request(Path file, ScoreOptions score, boolean cues) throws Refusal {
    return new SplitRequest(
        score.request(file, cues),
        players == null ? List.of() : PlayerWish.parse(players),
        Optional.ofNullable(playersFile),
        techniques.allowances(),
        score.assurance(),
        overlap,
        Conversions.seconds("--ready", ready, 0, 3600),
        favour,
        relaying(score),
        search.seconds(),
        margin(),
        Map.of());
  }

  /** Whether nobody was named, so that players are proposed. */
  boolean isForAnybody() {
    return players == null && playersFile == null;
  }

  private Margin margin() throws Refusal {
    if (!(margin >= 0 && margin <= Margin.MOST_PERCENT)) {
      throw Refusal.wrongUse(
          "--margin lies between 0 and " + Conversions.plain(Margin.MOST_PERCENT) + " per cent");
    }
    return new Margin(margin);
  }

  /** What they read. */
  List<Path> inputs() {
    return Optional.ofNullable(playersFile).stream().toList();
  }

  /** Reads "1..3", "1..beat" or "2". */
  static OverlapRule overlapRule(String text) throws Refusal {
    Matcher form = OVERLAP.matcher(text.replace(" ", "").toLowerCase(Locale.ROOT));
    if (form.matches()) {
      int min = Integer.parseInt(form.group(1));
      String most = form.group(2) == null ? form.group(1) : form.group(2);
      OptionalInt max =
          most.equals(BEAT) ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(most));
      if (min >= 1 && max.orElse(min) >= min) {
        return new OverlapRule(min, max);
      }
    }
    throw Refusal.wrongUse(
        "write MIN..MAX, such as 1..3 or 1..beat; two players share at least one note");
  }

  private Relaying relaying(ScoreOptions score) throws Refusal {
    if (together < 1 || together > Relaying.MOST_TOGETHER) {
      throw Refusal.wrongUse("--double lies between 1 and " + Relaying.MOST_TOGETHER);
    }
    if (together > 1 && score.eachTone()) {
      throw Refusal.wrongUse("--double and --tone each don't go together; choose one of them");
    }
    return new Relaying(hocket, together, score.eachTone(), locks);
  }
}
