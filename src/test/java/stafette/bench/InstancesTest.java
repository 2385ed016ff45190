package stafette.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stafette.bench.Instances.Instance;
import stafette.check.Judge;
import stafette.check.Verdict;
import stafette.split.SplitResult;
import stafette.split.Splitter;

/** The published instances. With {@code -Dinstances=write} their tables are written anew. */
class InstancesTest {
  private static final int LOOKS = 2_000;

  static List<Instance> nearCapacity() {
    return Instances.nearCapacity();
  }

  @Test
  void there_are_seventy_two_near_capacity() {
    assertEquals(72, Instances.nearCapacity().size());
  }

  @Test
  void the_table_of_rosters_is_what_the_code_makes() throws IOException {
    assertSame("rosters.csv", Instances.ofRosters().stream().map(Instance::row).toList());
  }

  @Test
  void the_table_of_middle_briefs_is_what_the_seeds_make() throws IOException {
    assertSame("middle-briefs.csv", Instances.middle().stream().map(Instance::marked).toList());
  }

  private static void assertSame(String file, List<String> rows) throws IOException {
    if ("write".equals(System.getProperty("instances"))) {
      Path path = Instances.FOLDER.resolve(file);
      List<String> all = new ArrayList<>();
      for (String row : Files.readAllLines(path)) {
        all.add(row);
        if (!row.startsWith("#")) {
          break;
        }
      }
      all.addAll(rows);
      Files.write(path, all);
    }
    assertEquals(String.join("\n", Instances.rows(file)), String.join("\n", rows));
  }

  @ParameterizedTest
  @MethodSource("nearCapacity")
  void near_capacity_each_is_solved_or_stays_open_and_no_plan_is_wrong(Instance instance) {
    SplitResult result = Splitter.split(instance.brief(), counted(LOOKS));
    result.found().ifPresent(plan -> assertTrue(Judge.judge(plan).holds()));
    int bound = result.leastCost().orElse(0);
    result
        .found()
        .map(plan -> Judge.judge(plan))
        .map(Verdict::cost)
        .ifPresent(cost -> assertTrue(bound <= cost.total()));
  }

  @Test
  void two_can_always_be_on() {
    SplitResult result = Splitter.split(Instances.twoOn().brief(), counted(20 * LOOKS));
    assertTrue(result.found().isPresent());
    assertTrue(Judge.judge(result.found().orElseThrow()).holds());
  }

  private static BooleanSupplier counted(int looks) {
    int[] left = {looks};
    return () -> --left[0] < 0;
  }
}
