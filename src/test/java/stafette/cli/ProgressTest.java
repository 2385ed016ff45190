package stafette.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
      assertTrue(told.size() > 2, ran.err());
      told.forEach(line -> assertTrue(line.matches(TOLD), line));
      assertTrue(told.get(told.size() - 1).contains("the best plan so far costs "), ran.err());
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
