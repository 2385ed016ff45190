package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The door to the desktop, seen from the command line. */
class AppCommandTest {
  @Test
  void where_no_window_can_be_opened_a_sentence_says_so_and_no_trace_follows() {
    Ran ran = Ran.command("app", "samples/lantern-run.musicxml");
    assertEquals(3, ran.exitCode());
    assertTrue(ran.err().startsWith("no window here: Optional[samples"), ran::err);
    assertFalse(ran.err().contains("\tat "), ran::err);
  }

  @Test
  void it_opens_without_a_score_too() {
    assertTrue(Ran.command("app").err().startsWith("no window here: Optional.empty"));
  }

  @Test
  void two_scores_are_wrong_use() {
    assertEquals(2, Ran.command("app", "one.musicxml", "two.musicxml").exitCode());
  }
}
