package stafette.picture.ribbon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stafette.limits.Instrument;
import stafette.picture.ink.Mark;
import stafette.picture.notes.BarLines;
import stafette.picture.notes.BarRow;
import stafette.picture.notes.Clef;
import stafette.picture.notes.ClefChoice;
import stafette.picture.notes.Engraver;
import stafette.picture.notes.NoteRoom;
import stafette.picture.notes.PartSpelling;
import stafette.picture.notes.Staff;
import stafette.picture.notes.StaffHeader;
import stafette.plan.GivenStretch;
import stafette.plan.HarpTurn;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.written.Landings;
import stafette.plan.written.WrittenPassage;
import stafette.score.Keys;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Span;

/** The music that each player of a relay plays, as it stands under the ribbon. */
public final class StaffLines {
  /** From line to line of a staff, in points, where there is room enough. */
  public static final double SPACE = 3.9;

  private static final double LEAST_SPACE = 2;

  /** Room between a bar line and the first note, in spaces. */
  private static final double LEAD = Engraver.LEAD_SPACES;

  private static final double MOST_SPACES_PER_QUARTER = 40;

  /** How much of the lead a first note's own signs may take, in spaces. */
  private static final double FREE_LEAD = 1;

  private final RelayContent relay;
  private final List<NoteRoom> rooms;
  private final double space;
  private final Map<Integer, Staff> wholes = new HashMap<>();
  private final Map<Integer, List<WrittenPassage>> passages = new HashMap<>();

  private StaffLines(RelayContent relay, double space) {
    this.relay = relay;
    this.space = space;
    List<PartSpelling> spellings = relay.playing().stream().map(this::spelling).distinct().toList();
    rooms =
        Stream.concat(
                lines()
                    .flatMap(
                        line -> spellings.stream().map(spelling -> new NoteRoom(line, spelling))),
                relay.playing().stream()
                    .filter(player -> instrument(player).isHarp())
                    .map(player -> room(player, plays(player), List.of(), relay.bars())))
            .toList();
  }

  /** In the usual size. */
  static StaffLines of(RelayContent relay) {
    return new StaffLines(relay, SPACE);
  }

  /** In another size, in points from line to line. */
  public static StaffLines sized(RelayContent relay, double space) {
    return new StaffLines(relay, space);
  }

  /** Lines that are smaller if need be, so that each bar fits a width. */
  StaffLines fitting(double width) {
    double perQuarter = pointsPerQuarterWithRests();
    double widest =
        relay.bars().stream()
            .mapToDouble(
                bar ->
                    lead()
                        + signs(bar, true)
                        + bar.span().length().quarters().toDouble() * perQuarter)
            .max()
            .orElse(0);
    return widest <= width
        ? this
        : new StaffLines(relay, Math.max(LEAST_SPACE, space * width / widest));
  }

  public double space() {
    return space;
  }

  /** Room between a bar line and the first note, in points. */
  public double lead() {
    return LEAD * space;
  }

  /** Whether a player has something to play in a row. */
  boolean plays(int player, BarRow row) {
    return relay.plan().segmentsOf(player).stream()
        .anyMatch(segment -> relay.span(segment).overlaps(row.span()));
  }

  List<Mark> marks(int player, BarRow row, double top) {
    return Engraver.marks(music(player, row.bars()), staff(player, row.span(), top), row);
  }

  /** What {@link #marks} has without staff, signs and bar lines. */
  List<Mark> notesAndRests(int player, BarRow row, double top) {
    return Engraver.notes(music(player, row.bars()), staff(player, row.span(), top), row);
  }

  /** The notes of a player alone, with the clef in which all that it plays is best read. */
  List<Mark> notes(int player, BarRow row, double top) {
    List<WrittenPassage> plays =
        plays(player).stream()
            .filter(
                passage ->
                    passage.strokes().stream()
                        .anyMatch(stroke -> stroke.span().overlaps(row.span())))
            .toList();
    Engraver.EngravedMusic own =
        new Engraver.EngravedMusic(
            plays,
            silences(player, row.span()),
            keys(player),
            Optional.empty(),
            instrument(player).isHarp());
    return Engraver.notes(own, wholeStaff(player, top), row);
  }

  /** Where a player has no segment, so that no rests are written there. */
  private List<Span> silences(int player, Span span) {
    List<Span> silences = new ArrayList<>();
    Position at = span.start();
    List<Span> plays =
        relay.plan().segmentsOf(player).stream()
            .map(relay::span)
            .sorted(Comparator.comparing(Span::start))
            .toList();
    for (Span own : plays) {
      if (own.start().isAfter(at)) {
        silences.add(new Span(at, own.start()));
      }
      at = own.end().isAfter(at) ? own.end() : at;
    }
    if (span.end().isAfter(at)) {
      silences.add(new Span(at, span.end()));
    }
    return silences;
  }

  /** Clef and key, beginning at the left. */
  List<Mark> clefAndKey(int player, Bar bar, double top, double left) {
    Staff staff = wholeStaff(player, top);
    int fifths = spelling(player).signature(bar);
    double width = StaffHeader.width(staff, fifths, Optional.empty());
    return StaffHeader.of(staff, fifths, Optional.empty(), left + width);
  }

  double clefAndKeyWidth(int player, Bar bar) {
    return StaffHeader.width(usualStaff(player), spelling(player).signature(bar), Optional.empty());
  }

