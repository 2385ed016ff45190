package stafette.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import stafette.check.Verdict;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.time.Bar;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Span;

/**
 * What one player of a plan plays, as music on staffs of its own: the bars in which it plays or
 * listens for its entry, what is heard before an entry in grey, the score's own passages hatched.
 */
public final class PlayerMusic {
  private static final double SPACE = 4.4;
  private static final double HATCHED_BEYOND = 1;

  private final Relay relay;
  private final int player;
  private final StaffLines staffs;
  private final List<Cues.Cue> cues;
  private final double left;
  private final double right;

  private PlayerMusic(Relay relay, int player, double left, double right) {
    this.relay = relay;
    this.player = player;
    this.left = left;
    this.right = right;
    StaffLines usual = StaffLines.sized(relay, SPACE);
    staffs = usual.fitting(right - left - usual.headerWidth());
    cues = Cues.of(relay.plan(), player);
  }

  /**
   * The music of a player.
   *
   * @param left where staffs begin, in points
   * @param right where they end at most
   */
  public static PlayerMusic of(Plan plan, Verdict verdict, int player, double left, double right) {
    return new PlayerMusic(Relay.of(plan, verdict, Optional.empty()), player, left, right);
  }

  /**
   * One staff across the page.
   *
   * @param row its bars and where times stand
   * @param extent of all its ink, with the highest line of the staff at zero
   * @param piece its marks; the top is the highest line of the staff
   */
  public record Staffed(Row row, Box extent, Piece piece) {}

  /** Bars that follow one another and have something to be read, stretch by stretch. */
  public List<List<Bar>> stretches() {
    TreeSet<Integer> indexes = new TreeSet<>();
    for (Played played : plays()) {
      for (int j = played.first(); j <= played.last(); j++) {
        indexes.add(bar(played.line().stroke(j).onset()).index());
      }
    }
    cues.forEach(cue -> indexes.add(bar(cue.span().start()).index()));
    List<List<Bar>> stretches = new ArrayList<>();
    for (int index : indexes) {
      if (!indexes.contains(index - 1)) {
        stretches.add(new ArrayList<>());
      }
      stretches.get(stretches.size() - 1).add(relay.line().bars().get(index));
    }
    return stretches;
  }

  /** A stretch on as many staffs as it takes. */
  public List<Staffed> staffed(List<Bar> stretch) {
    double start = left + staffs.headerWidth();
    Rows rows = new Rows(stretch, start, right - start, staffs.lead(), staffs::signs);
    return rows.spaced(staffs.pointsPerQuarter()).stream().map(this::staffed).toList();
  }

  private Staffed staffed(Row broken) {
    Row row = flush(broken);
    Box extent =
        marks(row, 0).stream().map(Mark::bounds).reduce(Box::with).orElse(new Box(0, 0, 0, 0));
    return new Staffed(row, extent, new Piece(extent.height(), top -> marks(row, top)));
  }

  /** The same row with its own signs at the left edge, and ending where it did. */
  private Row flush(Row row) {
    Engraver.Music music = music(row, List.of(), List.of());
    Staff staff = staffs.staff(player, row.span(), 0);
    double start = left + Engraver.headerWidth(music, staff, row.span().start());
    double quarters = row.span().length().quarters().toDouble();
    double wider = row.pointsPerQuarter() + (row.left() - start) / quarters;
    return new Row(row.bars(), start, wider, row.lead(), row.signs());
  }

  private List<Mark> marks(Row row, double top) {
    Staff staff = staffs.staff(player, row.span(), top);
    List<Span> given = staffs.given(relay.plan().brief().players().get(player), row.bars());
    List<Mark> marks = new ArrayList<>();
    for (Span span : given) {
      double end = row.x(span.start()) + width(row, span) - row.lead();
      double above = staff.top() - HATCHED_BEYOND;
      Box box = new Box(row.x(span.start()), above, end, staff.bottom() + HATCHED_BEYOND);
      marks.addAll(Hatching.of(box));
    }
    List<Span> silent = new ArrayList<>(given);
    for (Cues.Cue cue : cues) {
      if (cue.span().overlaps(row.span())) {
        marks.addAll(heard(cue, row, staff));
        silent.add(cue.span());
      }
    }
    marks.addAll(Engraver.marks(music(row, plays(), silent), staff, row));
    return marks;
  }

  private static double width(Row row, Span span) {
    return span.length().quarters().toDouble() * row.pointsPerQuarter();
  }

  private List<Mark> heard(Cues.Cue cue, Row row, Staff staff) {
    Span span = row.span();
    List<Span> silent = new ArrayList<>();
    if (span.start().isBefore(cue.span().start())) {
      silent.add(new Span(span.start(), cue.span().start()));
    }
    if (cue.span().end().isBefore(span.end())) {
      silent.add(new Span(cue.span().end(), span.end()));
    }
    double from = row.xWithin(cue.span().start()) - row.lead();
    double to = row.xWithin(cue.span().end());
    return Greyed.of(
        Engraver.marks(music(row, cue.plays(), silent), staff, row).stream()
            .filter(mark -> mark.bounds().left() >= from && mark.bounds().right() <= to)
            .toList());
  }

  private Engraver.Music music(Row row, List<Played> plays, List<Span> silent) {
    Engraver.Music usual = staffs.music(player, List.of());
    return new Engraver.Music(plays, silent, usual.keys(), newMeter(row.bars().get(0)));
  }

  /** The first staff of all has a time signature, and any at which it changes. */
  private Optional<Meter> newMeter(Bar bar) {
    boolean isNew =
        bar.equals(stretches().get(0).get(0))
            || !relay.line().bars().get(bar.index() - 1).meter().equals(bar.meter());
    return isNew ? Optional.of(bar.meter()) : Optional.empty();
  }

  private List<Played> plays() {
    return relay.plan().segmentsOf(player).stream().map(relay.plan()::played).toList();
  }

  private Bar bar(Position position) {
    return relay.line().bars().at(position);
  }
}
