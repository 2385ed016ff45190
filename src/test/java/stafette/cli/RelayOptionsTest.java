package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Hockets, several players at a time and locks, from the command line. */
class RelayOptionsTest {
  @Test
  void a_pair_in_turns_plays_what_is_too_fast_for_one() {
    assertEquals(1, split("5-7", "--tempo", "122").exitCode());
    Ran ran = split("5-7", "--tempo", "122", "--hocket", "stroke", "--json");
    assertEquals(0, ran.exitCode(), ran.out());
    assertTrue(ran.out().contains("\"pattern\": \"odd\""), ran.out());
    assertTrue(ran.out().contains("\"pattern\": \"even\""), ran.out());
  }

  @Test
  void notes_too_close_to_take_in_turn_are_told_with_what_to_do() {
    Ran ran = split("5-7", "--tempo", "130", "--hocket", "stroke");
    assertEquals(1, ran.exitCode(), ran.out());
    assertTrue(
        ran.err()
            .contains(
                "notes 76 ms apart are too close for two players to take in turn by stroke or by"
                    + " group, which goes from 81 ms on, about sixteenths at quarter = 185; let"
                    + " pairs take beats in turn (--hocket), or choose a slower tempo"),
        ran.err());
    assertEquals("", split("5-7", "--tempo", "122", "--hocket", "stroke").err());
  }

  @Test
  void two_at_a_time_are_two_relays() {
    Ran ran = split("5-6", "--double", "2", "--json");
    assertEquals(0, ran.exitCode(), ran.out());
    assertTrue(ran.out().contains("\"relay\": 1"), ran.out());
  }

  @Test
  void a_lock_keeps_a_player_out_or_in() {
    assertTrue(split("5-6").out().contains("  Flute 1  "));
    Ran out = split("5-6", "--lock", "not Flute 1: 5.1-6.4");
    assertEquals(0, out.exitCode(), out.out());
    assertTrue(out.out().contains("  Flute 2  double tonguing"), out.out());
    Ran exactly = split("5-6", "--lock", "Flute 2 = 5.1-6.1");
    assertEquals(0, exactly.exitCode(), exactly.out());
    assertTrue(exactly.out().contains("  Flute 2  double tonguing  5.1   6.1"), exactly.out());
  }

  @Test
  void a_lock_that_says_nothing_or_names_nobody_is_refused() {
    for (String lock :
        List.of(
            "Flute 1",
            "not handoff: 5.1",
            "Flute 9: 5.1-6.1",
            "Flute 1: 4.1",
            "handoff: 5.1",
            "handoff: 5.1-5.2",
            "handoff: 6.4+5/6",
            "handoff: 5.3-5.2")) {
      Ran ran = split("5-6", "--lock", lock);
      assertEquals(2, ran.exitCode(), lock);
      assertTrue(ran.err().contains("lock \"" + lock + "\": "), ran.err());
    }
  }

  private static Ran split(String bars, String... more) {
    return LanternRun.run(
        "split", LanternRun.FILE, bars, "Flute 1, Flute 2, Flute 3, Flute 4", more);
  }
}
