package stafette.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.check.TempoWindow;
import stafette.check.Verdict;
import stafette.plan.Plan;

/**
 * The relay as one ribbon that runs through the players: bars and beats across, a lane for each
 * player who plays, wrapped into rows and pages.
 */
public final class Timeline {
  private static final double MOST_LANE = 29;
  private static final double LEAST_LANE = 8;
  private static final double HALF_SHARE = 0.215;
  private static final double RULER = 21;
  private static final double ROW_GAP = 13;
  private static final double LEAST_NAMES = 40;
  private static final double MOST_NAMES = 120;
  private static final double NAME_SIZE = 8.6;
  private static final double WIDE_POINTS_PER_QUARTER = 24;

  private final Relay relay;
  private final Paper paper;
  private final double lane;
  private final double left;

  private Timeline(Relay relay, Paper paper) {
    this.relay = relay;
    this.paper = paper;
    double room = paper.height() - 2 * Paper.MARGIN - Heading.HEIGHT - Legend.HEIGHT - RULER;
    lane = Math.max(LEAST_LANE, Math.min(MOST_LANE, room / relay.playing().size()));
    double names =
        relay.playing().stream()
            .mapToDouble(player -> Face.BOLD.width(relay.name(player), NAME_SIZE))
            .max()
            .orElse(LEAST_NAMES);
    left = Paper.MARGIN + Math.min(MOST_NAMES, Math.max(LEAST_NAMES, names)) + 10;
  }

  /**
   * Draws a plan.
   *
   * @param verdict what the judge says of that plan
   * @param window the tempi between which it holds, if it does
   * @return the pages, one only if the paper has none
   */
  public static List<Drawing> of(
      Plan plan, Verdict verdict, Optional<TempoWindow> window, Paper paper) {
    return new Timeline(Relay.of(plan, verdict, window), paper).pages();
  }

  private List<Drawing> pages() {
    double width = paper.width() - Paper.MARGIN - left;
    Rows breaking = new Rows(relay.bars(), left, width);
    List<Row> rows =
        paper == Paper.WIDE
            ? breaking.single(WIDE_POINTS_PER_QUARTER)
            : breaking.broken(rowsOn(firstTop()));
    List<List<Row>> pages = new ArrayList<>();
    int next = 0;
    while (next < rows.size()) {
      int most =
          paper.hasPages()
              ? Math.max(1, rowsOn(pages.isEmpty() ? firstTop() : Paper.MARGIN))
              : rows.size();
      int end = Math.min(rows.size(), next + most);
      pages.add(rows.subList(next, end));
      next = end;
    }
    return IntStream.range(0, pages.size()).mapToObj(i -> page(pages, i)).toList();
  }

  private static double firstTop() {
    return Paper.MARGIN + Heading.HEIGHT;
  }

  private int rowsOn(double top) {
    double room = paper.height() - Paper.MARGIN - Legend.HEIGHT - top;
    return (int) Math.floor((room + ROW_GAP) / (rowHeight() + ROW_GAP) + 1e-9);
  }

  private double rowHeight() {
    return RULER + lane * relay.playing().size();
  }

  private Drawing page(List<List<Row>> pages, int index) {
    List<Row> rows = pages.get(index);
    double top = index == 0 ? firstTop() : Paper.MARGIN;
    double end = top + rows.size() * (rowHeight() + ROW_GAP) - ROW_GAP;
    double height =
        paper.hasPages() ? paper.height() : end + ROW_GAP + Legend.HEIGHT + Paper.MARGIN;
    double right = Math.max(paper.width() - Paper.MARGIN, rows.get(0).right());
    List<Mark> marks = new ArrayList<>();
    if (index == 0) {
      marks.addAll(Heading.of(relay, Paper.MARGIN, right, Paper.MARGIN));
    }
    for (int i = 0; i < rows.size(); i++) {
      double y = top + i * (rowHeight() + ROW_GAP);
      marks.addAll(new RowDrawing(relay, rows.get(i), lanes(), lane * HALF_SHARE, y).marks());
    }
    double foot = height - Paper.MARGIN - Legend.HEIGHT + 4;
    marks.addAll(Legend.of(relay, Paper.MARGIN, right - 40, foot));
    if (pages.size() > 1) {
      marks.add(pageNumber(index + 1, pages.size(), right, height - Paper.MARGIN));
    }
    return new Drawing(right + Paper.MARGIN, height, Heading.title(relay), marks);
  }

  private static Mark pageNumber(int page, int of, double right, double y) {
    String text = page + "/" + of;
    double size = 7.4;
    return new Mark.Words(
        text, right - Face.PLAIN.width(text, size), y - 3, size, Face.PLAIN, Ink.SOFT);
  }

  private List<Lane> lanes() {
    List<Integer> players = relay.playing();
    return IntStream.range(0, players.size())
        .mapToObj(i -> new Lane(players.get(i), RULER + lane * (i + 0.5)))
        .toList();
  }
}
