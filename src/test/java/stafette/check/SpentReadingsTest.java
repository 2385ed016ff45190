package stafette.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import stafette.desktop.ShownRelays;
import stafette.plan.Plan;
import stafette.plan.Segment;

/** The courses of tiredness and breath say the same as the reports do. */
class SpentReadingsTest {
  @Property(tries = 10)
  void the_highest_reading_in_a_segment_is_what_its_report_says(
      @ForAll @IntRange(min = 2, max = 8) int pairs) {
    Plan plan = ShownRelays.plan(2 * pairs);
    List<SpentReadings> reserves = SpentReadings.of(plan);
    for (SegmentReport report : Judge.effort(plan)) {
      Segment segment = report.segment();
      SpentReadings of = reserves.get(segment.player());
      long from = plan.line().onsetMicros(segment.first());
      long to = plan.line().endMicros(segment.last());
      assertEquals(report.tiredness(), highest(of.tiredness(), from, to), 1e-9);
      assertEquals(report.breath(), highest(of.breath(), from, to), 1e-9);
    }
  }

  private static double highest(List<SpentReadings.ReserveReading> readings, long from, long to) {
    return readings.stream()
        .filter(reading -> reading.micros() >= from && reading.micros() <= to)
        .mapToDouble(SpentReadings.ReserveReading::spent)
        .max()
        .orElse(0);
  }

  @Test
  void readings_run_forward_and_instruments_without_breath_have_none_of_it() {
    List<SpentReadings> reserves = SpentReadings.of(ShownRelays.plan(8));
    for (SpentReadings of : reserves) {
      for (int i = 1; i < of.breath().size(); i++) {
        assertTrue(of.breath().get(i - 1).micros() <= of.breath().get(i).micros());
      }
    }
    assertTrue(reserves.get(2).breath().isEmpty());
  }
}
