package stafette.picture.ribbon;

import java.util.List;
import stafette.picture.ink.Face;
import stafette.picture.ink.Paper;
import stafette.picture.ink.Piece;
import stafette.picture.notes.BarRow;
import stafette.picture.notes.BarRows;

/** The ribbon in rows, for pages that show other things too. */
public final class RibbonRows {
  private static final double LANE = 22;
  private static final double LEAST_NAMES = 40;
  private static final double MOST_NAMES = 110;
  private static final double AFTER_NAMES = 10;
  private static final double LEGEND = 32;

  private RibbonRows() {}

  /**
   * The rows of a relay.
   *
   * @param right where they end, in points; names begin at the margin of {@link Paper}
   * @param mostHeight no row is higher, as long as its lanes can be told apart
   * @param atAGlance in how much height all of them should stand, as long as they can be read
   */
  public static List<Piece> of(
      RelayContent relay, double right, double mostHeight, double atAGlance) {
    LaneLayout layout = new LaneLayout(relay, StaffLines.of(relay), false, mostHeight, LANE);
    double left = left(relay);
    BarRows breaking = new BarRows(relay.bars(), left, right - left, 0, (bar, opensRow) -> 0);
    return breaking.broken((int) (atAGlance / layout.plainHeight())).stream()
        .map(row -> piece(relay, row, layout.of(row)))
        .toList();
  }

  /** What the ribbon's shapes mean. */
  public static Piece legend(RelayContent relay) {
    return new Piece(LEGEND, top -> Legend.inTwoRows(relay, Paper.MARGIN, top));
  }

  private static Piece piece(RelayContent relay, BarRow row, Lanes lanes) {
    return new Piece(
        lanes.height(), top -> new RowDrawing(relay, row, lanes, top, List.of()).marks());
  }

  private static double left(RelayContent relay) {
    double names =
        relay.playing().stream()
            .mapToDouble(player -> Face.BOLD.width(relay.name(player), RowDrawing.NAME_SIZE))
            .max()
            .orElse(LEAST_NAMES);
    return Paper.MARGIN + Math.min(MOST_NAMES, Math.max(LEAST_NAMES, names)) + AFTER_NAMES;
  }
}
