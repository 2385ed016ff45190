package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stafette.json.PlanVerifier;

/** What a split prints as JSON is verified by a program that knows nothing of this one. */
class VerifiedPlansTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lantern-run|Piano|5-16|Flute 1, Flute 2, Clarinet 1|",
        "lantern-run|Piano|5-16|Flute 1, Flute 2, Clarinet 1|--margin 0",
        "lantern-run|Piano|5-16|Flute 1, Flute 2, Flute 3|--assurance 50 --margin 6",
        "lantern-run|Piano|5-16|Violin 1, Viola, Flute 1|--favour strain",
        "lantern-run|Piano|5-16|Xylophone, Flute 1, Marimba|--favour handoffs",
        "signal-hill|Trumpet 1|9-20|Flute 1, Flute 2, Oboe 1, Clarinet 1, Flute 3|",
        "signal-hill|Trumpet 1|9-20|Flute 1, Flute 2, Oboe 1, Clarinet 1|--overlap 1..3",
        "mill-stairs|P1|1-19|Bassoon 1, Bassoon 2, Clarinet 1, Clarinet 2, Flute 1, Flute 2|--allow double_tonguing",
        "mill-stairs|P1|1-19|Bassoon 1, Bassoon 2, Clarinet 1, Clarinet 2, Flute 1, Flute 2|--allow double_tonguing --favour blend",
        "lantern-run|Piano|5-16|Flute 1, Flute 2|--lock Flute_2:_5.1-7.1",
      })
  void a_plan_holds_and_costs_what_it_tells(
      String sample, String part, String bars, String players, String options) {
    List<String> args =
        new ArrayList<>(
            List.of("split", "samples/" + sample + ".musicxml", "--part", part, "--staff", "1"));
    args.addAll(List.of("--bars", bars, "--players", players, "--json"));
    for (String option : options == null ? new String[0] : options.split(" ")) {
      args.add(option.replace('_', ' '));
    }
    Ran ran = Ran.command(args.toArray(String[]::new));
    assertTrue(ran.exitCode() <= 1 && !ran.out().isEmpty(), ran.err());
    PlanVerifier verifier = PlanVerifier.of(ran.out());
    assertEquals(List.of(), verifier.wrong());
    assertTrue(verifier.isCheapestOrRotation());
  }
}
