package stafette.plan.written;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Articulation;
import stafette.score.Stroke;

/**
 * How many strokes of a passage others play too, where they leave and where they enter.
 *
 * @param entering from its first on, with who leaves
 * @param leaving up to its last, with who enters
 */
public record Overlaps(int entering, int leaving) {
  public static final Overlaps NONE = new Overlaps(0, 0);

  /** Notes over which who leaves fades. */
  private static final int LONG = 3;

  public static Overlaps of(Plan plan, Segment segment) {
    int entering = 0;
    int leaving = 0;
    for (Handoff handoff : plan.handoffs()) {
      if (handoff.enters().segments().contains(segment)) {
        entering = Math.max(entering, handoff.shared());
      }
      if (handoff.leaves().segments().contains(segment)) {
        leaving = Math.max(leaving, handoff.shared());
      }
    }
    return new Overlaps(entering, leaving);
  }

  /** A stroke as who enters plays it there: who leaves keeps the accent. */
  public Stroke entered(Stroke stroke) {
    Set<Articulation> marks = EnumSet.noneOf(Articulation.class);
    stroke.articulations().stream().filter(mark -> !mark.accents()).forEach(marks::add);
    return stroke.marked(marks);
  }

  /** Of a passage of so many strokes the first over which the player fades, if it does. */
  public Optional<Integer> fadesFrom(int strokes) {
    return leaving >= LONG ? Optional.of(Math.max(0, strokes - leaving)) : Optional.empty();
  }
}
