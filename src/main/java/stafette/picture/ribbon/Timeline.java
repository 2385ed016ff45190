package stafette.picture.ribbon;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import stafette.picture.ink.Box;
import stafette.picture.ink.Drawing;
import stafette.picture.ink.Face;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Paper;
import stafette.picture.notes.BarRow;
import stafette.picture.notes.BarRows;

/**
 * The relay as one ribbon that runs through the players: bars and beats across, a lane for each
 * player who plays, wrapped into rows and pages. A row too high for its page makes the page higher.
 */
public final class Timeline {
  private static final double PAGE_LANE = 29;
  private static final double SHEET_LANE = 34;
  private static final double ROW_GAP = 14;
  private static final double LEAST_NAMES = 40;
  private static final double MOST_NAMES = 120;
  private static final double WIDE_POINTS_PER_QUARTER = 24;
  private static final double FOOT = Paper.MARGIN + Legend.HEIGHT;

  private final RelayContent relay;
  private final Paper paper;
  private final boolean notes;
  private final StaffLines staffs;
  private final LaneLayout lanes;
  private final double left;

  private Timeline(RelayContent relay, Paper paper, boolean notes) {
    this.relay = relay;
    this.paper = paper;
    this.notes = notes;
    StaffLines usual = StaffLines.of(relay);
    double most = paper.width() - Paper.MARGIN - left(relay, usual, notes);
    staffs = paper == Paper.WIDE ? usual : usual.fitting(most);
    lanes =
        new LaneLayout(
            relay,
            staffs,
            notes,
            paper.height() - firstTop() - FOOT,
            paper.hasPages() ? PAGE_LANE : SHEET_LANE);
    left = left(relay, staffs, notes);
  }

  /** Where rows begin: after names, bracket and signs. */
  private static double left(RelayContent relay, StaffLines staffs, boolean notes) {
    double names =
        relay.playing().stream()
            .mapToDouble(player -> Face.BOLD.width(relay.name(player), RowDrawing.NAME_SIZE))
            .max()
            .orElse(LEAST_NAMES);
    double signs = notes ? staffs.headerWidth() : 0;
    return Paper.MARGIN + Math.min(MOST_NAMES, Math.max(LEAST_NAMES, names)) + 10 + signs;
  }

  /**
   * Draws a plan.
   *
   * @param notes whether each segment is written as music too
   * @return the pages, one only if the paper has none
   */
  public static List<Drawing> of(RelayContent relay, Paper paper, boolean notes) {
    return new Timeline(relay, paper, notes).pages();
  }

  private static double firstTop() {
    return Paper.MARGIN + Heading.HEIGHT;
  }

  /** A row with its lanes, and where its top is on the page. */
  private record Placed(BarRow row, Lanes lanes, double top) {
    double bottom() {
      return top + lanes.height();
    }
  }

  private List<Drawing> pages() {
    List<List<Placed>> pages = new ArrayList<>();
    List<Placed> page = new ArrayList<>();
    double top = firstTop();
    for (BarRow row : rows()) {
      Lanes own = lanes.of(row);
      boolean full = top + own.height() > paper.height() - FOOT;
      if (paper.hasPages() && full && !page.isEmpty()) {
        pages.add(page);
        page = new ArrayList<>();
        top = Paper.MARGIN;
      }
      page.add(new Placed(row, own, top));
      top += own.height() + ROW_GAP;
    }
    pages.add(page);
    return IntStream.range(0, pages.size())
        .mapToObj(i -> drawing(pages.get(i), i, pages.size()))
        .toList();
  }

  private List<BarRow> rows() {
    BarRows breaking =
        new BarRows(
            relay.bars(),
            left,
            paper.width() - Paper.MARGIN - left,
            notes ? staffs.lead() : 0,
            notes ? staffs::signs : (bar, opensRow) -> 0);
    double spacing = notes ? staffs.pointsPerQuarterWithRests() : 0;
    if (paper == Paper.WIDE) {
      return breaking.single(Math.max(spacing, WIDE_POINTS_PER_QUARTER));
    }
    double room = paper.height() - firstTop() - FOOT + ROW_GAP;
    int atAGlance = (int) Math.floor(room / (lanes.plainHeight() + ROW_GAP) + 1e-9);
    return notes ? breaking.spaced(spacing) : breaking.broken(atAGlance);
  }

  private Drawing drawing(List<Placed> rows, int index, int pages) {
    double end = rows.get(rows.size() - 1).bottom();
    double needed = end + ROW_GAP + FOOT;
    double height = paper.hasPages() ? Math.max(paper.height(), needed - ROW_GAP) : needed;
    double right = paper.width() - Paper.MARGIN;
    for (Placed placed : rows) {
      right = Math.max(right, placed.row().right());
    }
    List<Mark> marks = new ArrayList<>();
    if (index == 0) {
      marks.addAll(Heading.of(relay, Paper.MARGIN, right, Paper.MARGIN));
    }
    for (Placed placed : rows) {
      RowDrawing row =
          new RowDrawing(relay, placed.row(), placed.lanes(), placed.top(), ink(placed));
      marks.addAll(row.marks());
      marks.addAll(music(placed, row));
    }
    marks.addAll(Legend.of(relay, Paper.MARGIN, right - 30, height - FOOT + 4));
    if (pages > 1) {
      marks.add(pageNumber(index + 1, pages, right, height - Paper.MARGIN));
    }
    return new Drawing(right + Paper.MARGIN, height, Heading.title(relay), marks);
  }

  /** Where notes and rests are. */
  private List<Box> ink(Placed placed) {
    return placed.lanes().lanes().stream()
        .flatMap(
            lane ->
                lane
                    .staffTop()
                    .map(
                        staff ->
                            staffs.notesAndRests(lane.player(), placed.row(), placed.top() + staff))
                    .stream())
        .flatMap(List::stream)
        .map(Mark::bounds)
        .toList();
  }

  private List<Mark> music(Placed placed, RowDrawing row) {
    List<Mark> marks = new ArrayList<>();
    for (Lane lane : placed.lanes().lanes()) {
      lane.staffTop()
          .map(staff -> staffs.marks(lane.player(), placed.row(), placed.top() + staff))
          .map(written -> row.music(lane.player(), written))
          .ifPresent(marks::add);
    }
    return marks;
  }

  private static Mark pageNumber(int page, int of, double right, double y) {
    String text = page + "/" + of;
    double size = 7.4;
    return new Mark.Lettering(
        text, right - Face.PLAIN.width(text, size), y - 3, size, Face.PLAIN, Ink.SOFT);
  }
}
