package stafette.picture.ink;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import stafette.picture.ribbon.InventedRelays;
import stafette.picture.ribbon.StaffLines;
import stafette.picture.ribbon.TimelineTest;
import stafette.plan.Hocket;
import stafette.plan.Plan;

/** A drawing shown by a hand that knows nothing but lines and curves, as a canvas does. */
class HandTest {
  @Test
  void all_of_a_drawing_can_be_shown_with_paths_alone() {
    for (boolean notes : new boolean[] {false, true}) {
      Drawing drawing =
          InventedRelays.drawn(InventedRelays.hocket(Hocket.BEAT), Paper.SHEET, notes).get(0);
      PathsOnly hand = new PathsOnly();
      drawing.marks().forEach(mark -> mark.show(hand));
      assertEquals(TimelineTest.leaves(drawing.marks()).size(), hand.shown);
      Box sheet = new Box(0, 0, drawing.width(), drawing.height());
      assertTrue(hand.points.stream().allMatch(sheet::holds));
    }
  }

  @Test
  void whoever_points_at_a_place_is_told_which_segment_is_there() {
    Plan plan = InventedRelays.rotation(8, 3, 2);
    Drawing drawing = InventedRelays.drawn(plan, Paper.SHEET, true).get(0);
    Map<String, Box> extents = new TreeMap<>();
    for (Mark mark : drawing.marks()) {
      if (mark instanceof Mark.MarkGroup group) {
        extents.put(group.id().orElseThrow(), group.bounds());
        assertTrue(!group.title().isEmpty());
        double left = Double.parseDouble(group.data().getOrDefault("left", ""));
        double right = Double.parseDouble(group.data().getOrDefault("right", ""));
        assertTrue(left < right);
      }
    }
    for (int i = 1; i <= plan.segments().size(); i++) {
      Box segment = box(extents, "segment-" + i);
      String lane = "lane-" + (plan.segments().get(i - 1).player() + 1);
      boolean inLane =
          extents.entrySet().stream()
              .filter(entry -> entry.getKey().startsWith(lane))
              .anyMatch(entry -> overlapsInHeight(entry.getValue(), segment));
      assertTrue(inLane, "segment " + i);
    }
    assertTrue(box(extents, "handoff-1").height() > StaffLines.SPACE * 4);
    assertTrue(box(extents, "music-1").width() > 100);
  }

  private static Box box(Map<String, Box> extents, String id) {
    Box box = extents.get(id);
    if (box == null) {
      throw new AssertionError("no " + id + " in " + extents.keySet());
    }
    return box;
  }

  private static boolean overlapsInHeight(Box one, Box other) {
    return one.top() < other.bottom() && other.top() < one.bottom();
  }

  private static final class PathsOnly implements Mark.Hand, Path.Tracer {
    private final List<Box> points = new ArrayList<>();
    private int shown;

    @Override
    public void fill(Mark.Fill fill) {
      shown++;
      fill.path().trace(this);
    }

    @Override
    public void stroke(Mark.Outline stroke) {
      shown++;
      assertTrue(stroke.width() > 0);
      stroke.path().trace(this);
    }

    @Override
    public void words(Mark.Lettering words) {
      shown++;
      words.trace(this);
    }

    @Override
    public void group(Mark.MarkGroup group) {
      group.marks().forEach(mark -> mark.show(this));
    }

    @Override
    public void move(double x, double y) {
      points.add(new Box(x, y, x, y));
    }

    @Override
    public void line(double x, double y) {
      move(x, y);
    }

    @Override
    public void curve(double x1, double y1, double x2, double y2, double x, double y) {
      move(x, y);
    }

    @Override
    public void close() {}
  }
}
