package stafette.picture.ribbon;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.picture.ink.Box;
import stafette.picture.ink.Mark;
import stafette.picture.notes.BarRow;

/** How high the lanes of rows are: evenly, or as the music under the ribbon needs. */
final class LaneLayout {
  private static final double LEAST_LANE = 8;
  private static final double HALF_SHARE = 0.2;
  private static final double NOTED_HALF = 4.4;
  private static final double NOTED_GAP = 5;
  private static final double RIBBON_DOWN = 13.5;
  private static final double RESTING_LANE = 23;

  private final RelayContent relay;
  private final StaffLines staffs;
  private final boolean notes;
  private final double lane;

  /**
   * A layout.
   *
   * @param room how high a row may be
   * @param mostLane how high a lane may be at most
   */
  LaneLayout(RelayContent relay, StaffLines staffs, boolean notes, double room, double mostLane) {
    this.relay = relay;
    this.staffs = staffs;
    this.notes = notes;
    double even = (room - Lanes.RULER) / relay.playing().size();
    lane = Math.max(LEAST_LANE, Math.min(mostLane, even));
  }

  /** How high a row without music is. */
  double plainHeight() {
    return Lanes.RULER + lane * relay.playing().size();
  }

  Lanes of(BarRow row) {
    return notes ? noted(row) : plain();
  }

  private Lanes plain() {
    List<Lane> lanes = new ArrayList<>();
    double y = Lanes.RULER + lane / 2;
    for (int player : relay.playing()) {
      lanes.add(new Lane(player, y, Optional.empty()));
      y += lane;
    }
    return new Lanes(lanes, lane * HALF_SHARE, Lanes.RULER, plainHeight(), 0, 0);
  }

  private Lanes noted(BarRow row) {
    List<Lane> lanes = new ArrayList<>();
    double top = Lanes.RULER;
    double signs = staffs.headerWidth();
    for (int player : relay.playing()) {
      double y = top + RIBBON_DOWN;
      if (staffs.plays(player, row)) {
        Box ink = extent(player, row);
        double staff = y + NOTED_HALF + NOTED_GAP - ink.top();
        lanes.add(new Lane(player, y, Optional.of(staff)));
        top = staff + ink.bottom() + NOTED_GAP;
      } else {
        lanes.add(new Lane(player, y, Optional.empty()));
        top += RESTING_LANE;
      }
    }
    return new Lanes(lanes, NOTED_HALF, Lanes.RULER, top, signs, 4 * staffs.space());
  }

  /** What a staff with its top line at zero takes above and below. */
  private Box extent(int player, BarRow row) {
    return staffs.marks(player, row, 0).stream()
        .map(Mark::bounds)
        .reduce(Box::with)
        .orElse(new Box(0, 0, 0, 0));
  }
}
