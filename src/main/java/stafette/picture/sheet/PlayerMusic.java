package stafette.picture.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stafette.picture.ink.Box;
import stafette.picture.ink.Greyed;
import stafette.picture.ink.Hatching;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Piece;
import stafette.picture.notes.BarRow;
import stafette.picture.notes.Engraver;
import stafette.picture.notes.ExpressionSigns;
import stafette.picture.notes.NoteRoom;
import stafette.picture.notes.SpacedBar;
import stafette.picture.notes.Staff;
import stafette.picture.ribbon.RelayContent;
import stafette.picture.ribbon.StaffLines;
import stafette.plan.GivenStretch;
import stafette.plan.Player;
import stafette.plan.written.Landings;
import stafette.plan.written.PassageMarks;
import stafette.plan.written.WrittenPassage;
import stafette.score.Stroke;
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
  private static final double HATCHED_BEYOND = 1;

  /** More than all unevenness of staffs together. */
  private static final double STAFF_COST = 1e6;

  private final RelayContent relay;
  private final int player;
  private final StaffLines staffs;
  private final List<PassageMarks> expressed;
  private final List<Cues.Cue> cues;
  private final List<CountedStretch> stretches;
  private final List<StretchRoom> rooms;
  private final double left;
  private final double right;

  private PlayerMusic(RelayContent relay, int player, double space, double left, double right) {
    this.relay = relay;
    this.player = player;
    this.left = left;
    this.right = right;
    staffs = StaffLines.sized(relay, space);
    expressed = PassageMarks.all(staffs.plays(player), Landings.of(relay.plan(), player));
    cues = Cues.of(relay.plan(), player);
    stretches = CountedStretch.all(relay.plan(), player, cues);
    rooms = rooms();
  }

  /**
   * The music of a player.
   *
   * @param space from line to line of a staff, in points; less where a bar is too long for the page
   * @param left where staffs begin, in points
   * @param right where they end at most
   */
  public static PlayerMusic of(
      RelayContent relay, int player, double space, double left, double right) {
    PlayerMusic usual = new PlayerMusic(relay, player, space, left, right);
    double share = (right - left) / usual.widest();
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

  private List<StretchRoom> rooms() {
    List<Bar> written =
        stretches.stream().filter(s -> !s.isCounted()).flatMap(s -> s.bars().stream()).toList();
    Player who = relay.plan().brief().players().get(player);
    List<Span> silent = new ArrayList<>(staffs.given(who, written));
    cues.forEach(cue -> silent.add(cue.span()));
    List<NoteRoom> needed = new ArrayList<>();
    needed.add(staffs.room(player, staffs.plays(player), silent, written));
    for (Cues.Cue cue : cues) {
      needed.add(
          staffs.room(
              player, quoted(cue), around(cue.span(), relay.line().bars().span()), written));
    }
    return stretches.stream().map(stretch -> StretchRoom.of(stretch, needed)).toList();
  }

  /** All staffs: as few as leave everything its room, as evenly filled as can be. */
  public List<Staffed> staffed() {
    int count = stretches.size();
    double[] costs = new double[count + 1];
    int[] from = new int[count + 1];
    for (int end = 1; end <= count; end++) {
      costs[end] = Double.POSITIVE_INFINITY;
      for (int first = end - 1; first >= 0; first--) {
        double stretch = stretch(rooms.subList(first, end));
        if (stretch < StretchRoom.LEAST_STRETCH && first < end - 1) {
          break;
        }
        double cost = costs[first] + STAFF_COST + StretchRoom.unevenness(stretch);
        if (cost < costs[end]) {
          costs[end] = cost;
          from[end] = first;
        }
      }
    }
    ArrayDeque<Staffed> result = new ArrayDeque<>();
    for (int end = count; end > 0; end = from[end]) {
      result.addFirst(staffed(row(rooms.subList(from[end], end))));
    }
    return List.copyOf(result);
  }

  /** How long the player is silent around a place, before and after it, on the line's clock. */
  public long restMicros(Position at) {
    long place = relay.line().micros(at);
    long last = Long.MIN_VALUE / 4;
    long next = Long.MAX_VALUE / 4;
    for (GivenStretch busy : relay.plan().brief().players().get(player).busy()) {
      last = busy.fromMicros() < place ? Math.max(last, busy.toMicros()) : last;
      next = busy.fromMicros() < place ? next : Math.min(next, busy.fromMicros());
    }
    for (WrittenPassage passage : staffs.plays(player)) {
      for (Stroke stroke : passage.strokes()) {
        Span sounding = stroke.span();
        boolean before = sounding.start().isBefore(at);
        last = before ? Math.max(last, relay.line().micros(sounding.end())) : last;
        next = before ? next : Math.min(next, relay.line().micros(sounding.start()));
      }
    }
    return Math.max(0, next - last);
  }

  /** How far notes are drawn apart to fill the page, as {@link StretchRoom} counts it. */
  private double stretch(List<StretchRoom> some) {
    double least = some.stream().mapToDouble(StretchRoom::least).sum();
    double give = some.stream().mapToDouble(StretchRoom::give).sum();
    return (room(some) / staffs.space() - least) / give;
  }

  /** As wide as the page, but not stretched beyond what can be read. */
  private BarRow row(List<StretchRoom> some) {
    double stretch = Math.max(0, Math.min(StretchRoom.MOST_STRETCH, stretch(some)));
    Map<Integer, Double> signs = new HashMap<>();
    Map<Integer, SpacedBar> spaced = new HashMap<>();
    Bar opens = some.get(0).first();
    double start = left + header(opens);
    double at = start;
    for (StretchRoom each : some) {
      double before = staffs.signs(each.first(), each.first().equals(opens));
      signs.put(each.first().index(), before);
      spaced.putAll(each.placed(at, at + before + staffs.lead(), staffs.space(), stretch));
      at = Optional.ofNullable(spaced.get(each.first().index())).orElseThrow().right();
    }
    List<Bar> bars = some.stream().flatMap(each -> each.stretch().bars().stream()).toList();
    return new BarRow(bars, start, 0, staffs.lead(), signs, spaced);
  }

  /** What there is for notes across the page. */
  private double room(List<StretchRoom> some) {
    Bar opens = some.get(0).first();
    double used = header(opens) + some.size() * staffs.lead();
    for (StretchRoom each : some) {
      used += staffs.signs(each.first(), each.first().equals(opens));
    }
    return right - left - used;
  }

  private double header(Bar bar) {
    Staff staff = staffs.staff(player, bar.span(), 0);
    return Engraver.headerWidth(music(bar, List.of(), List.of()), staff, bar.span().start());
  }

  /** The width of the widest bar with what stands before it. */
  private double widest() {
    return rooms.stream()
        .mapToDouble(one -> right - left - room(List.of(one)) + one.least() * staffs.space())
        .max()
        .orElse(0);
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
      Bar bar = bar(span.start());
      double start = row.isCounted(bar) ? row.left(bar) + row.lead() : row.x(span.start());
      boolean within = !row.isCounted(bar) && span.end().isBefore(bar.span().end());
      double next = within ? row.x(span.end()) : row.right(bar);
      double end = next - row.lead();
      if (end > start) {
        marks.addAll(
            Hatching.of(
                new Box(
                    start, staff.top() - HATCHED_BEYOND, end, staff.bottom() + HATCHED_BEYOND)));
      }
    }
    List<Span> silent = new ArrayList<>(given);
    for (Cues.Cue cue : cues) {
      if (cue.span().overlaps(row.span())) {
        marks.addAll(heard(cue, row, staff));
        silent.add(cue.span());
      }
    }
    marks.addAll(
        Engraver.marks(music(row.bars().get(0), staffs.plays(player), silent), staff, row));
    marks.addAll(ExpressionSigns.of(expressed, staff, row, marks));
    return marks;
  }

  private List<Mark> heard(Cues.Cue cue, BarRow row, Staff staff) {
    Span span = row.span();
    List<Span> silent = around(cue.span(), span);
    double from = row.xWithin(cue.span().start()) - row.lead();
    double to = row.xWithin(cue.span().end());
    return Greyed.of(
        Engraver.marks(music(row.bars().get(0), quoted(cue), silent), staff, row).stream()
            .filter(mark -> mark.bounds().left() >= from && mark.bounds().right() <= to)
            .toList());
  }

  /** What a span leaves of another at both ends. */
  private static List<Span> around(Span inner, Span whole) {
    List<Span> around = new ArrayList<>();
    if (whole.start().isBefore(inner.start())) {
      around.add(new Span(whole.start(), inner.start()));
    }
    if (inner.end().isBefore(whole.end())) {
      around.add(new Span(inner.end(), whole.end()));
    }
    return around;
  }

  private Engraver.EngravedMusic music(Bar first, List<WrittenPassage> plays, List<Span> silent) {
    Engraver.EngravedMusic usual = staffs.music(player, List.of());
    return new Engraver.EngravedMusic(
        plays, silent, usual.keys(), newMeter(first), usual.byString());
  }

  /** The first staff of all has a time signature, and any at which it changes. */
  private Optional<Meter> newMeter(Bar bar) {
    boolean isNew =
        bar.equals(stretches.get(0).bars().get(0))
            || !relay.line().bars().get(bar.index() - 1).meter().equals(bar.meter());
    return isNew ? Optional.of(bar.meter()) : Optional.empty();
  }

  private static List<WrittenPassage> quoted(Cues.Cue cue) {
    return cue.plays().stream().map(played -> WrittenPassage.plain(played, Landings.NONE)).toList();
  }

  private Bar bar(Position position) {
    return relay.line().bars().at(position);
  }
}
