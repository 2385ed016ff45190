package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import stafette.check.Verdict;
import stafette.picture.ink.Box;
import stafette.picture.ink.Greyed;
import stafette.picture.ink.Hatching;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Piece;
import stafette.picture.notes.BarRow;
import stafette.picture.notes.Engraver;
import stafette.picture.notes.NoteRoom;
import stafette.picture.notes.Staff;
import stafette.picture.ribbon.RelayContent;
import stafette.picture.ribbon.StaffLines;
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
  private static final double LEAST_SPACE = 2;
  private static final double LEAST_PER_QUARTER = 14;
  private static final double MOST_STRETCH = 1.6;
  private static final double HATCHED_BEYOND = 1;

  private final RelayContent relay;
  private final int player;
  private final StaffLines staffs;
  private final List<Cues.Cue> cues;
  private final List<Span> written;
  private final List<List<Bar>> stretches;
  private final List<NoteRoom> rooms;
  private final Map<Integer, Double> perQuarters = new HashMap<>();
  private final double left;
  private final double right;

  private PlayerMusic(RelayContent relay, int player, double space, double left, double right) {
    this.relay = relay;
    this.player = player;
    this.left = left;
    this.right = right;
    staffs = StaffLines.sized(relay, space);
    rooms = staffs.rooms(player);
    cues = Cues.of(relay.plan(), player);
    stretches = found();
    written =
        Stream.concat(
                relay.plan().segmentsOf(player).stream().map(relay::span),
                cues.stream().map(Cues.Cue::span))
            .toList();
  }

  /**
   * The music of a player.
   *
   * @param space from line to line of a staff, in points; less where a bar is too long for the page
   * @param left where staffs begin, in points
   * @param right where they end at most
   */
  public static PlayerMusic of(
      Plan plan, Verdict verdict, int player, double space, double left, double right) {
    RelayContent relay = RelayContent.of(plan, verdict, Optional.empty());
    PlayerMusic usual = new PlayerMusic(relay, player, space, left, right);
    double share = (right - left) / usual.widestBar();
    return share >= 1
        ? usual
        : new PlayerMusic(relay, player, Math.max(LEAST_SPACE, space * share), left, right);
  }

  /**
   * One staff across the page.
   *
   * @param row its bars and where times stand
   * @param extent of all its ink, with the highest line of the staff at zero
   * @param piece its marks; the top is the highest line of the staff
   */
  public record Staffed(BarRow row, Box extent, Piece piece) {}

  /**
   * Bars that follow one another and have something to be read, stretch by stretch; a single empty
   * bar between them belongs to the stretch.
   */
  public List<List<Bar>> stretches() {
    return stretches;
  }

  private List<List<Bar>> found() {
    TreeSet<Integer> indexes = new TreeSet<>();
    for (Played played : plays()) {
      for (int j = played.first(); j <= played.last(); j++) {
        indexes.add(bar(played.line().stroke(j).onset()).index());
      }
    }
    cues.forEach(cue -> indexes.add(bar(cue.span().start()).index()));
    List<List<Bar>> found = new ArrayList<>();
    int next = -1;
    for (int index : indexes) {
      boolean goesOn = !found.isEmpty() && index <= next + 1;
      List<Bar> stretch = goesOn ? found.get(found.size() - 1) : new ArrayList<>();
      if (!goesOn) {
        found.add(stretch);
        next = index;
      }
      for (; next <= index; next++) {
        stretch.add(relay.line().bars().get(next));
      }
    }
    return found;
  }

  /** A stretch on as many staffs as it takes. */
  public List<Staffed> staffed(List<Bar> stretch) {
    List<Staffed> result = new ArrayList<>();
    int first = 0;
    for (int end = 1; end <= stretch.size(); end++) {
      boolean last = end == stretch.size();
      if (last || !fits(stretch.subList(first, end + 1))) {
        result.add(staffed(row(stretch.subList(first, end), last)));
        first = end;
      }
    }
    return result;
  }

  private boolean fits(List<Bar> bars) {
    return perQuarter(bars) * quarters(bars) <= room(bars);
  }

  /** As wide as the page, but the last of a stretch is not stretched beyond what can be read. */
  private BarRow row(List<Bar> bars, boolean last) {
    double full = room(bars) / quarters(bars);
    double most = MOST_STRETCH * perQuarter(bars);
    Map<Integer, Double> signs = new HashMap<>();
    bars.forEach(bar -> signs.put(bar.index(), staffs.signs(bar, bar.equals(bars.get(0)))));
    double start = left + header(bars.get(0));
    return new BarRow(bars, start, last ? Math.min(full, most) : full, staffs.lead(), signs);
  }

  /** What there is for notes across the page. */
  private double room(List<Bar> bars) {
    double used = header(bars.get(0)) + bars.size() * staffs.lead();
    for (Bar bar : bars) {
      used += staffs.signs(bar, bar.equals(bars.get(0)));
    }
    return right - left - used;
  }

  private double header(Bar bar) {
    Staff staff = staffs.staff(player, bar.span(), 0);
    return Engraver.headerWidth(music(bar, List.of(), List.of()), staff, bar.span().start());
  }

  private double perQuarter(List<Bar> bars) {
    return bars.stream().mapToDouble(this::perQuarterOf).max().orElse(0);
  }

  private double widestBar() {
    return stretches.stream()
        .flatMap(List::stream)
        .mapToDouble(bar -> right - left - room(List.of(bar)) + widthOfNotes(bar))
        .max()
        .orElse(0);
  }

  private double widthOfNotes(Bar bar) {
    return perQuarterOf(bar) * quarters(List.of(bar));
  }

  private double perQuarterOf(Bar bar) {
    return perQuarters.computeIfAbsent(bar.index(), index -> perQuarter(bar));
  }

  /** The least width of a quarter note at which nothing that is written in a bar touches. */
  private double perQuarter(Bar bar) {
    double most = LEAST_PER_QUARTER;
    for (Span span : written) {
      if (span.overlaps(bar.span())) {
        most = Math.max(most, staffs.pointsPerQuarter(rooms, common(span, bar.span())));
      }
    }
    return most;
  }

  private static Span common(Span one, Span other) {
    Position start = one.start().isBefore(other.start()) ? other.start() : one.start();
    Position end = one.end().isBefore(other.end()) ? one.end() : other.end();
    return new Span(start, end);
  }

  private static double quarters(List<Bar> bars) {
    return bars.stream().mapToDouble(bar -> bar.span().length().quarters().toDouble()).sum();
  }

  private Staffed staffed(BarRow row) {
    Box extent =
        marks(row, 0).stream().map(Mark::bounds).reduce(Box::with).orElse(new Box(0, 0, 0, 0));
    return new Staffed(row, extent, new Piece(extent.height(), top -> marks(row, top)));
  }

  private List<Mark> marks(BarRow row, double top) {
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
    marks.addAll(Engraver.marks(music(row.bars().get(0), plays(), silent), staff, row));
    return marks;
  }

  private static double width(BarRow row, Span span) {
    return span.length().quarters().toDouble() * row.pointsPerQuarter();
  }

  private List<Mark> heard(Cues.Cue cue, BarRow row, Staff staff) {
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
        Engraver.marks(music(row.bars().get(0), cue.plays(), silent), staff, row).stream()
            .filter(mark -> mark.bounds().left() >= from && mark.bounds().right() <= to)
            .toList());
  }

  private Engraver.EngravedMusic music(Bar first, List<Played> plays, List<Span> silent) {
    Engraver.EngravedMusic usual = staffs.music(player, List.of());
    return new Engraver.EngravedMusic(plays, silent, usual.keys(), newMeter(first));
  }

  /** The first staff of all has a time signature, and any at which it changes. */
  private Optional<Meter> newMeter(Bar bar) {
    boolean isNew =
        bar.equals(stretches.get(0).get(0))
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
