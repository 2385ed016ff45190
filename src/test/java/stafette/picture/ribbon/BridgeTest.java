package stafette.picture.ribbon;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import stafette.picture.ink.Box;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;

/** The way of the ribbon past music. */
class BridgeTest {
  @Property(tries = 200)
  void edges_never_cross_notes_whichever_way_they_go(
      @ForAll @DoubleRange(min = 0, max = 100) double first,
      @ForAll @DoubleRange(min = 0, max = 100) double second,
      @ForAll boolean down) {
    Bridge bridge = new Bridge(100, 108, down ? 0 : 200, down ? 200 : 0, 4, 3, 3);
    List<Box> notes =
        List.of(
            new Box(95, 20 + first, 103, 40 + first), new Box(102, 30 + second, 120, 45 + second));
    List<Box> lines = uprights(bridge.edges(notes));
    assertTrue(lines.size() >= 2, "edges are seen between the notes");
    assertClear(lines, notes);
  }

  @Property(tries = 200)
  void threads_and_roundings_never_cross_notes(
      @ForAll @DoubleRange(min = 0, max = 150) double down,
      @ForAll @DoubleRange(min = -60, max = 60) double along) {
    Bridge bridge = new Bridge(100, 140, 0, 200, 4, 30, 30);
    List<Box> notes =
        List.of(
            new Box(100 + along, 2 + down, 130 + along, 25 + down),
            new Box(95, 0, 105, 40),
            new Box(135, 160, 150, 200));
    assertClear(uprights(bridge.thread(notes)), notes);
    assertClear(uprights(bridge.edges(notes)), notes);
  }

  private static void assertClear(List<Box> lines, List<Box> notes) {
    for (Box line : lines) {
      assertTrue(
          notes.stream().noneMatch(line.grownBy(0.01)::overlaps), line + " crosses " + notes);
    }
  }

  @Property(tries = 1)
  void where_no_music_is_in_the_way_edges_go_through() {
    List<Box> lines = uprights(new Bridge(100, 108, 0, 200, 4, 3, 3).edges(List.of()));
    assertFalse(lines.isEmpty());
    assertTrue(lines.stream().allMatch(line -> line.height() > 180));
  }

  /** The straight lines of some outlines. */
  private static List<Box> uprights(List<Mark> marks) {
    List<Box> lines = new ArrayList<>();
    for (Mark mark : marks) {
      ((Mark.Outline) mark)
          .path()
          .trace(
              new Path.Tracer() {
                private double x;
                private double y;

                @Override
                public void move(double toX, double toY) {
                  x = toX;
                  y = toY;
                }

                @Override
                public void line(double toX, double toY) {
                  lines.add(
                      new Box(
                          Math.min(x, toX), Math.min(y, toY), Math.max(x, toX), Math.max(y, toY)));
                  move(toX, toY);
                }

                @Override
                public void curve(
                    double x1, double y1, double x2, double y2, double toX, double toY) {
                  move(toX, toY);
                }

                @Override
                public void close() {}
              });
    }
    return lines;
  }
}
