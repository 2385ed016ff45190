package stafette.trials;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Spoilt scores, plans, tables, players and commands, run as the program's own entry runs them.
 *
 * <p>Some hundred in each build; a long run is {@code -Dtrials=10000}, another one {@code
 * -Dtrials.seed=7}. A trial is its seed: what failed once fails again.
 */
class TrialsTest {
  private static final int TRIALS = Integer.getInteger("trials", 300);
  private static final long SEED = Long.getLong("trials.seed", 1);

  /** Each run of 2<sup>32</sup> trials has seeds of its own. */
  private static final int SEED_BITS = 32;

  private static final int RUNS_TO_SHRINK = 400;
  private static final int SHOWN = 4_000;

  /** More kinds of faults than these are not gathered in one run. */
  private static final int MOST_KINDS = 8;

  @TempDir private Path folder = Path.of("");

  @Test
  void nothing_crashes_nothing_is_lost_and_every_refusal_has_words() {
    TrialMaker maker = new TrialMaker(folder);
    Map<String, String> faults = new LinkedHashMap<>();
    for (int i = 0; i < TRIALS && faults.size() < MOST_KINDS; i++) {
      long seed = (SEED << SEED_BITS) + i;
      Trial trial = maker.of(seed);
      for (String broken : Demands.brokenBy(trial, folder)) {
        faults.computeIfAbsent(kind(broken), kind -> "seed " + seed + ": " + smallest(trial, kind));
      }
    }
    assertEquals("", String.join("\n\n", faults.values()));
  }

  private String smallest(Trial trial, String kind) {
    Trial smallest =
        Shrinker.smallest(
            trial,
            smaller ->
                Demands.brokenBy(smaller, folder).stream()
                    .anyMatch(broken -> kind(broken).equals(kind)),
            RUNS_TO_SHRINK);
    return Demands.brokenBy(smallest, folder)
        + "\n"
        + String.join(" ", smallest.args())
        + "\n"
        + smallest.files().entrySet().stream()
            .map(file -> file.getKey() + ":\n" + shown(file.getValue()))
            .collect(Collectors.joining("\n"));
  }

  private static String shown(byte[] content) {
    String text = new String(content, StandardCharsets.UTF_8);
    return text.length() > SHOWN ? text.substring(0, SHOWN) + "…" : text;
  }

  /** What two faults have in common that only differ in where they were seen. */
  private static String kind(String broken) {
    String plain = broken.replaceAll("[0-9]+", "#").replaceAll("/\\S+/", "");
    return List.of(plain.split("\\[", 2)).get(0).replaceAll("(?s)(.{120}).*", "$1");
  }
}
