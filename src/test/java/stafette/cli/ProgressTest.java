package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonParser;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import org.junit.jupiter.api.Test;

/** How a search that takes long is getting on is told on the error stream. */
class ProgressTest {
  private static final String TOLD =
      "searching for \\d+ s: (the best plan so far costs \\d+ points|no plan yet), none costs less than \\d+";

  /** Makes a search of some milliseconds look as if it took seconds. */
  private static LongSupplier secondsForEachLook() {
    AtomicLong nanos = new AtomicLong();
    return () -> nanos.addAndGet(4_000_000_000L);
  }

  @Test
  void a_long_search_says_how_it_is_getting_on_beside_the_results() {
    for (String command : List.of("split", "preview")) {
      Ran ran = Ran.command(secondsForEachLook(), LanternRun.args(command));
      assertEquals(0, ran.exitCode(), ran.err());
      List<String> told = ran.err().lines().toList();
      assertTrue(told.size() > 1, ran.err());
      told.forEach(line -> assertTrue(line.matches(TOLD), line));
      assertTrue(told.get(told.size() - 1).contains("the best plan so far costs "), ran.err());
    }
  }

  @Test
  void several_tempi_and_background_parts_say_how_they_are_getting_on_too() {
    Ran thin = Ran.command(secondsForEachLook(), LanternRun.args("thin", "--time", "600"));
    assertTold(thin, "searching for \\d+ s: Flute 1, stretch \\d+ of the \\d+ in the line");
    Ran tempo = Ran.command(secondsForEachLook(), LanternRun.args("tempo", "--time", "1"));
    assertTold(tempo, "searching for \\d+ s: \\d+ searches at several tempi done");
    Ran colour =
        Ran.command(
            secondsForEachLook(), LanternRun.args("split", "--colour", "Trumpet 1", "--json"));
    assertTrue(colour.err().contains(" s: Trumpet 1, stretch 2 of the "), colour.err());
    assertTrue(JsonParser.parseString(colour.out()).isJsonObject());
  }

  private static void assertTold(Ran ran, String line) {
    assertTrue(ran.err().lines().anyMatch(told -> told.matches(line)), ran.err());
    assertFalse(ran.out().contains("searching for "), ran.out());
  }

  @Test
  void every_search_ends_when_its_time_is_over_and_says_so() {
    for (String command : List.of("split", "preview", "tempo", "thin")) {
      Ran ran = LanternRun.run(command, "--time", "0.001");
      assertTrue(ran.exitCode() == Commands.FINE || ran.exitCode() == Commands.FINDINGS, ran.err());
      boolean said = ran.out().contains("--time") || ran.out().contains("the best found in time");
      assertTrue(said, command + ": " + ran.out());
    }
  }

  @Test
  void data_on_standard_output_stays_data() {
    Ran ran = Ran.command(secondsForEachLook(), LanternRun.args("split", "--json"));
    assertTrue(JsonParser.parseString(ran.out()).isJsonObject());
    assertTrue(ran.err().lines().allMatch(line -> line.matches(TOLD)), ran.err());
  }

  @Test
  void a_short_search_says_nothing() {
    assertEquals("", Ran.command(() -> 0, LanternRun.args("split")).err());
  }
}
