package stafette.desktop.written;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import stafette.picture.notes.BarRow;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.Meter;

/** Bars broken into rows. */
class SystemsTest {
  private static final Bars BARS = Bars.regular(Meter.COMMON, 60);

  @Property(tries = 200)
  void every_bar_stands_once_in_order_in_a_row_of_neighbours_within_the_width(
      @ForAll @Size(min = 1, max = 30) java.util.Set<@IntRange(max = 59) Integer> chosen,
      @ForAll @DoubleRange(min = 300, max = 1500) double width,
      @ForAll @DoubleRange(min = 2, max = 60) double least) {
    List<Bar> bars = chosen.stream().sorted().map(BARS::get).toList();
    List<Bar> placed = new ArrayList<>();
    for (BarRow row : new Systems(bar -> 60, width, 9, (bar, opens) -> 0, least).of(bars)) {
      placed.addAll(row.bars());
      Bar first = row.bars().get(0);
      Bar last = row.bars().get(row.bars().size() - 1);
      assertEquals(row.bars().size() - 1, last.index() - first.index());
      assertTrue(row.right() <= width + 1e-6, row.right() + " beyond " + width);
    }
    assertEquals(bars, placed);
  }

  @Test
  void a_row_takes_as_many_bars_as_its_notes_have_room_for() {
    List<Bar> six = List.of(0, 1, 2, 3, 4, 5).stream().map(BARS::get).toList();
    // four quarters at 25 and 10 of lead: 110 a bar, four bars in 440 of 450
    List<BarRow> rows = new Systems(bar -> 50, 500, 10, (bar, opens) -> 0, 25).of(six);
    assertEquals(List.of(4, 2), rows.stream().map(row -> row.bars().size()).toList());
  }

  @Test
  void a_bar_too_wide_for_any_row_is_squeezed_into_one() {
    BarRow row =
        new Systems(bar -> 50, 200, 10, (bar, opens) -> 0, 80).of(List.of(BARS.get(0))).get(0);
    assertEquals(200, row.right(), 1e-9);
  }
}
