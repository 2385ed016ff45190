package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stafette.words.Sentence;
import stafette.words.Settable;

/** The command line says by which option something can be set, and nobody else does. */
class OptionsTest {
  private static final Pattern OPTION = Pattern.compile("--[a-z-]+");

  @Test
  void a_sentence_names_the_option_beside_what_can_be_set() {
    Sentence inside =
        Sentence.of("allow wider overlaps{0} or less rest{1}", Settable.OVERLAP, Settable.REST);
    Sentence reason = Sentence.of("bar {0}: {1}", 12, inside);
    assertEquals(
        "bar 12: allow wider overlaps (--overlap) or less rest (--ready)", Options.say(reason));
    assertEquals("bar 12: allow wider overlaps or less rest", reason.toString());
  }

  @Test
  void every_option_that_is_named_is_there() {
    Set<String> named = new TreeSet<>();
    for (Settable settable : Settable.values()) {
      String said = Options.say(Sentence.of("{0}", settable));
      assertTrue(said.matches(" \\(.+\\)"), said);
      named.addAll(options(said));
    }
    named.removeAll(
        Stream.of("check", "split", "preview", "thin", "limits")
            .flatMap(command -> options(Ran.command(command, "--help").out()).stream())
            .toList());
    assertEquals(Set.of(), named);
  }

  @Test
  void values_are_read_in_capitals_or_not_and_refused_with_the_option_named() {
    List<String> alike =
        List.of("--hocket", "Stroke", "--favour", "HANDOFFS", "--overlap", "1..BEAT");
    assertEquals(Commands.FINE, split(alike).exitCode());
    Ran refused = split(List.of("--hocket", "no", "--tremolo", "loud"));
    assertEquals(Commands.WRONG_USE, refused.exitCode());
    assertTrue(refused.err().startsWith("--tremolo \"loud\": write "), refused.err());
    assertTrue(refused.err().contains("measured or unmeasured"), refused.err());
  }

  private static Ran split(List<String> more) {
    return LanternRun.run("split", more.toArray(String[]::new));
  }

  private static Set<String> options(String text) {
    return OPTION.matcher(text).results().map(MatchResult::group).collect(Collectors.toSet());
  }
}
