package stafette.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.Invented;
import stafette.check.alone.Ease;
import stafette.check.alone.Limiting;
import stafette.check.alone.LineTrial;
import stafette.check.alone.LineVerdict;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Step;
import stafette.tables.LimitTables;

/** Seven pedals, two feet, half a second from move to move. */
class PedalCourseTest {
  private static final Instrument HARP =
      LimitTables.builtIn().catalogue().find("harp").orElseThrow();

  private static Line chromatic(int strokes, int quarters) {
    return Invented.line(strokes, 4, quarters, i -> pitch(60 + i % 24));
  }

  private static Pitch pitch(int midi) {
    List<Step> steps =
        Stream.of("C", "C", "D", "D", "E", "F", "F", "G", "G", "A", "A", "B")
            .map(Step::valueOf)
            .toList();
    Step step = steps.get(midi % 12);
    return new Pitch(step, midi % 12 - step.semitones(), midi / 12 - 1);
  }

  @Test
  void a_scale_of_one_key_needs_one_setting_at_any_speed() {
    int[] scale = {60, 62, 64, 65, 67, 69, 71, 72};
    PedalCourse course =
        PedalCourse.from(Invented.line(64, 4, 200, i -> pitch(scale[i % 8])), 0, 1);
    assertEquals(63, course.last());
    assertEquals(
        List.of("D C B | E F G A"),
        course.upTo(63).stream().map(setup -> setup.setting().toString()).toList());
  }

  /** F to F sharp: the right foot moves after the last F and before the first F sharp. */
  @Test
  void one_pedal_moves_between_the_last_stroke_that_needs_it_and_the_first_that_needs_it_new() {
    int[] notes = {65, 67, 64, 60, 62, 64, 67, 66};
    PedalCourse course = PedalCourse.from(Invented.line(8, 4, 120, i -> pitch(notes[i])), 0, 1);
    assertEquals(7, course.last());
    assertEquals(2, course.upTo(7).size());
    assertEquals(1, course.upTo(6).size());
  }

  @Test
  void chromatic_lines_are_not_harp_music() {
    assertTrue(PedalCourse.from(chromatic(24, 120), 0, 1).last() < 12);
    LineVerdict fast = LineTrial.of(chromatic(24, 120), HARP, Assurance.DEFAULT, HARP.techniques());
    assertEquals(Ease.BEYOND, fast.ease());
    assertEquals(Limiting.PEDALS, fast.limiting());
    assertTrue(fast.fastestTempo().isPresent(), "slowly enough they go");
  }

  @Test
  void slowly_enough_any_line_goes() {
    assertEquals(23, PedalCourse.from(chromatic(24, 10), 0, 1).last());
    assertEquals(23, PedalCourse.from(chromatic(24, 120), 0, 12).last(), "stretched as much");
  }

  @Property(tries = 100)
  void each_stroke_has_its_notes_under_the_setting_in_force(@ForAll long seed) {
    Random random = new Random(seed);
    Line line = Invented.line(20, 2, 30 + random.nextInt(60), i -> pitch(60 + random.nextInt(9)));
    PedalCourse course = PedalCourse.from(line, 0, 1);
    List<PedalCourse.PedalSetup> setups = course.upTo(course.last());
    for (int j = 0; j <= course.last(); j++) {
      int now = j;
      HarpPedals.Setting setting =
          setups.stream()
              .filter(s -> s.stroke() <= now)
              .reduce((a, b) -> b)
              .orElseThrow()
              .setting();
      boolean has = false;
      for (int pedal = 0; pedal < HarpPedals.PEDALS; pedal++) {
        has |= setting.uses(pedal, line.stroke(j).keys());
      }
      assertTrue(has, setups + " at " + j);
    }
  }
}
