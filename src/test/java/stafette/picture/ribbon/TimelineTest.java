package stafette.picture.ribbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stafette.check.Judge;
import stafette.check.RandomPlans;
import stafette.check.StrainCourse;
import stafette.check.TempoWindow;
import stafette.picture.ink.Box;
import stafette.picture.ink.Drawing;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Paper;
import stafette.plan.Hocket;
import stafette.plan.Pattern;
import stafette.plan.Plan;

/** The layout: what stands where, on all papers. */
public class TimelineTest {
  private static final double PAPER_EDGE = Paper.MARGIN - 3;

  /** A plan that stands at its fastest tempo: the gauge's drop is at the very end. */
  @Example
  void a_drop_at_the_end_of_the_gauge_stays_within_the_margins() {
    nothing_reaches_beyond_the_margins_of_any_paper(3586, Paper.A4, true);
  }

  /** A short rest at the very end of the last bar. */
  @Example
  void a_rest_at_the_end_of_a_bar_stays_before_the_bar_line() {
    nothing_reaches_beyond_the_margins_of_any_paper(39, Paper.WIDE, true);
  }

  @Property(tries = 40)
  void nothing_reaches_beyond_the_margins_of_any_paper(
      @ForAll long seed, @ForAll Paper paper, @ForAll boolean notes) {
    for (Drawing page : drawn(RandomPlans.any(seed), paper, notes)) {
      Box inside =
          new Box(PAPER_EDGE, PAPER_EDGE, page.width() - PAPER_EDGE, page.height() - PAPER_EDGE);
      for (Mark mark : leaves(page.marks())) {
        assertTrue(inside.holds(mark.bounds()), () -> mark + " " + mark.bounds());
      }
    }
  }

  @Property(tries = 60)
  void no_words_touch_other_words(@ForAll long seed, @ForAll Paper paper) {
    for (Drawing page : drawn(RandomPlans.any(seed), paper, false)) {
      List<Box> words =
          leaves(page.marks()).stream()
              .filter(mark -> mark instanceof Mark.Lettering)
              .map(Mark::bounds)
              .toList();
      for (int i = 0; i < words.size(); i++) {
        for (int j = 0; j < i; j++) {
          Box one = words.get(i);
          Box other = words.get(j);
          assertTrue(!one.overlaps(other), () -> one + " " + other);
        }
      }
    }
  }

  @Property(tries = 60)
  void each_segment_and_each_handoff_is_there_once_by_its_name(@ForAll long seed) {
    Plan plan = RandomPlans.any(seed);
    List<String> names = new ArrayList<>();
    for (Drawing page : drawn(plan, Paper.SHEET, false)) {
      groups(page.marks()).forEach(group -> group.id().ifPresent(names::add));
    }
    for (int i = 1; i <= plan.segments().size(); i++) {
      assertEquals(1, java.util.Collections.frequency(names, "segment-" + i));
    }
    for (int i = 1; i <= plan.handoffs().size(); i++) {
      assertEquals(1, java.util.Collections.frequency(names, "handoff-" + i));
    }
  }

  @Test
  void a_segment_stands_where_its_strokes_are() {
    Plan plan = InventedRelays.rotation(4, 2, 2);
    Drawing page = drawn(plan, Paper.SHEET, false).get(0);
    Map<String, String> first = group(page, "segment-1").data();
    Map<String, String> second = group(page, "segment-2").data();
    Map<String, String> handoff = group(page, "handoff-1").data();
    double left = Double.parseDouble(first.get("left"));
    double end = Double.parseDouble(second.get("right"));
    double perStroke = (end - left) / 96;
    assertEquals("1.1", first.get("from"));
    assertEquals("3.1", first.get("to"));
    assertEquals("0", first.get("first"));
    assertEquals("48", first.get("last"));
    assertEquals(left + 49 * perStroke, Double.parseDouble(first.get("right")), 0.02);
    assertEquals(left + 48 * perStroke, Double.parseDouble(second.get("left")), 0.02);
    assertEquals(second.get("left"), handoff.get("left"));
    assertEquals(first.get("right"), handoff.get("right"));
    Box ink = group(page, "segment-1").marks().get(0).bounds();
    assertEquals(left, ink.left(), 0.02);
    assertEquals(left + 49 * perStroke, ink.right(), 0.02);
  }

  @Test
  void two_hundred_bars_are_seen_at_a_glance_on_a_sheet_and_two_pages_of_paper() {
    Plan plan = InventedRelays.rotation(200, 3, 5);
    List<Drawing> sheet = drawn(plan, Paper.SHEET, false);
    assertEquals(1, sheet.size());
    assertTrue(sheet.get(0).height() < 1.25 * sheet.get(0).width());
    assertTrue(drawn(plan, Paper.A4, false).size() <= 2);
    assertTrue(drawn(plan, Paper.LETTER, false).size() <= 2);
  }