  /** With the clef in which all that the player plays is best read. */
  Staff wholeStaff(int player, double top) {
    Staff staff = wholes.computeIfAbsent(player, each -> staff(each, whole(), 0));
    return new Staff(top, space, staff.clef(), staff.transposition());
  }

  private Span whole() {
    List<Bar> bars = relay.bars();
    return new Span(bars.get(0).span().start(), bars.get(bars.size() - 1).span().end());
  }

  /** The widest header of any player's staff in whichever bar a row begins. */
  double headerWidth() {
    double widest = 0;
    for (Bar bar : relay.bars()) {
      for (int player : relay.playing()) {
        Staff staff = usualStaff(player);
        int fifths = spelling(player).signature(bar);
        widest = Math.max(widest, StaffHeader.width(staff, fifths, newMeter(bar)));
      }
    }
    return widest;
  }

  /**
   * How much room a bar needs before its first note, beside the lead.
   *
   * @param opensRow whether key and time stand in the row's header anyway
   */
  public double signs(Bar bar, boolean opensRow) {
    double change = 0;
    if (opensRow) {
      change = BarLines.widthAfter(bar.landmarks().before()) * space;
    } else {
      Bar before = relay.line().bars().get(bar.index() - 1);
      for (int player : relay.playing()) {
        Engraver.EngravedMusic music = music(player, List.of());
        change = Math.max(change, Engraver.signsWidth(music, usualStaff(player), before, bar));
      }
    }
    double first = rooms.stream().mapToDouble(room -> room.beforeFirstOf(bar)).max().orElse(0);
    return change + Math.max(0, first - FREE_LEAD) * space;
  }

  /** The least width of a quarter note at which no two notes of the relay touch. */
  public double pointsPerQuarter() {
    double most = rooms.stream().mapToDouble(NoteRoom::perQuarter).max().orElse(0);
    return Math.min(MOST_SPACES_PER_QUARTER, most) * space;
  }

  /** The same, and no two of the rests that stand between each player's notes. */
  double pointsPerQuarterWithRests() {
    double most =
        relay.playing().stream()
            .map(player -> room(player, plays(player), List.of(), relay.bars()))
            .mapToDouble(NoteRoom::perQuarter)
            .max()
            .orElse(0);
    return Math.max(pointsPerQuarter(), Math.min(MOST_SPACES_PER_QUARTER, most) * space);
  }

  /**
   * How much room something needs in one player's part, with rests for the rest of some bars.
   *
   * @param given where no rests are shown
   */
  public NoteRoom room(int player, List<WrittenPassage> plays, List<Span> given, List<Bar> bars) {
    return new NoteRoom(plays, given, bars, spelling(player));
  }

  /** The lines of the relay, and the shares of each in a hocket. */
  private Stream<Line> lines() {
    return Stream.concat(
            relay.plan().brief().lines().stream(),
            relay.plan().segments().stream().map(segment -> relay.plan().played(segment).line()))
        .distinct();
  }

  /** What a player plays, as it is written. */
  public List<WrittenPassage> plays(int player) {
    return passages.computeIfAbsent(player, this::written);
  }

  private List<WrittenPassage> written(int player) {
    Plan plan = relay.plan();
    return WrittenPassage.all(
        plan, player, Landings.of(plan, player), relay.how(), HarpTurn.of(plan, player));
  }

  /** What a player plays in some bars, for a row that they make. */
  public Engraver.EngravedMusic music(int player, List<Bar> bars) {
    return new Engraver.EngravedMusic(
        plays(player),
        given(relay.plan().brief().players().get(player), bars),
        keys(player),
        bars.isEmpty() ? Optional.empty() : newMeter(bars.get(0)),
        instrument(player).isHarp());
  }

  /** The time signature that a row shows which begins there. */
  Optional<Meter> newMeter(Bar bar) {
    boolean isNew =
        bar.equals(relay.bars().get(0))
            || !relay.line().bars().get(bar.index() - 1).meter().equals(bar.meter());
    return isNew ? Optional.of(bar.meter()) : Optional.empty();
  }

  private Keys keys(int player) {
    Instrument instrument = instrument(player);
    return instrument.range().isEmpty()
        ? Keys.NONE
        : relay.line().keys().writtenBy(instrument.transposition());
  }

  private PartSpelling spelling(int player) {
    return new PartSpelling(
        instrument(player).transposition(), keys(player), instrument(player).isHarp());
  }

  private Instrument instrument(int player) {
    return relay.plan().brief().players().get(player).instrument();
  }

  private Staff usualStaff(int player) {
    Instrument instrument = instrument(player);
    return new Staff(0, space, Clef.of(instrument.clef()), instrument.transposition());
  }

  /** With the clef in which what the player plays there is best read. */
  public Staff staff(int player, Span span, double top) {
    Instrument instrument = instrument(player);
    Clef clef = ClefChoice.of(instrument, plays(player), span);
    return new Staff(top, space, clef, instrument.transposition());
  }

  /** The beats in which the score gives the player something. */
  public List<Span> given(Player player, List<Bar> bars) {
    Line line = relay.line();
    List<Span> spans = new ArrayList<>();
    for (Bar bar : bars) {
      for (Span beat : bar.beats()) {
        long from = line.micros(beat.start());
        long to = line.micros(beat.end());
        for (GivenStretch busy : player.busy()) {
          if (busy.fromMicros() < to && from < busy.toMicros()) {
            spans.add(beat);
          }
        }
      }
    }
    return spans;
  }
}
