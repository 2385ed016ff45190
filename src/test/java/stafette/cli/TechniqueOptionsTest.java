package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Which techniques players bring, from the command line. */
class TechniqueOptionsTest {
  private static Ran check(String... more) {
    String[] all = new String[8 + more.length];
    String[] first = {
      "check", "samples/lantern-run.musicxml", "--part", "Piano", "--staff", "1", "--bars", "5-7"
    };
    System.arraycopy(first, 0, all, 0, first.length);
    System.arraycopy(more, 0, all, first.length, more.length);
    return Ran.command(all);
  }

  @Test
  void techniques_that_are_set_take_the_place_of_all_expected_ones() {
    assertEquals(Commands.FINE, check("--as", "flute").exitCode());
    Ran set = check("--as", "flute", "--set", "single tonguing");
    assertEquals(Commands.FINDINGS, set.exitCode(), set.out());
    assertTrue(set.out().contains("with single tonguing"), set.out());
  }

  @Test
  void one_that_is_allowed_is_used_beside_the_others() {
    Ran alone = check("--as", "clarinet");
    assertTrue(alone.out().contains("with double tonguing, which not everybody has"), alone.out());
    Ran allowed = check("--as", "clarinet", "--allow", "double tonguing");
    assertFalse(allowed.out().contains("which not everybody has"), allowed.out());
    assertTrue(allowed.out().contains("with double tonguing"), allowed.out());
  }

  @Test
  void a_player_whose_techniques_are_set_is_split_with_those_alone() {
    Ran ran =
        LanternRun.run(
            "split", "--set", "Flute 1: single tonguing, slurred", "--lock", "Flute 1: 5.1-5.4");
    assertEquals(Commands.FINDINGS, ran.exitCode(), ran.out());
    assertEquals(Commands.FINE, LanternRun.run("split", "--lock", "Flute 1: 5.1-5.4").exitCode());
  }

  @Test
  void a_technique_that_none_of_the_players_has_is_refused() {
    Ran ran = LanternRun.run("split", "--set", "Flute 1: ricochet");
    assertEquals(Commands.WRONG_USE, ran.exitCode());
    assertTrue(ran.err().contains("Flute 1: ricochet"), ran.err());
  }
}