  @Test
  void pages_have_the_size_of_their_paper_and_say_which_they_are() {
    List<Drawing> pages = drawn(InventedRelays.rotation(30, 3, 5), Paper.LETTER, true);
    assertTrue(pages.size() > 2);
    for (int i = 0; i < pages.size(); i++) {
      assertEquals(792, pages.get(i).width(), 1e-6);
      assertEquals(612, pages.get(i).height(), 1e-6);
      assertTrue(words(pages.get(i)).contains((i + 1) + "/" + pages.size()));
    }
  }

  @Test
  void the_wide_sheet_has_all_bars_in_one_row() {
    Drawing page = drawn(InventedRelays.rotation(60, 3, 5), Paper.WIDE, false).get(0);
    assertEquals(1, words(page).stream().filter("Player 1"::equals).count());
    assertTrue(page.width() > 4000);
  }

  @Test
  void both_lanes_of_a_hocket_are_inked_in_turns() {
    Plan plan = InventedRelays.hocket(Hocket.BEAT);
    Drawing page = drawn(plan, Paper.SHEET, false).get(0);
    List<Box> odd = fills(group(page, "segment-2"));
    List<Box> even = fills(group(page, "segment-3"));
    assertEquals(7, odd.size());
    assertEquals(6, even.size());
    for (int i = 0; i < even.size(); i++) {
      assertTrue(odd.get(i).right() <= even.get(i).left() + 0.02);
      assertTrue(even.get(i).right() <= odd.get(i + 1).left() + 0.02);
      assertTrue(odd.get(i).bottom() < even.get(i).top());
    }
  }

  @Test
  void relays_that_run_together_have_a_ribbon_each() {
    Plan plan = InventedRelays.doubled();
    Drawing page = drawn(plan, Paper.SHEET, false).get(0);
    assertEquals(
        group(page, "segment-1").data().get("left"), group(page, "segment-3").data().get("left"));
    assertEquals("Player 3", group(page, "handoff-2").data().get("leaves"));
    assertEquals("6.1", group(page, "handoff-2").data().get("from"));
  }

  @Test
  void the_ribbon_gets_darker_with_strain_and_closes_where_the_limit_is_passed() {
    double before = 0;
    for (double strain = 0; strain <= 1; strain += 0.05) {
      assertTrue(Ribbon.darkness(strain) > before);
      before = Ribbon.darkness(strain);
    }
    assertTrue(before < 1);
    assertTrue(Ribbon.darkness(1.01) >= 1);
  }

  @Property(tries = 60)
  void the_strain_along_a_segment_is_highest_where_the_judge_says(@ForAll long seed) {
    Plan plan = RandomPlans.any(seed);
    List<List<Double>> courses = StrainCourse.of(plan);
    for (int i = 0; i < courses.size(); i++) {
      double highest = courses.get(i).stream().mapToDouble(strain -> strain).max().orElseThrow();
      assertEquals(plan.played(plan.segments().get(i)).strokes(), courses.get(i).size());
      assertEquals(Judge.judge(plan).segments().get(i).strain(), highest, 1e-12);
    }
  }

  @Test
  void the_strain_of_a_hocket_follows_the_strokes_that_its_player_plays() {
    Plan plan = InventedRelays.hocket(Hocket.STROKE);
    assertEquals(Pattern.ODD, plan.segments().get(1).pattern());
    assertEquals(25, StrainCourse.of(plan).get(1).size());
    assertEquals(24, StrainCourse.of(plan).get(2).size());
  }

  private static List<Drawing> drawn(Plan plan, Paper paper, boolean notes) {
    return Timeline.of(
        RelayContent.of(plan, Judge.judge(plan), TempoWindow.of(plan)), paper, notes);
  }

  static List<String> words(Drawing page) {
    return leaves(page.marks()).stream()
        .filter(mark -> mark instanceof Mark.Lettering)
        .map(mark -> ((Mark.Lettering) mark).text())
        .toList();
  }

  private static List<Box> fills(Mark.MarkGroup group) {
    return group.marks().stream()
        .filter(mark -> mark instanceof Mark.Fill)
        .map(Mark::bounds)
        .toList();
  }

  private static Mark.MarkGroup group(Drawing page, String id) {
    return groups(page.marks()).stream()
        .filter(group -> group.id().equals(Optional.of(id)))
        .findFirst()
        .orElseThrow();
  }

  private static List<Mark.MarkGroup> groups(List<Mark> marks) {
    return marks.stream()
        .filter(mark -> mark instanceof Mark.MarkGroup)
        .map(mark -> (Mark.MarkGroup) mark)
        .toList();
  }

  public static List<Mark> leaves(List<Mark> marks) {
    List<Mark> leaves = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark instanceof Mark.MarkGroup group) {
        leaves.addAll(leaves(group.marks()));
      } else {
        leaves.add(mark);
      }
    }
    return leaves;
  }
}
