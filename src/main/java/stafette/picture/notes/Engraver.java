package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.notation.Accidentals;
import stafette.notation.TremoloSign;
import stafette.picture.ink.Ink;
import stafette.picture.ink.Mark;
import stafette.picture.ink.Path;
import stafette.plan.written.WrittenPassage;
import stafette.score.Keys;
import stafette.time.Bar;
import stafette.time.Landmarks.BarLine;
import stafette.time.Meter;
import stafette.time.Position;
import stafette.time.Span;

/**
 * Writes music on a staff: clef, key and time, heads, stems, beams, tuplets, accidentals, rests,
 * ledger lines, ties, slurs, marks. Places come from outside, by time, so that notes stand under
 * whatever else is drawn on the same scale.
 */
public final class Engraver {
  /** Room between a bar line and the first note, in staff spaces. */
  public static final double LEAD_SPACES = 1.9;

  /** How far a rest gives way to a flag before it, in spaces. */
  static final double FLAG = 0.7;

  private final EngravedMusic music;
  private final Staff staff;
  private final BarRow row;
  private final PartSpelling spelling;
  private final OctaveLines octaves;
  private final List<NotatedItem> written;
  private final List<StemGroup> groups;
  private final Reaches reaches;
  private final List<Mark> marks = new ArrayList<>();

  /**
   * What is to be written.
   *
   * @param plays what the player plays; sounding pitches
   * @param given where it plays something else, so that neither notes nor rests are written
   * @param keys the key signatures as the part has them; where they lie beyond seven sharps or
   *     flats, it is written the other way round
   * @param meter the time signature at the beginning, if it is to be shown
   * @param byString whether notes are spelled by the strings of a harp that sound them
   */
  public record EngravedMusic(
      List<WrittenPassage> plays,
      List<Span> given,
      Keys keys,
      Optional<Meter> meter,
      boolean byString) {
    public EngravedMusic {
      plays = List.copyOf(plays);
      given = List.copyOf(given);
    }

    PartSpelling spelling(Staff staff) {
      return new PartSpelling(staff.transposition(), keys, byString);
    }
  }

  private Engraver(EngravedMusic music, Staff staff, BarRow row) {
    this.music = music;
    this.staff = staff.ofWritten();
    this.row = row;
    spelling = music.spelling(staff);
    List<NotatedItem> sounding = Notation.of(music.plays(), music.given(), row.bars());
    octaves = OctaveLines.of(this.staff, row.bars(), spelling.of(sounding));
    written = octaves.notes();
    groups = StemGroup.of(written, this.staff, row);
    reaches = new Reaches(groups, staff.space());
  }

  /**
   * Writes.
   *
   * @param row which bars, and where times stand; notes have their left edge there
   */
  public static List<Mark> marks(EngravedMusic music, Staff staff, BarRow row) {
    return new Engraver(music, staff, row).all();
  }

  /** The notes alone, without staff, header and bar lines. */
  public static List<Mark> notes(EngravedMusic music, Staff staff, BarRow row) {
    Engraver engraver = new Engraver(music, staff, row);
    engraver.addMusic();
    return engraver.marks;
  }

  /** How much room the signs before a row take that begins there. */
  public static double headerWidth(EngravedMusic music, Staff staff, Position start) {
    int fifths = music.spelling(staff).signature(start);
    return StaffHeader.width(staff, fifths, music.meter());
  }

  /**
   * How much room a new key or time signature needs at a bar within a row, beside the lead. They
   * are written where {@link BarRow#signs()} leaves it.
   */
  public static double signsWidth(EngravedMusic music, Staff staff, Bar before, Bar bar) {
    return signs(music.spelling(staff), before, bar).width() * staff.space();
  }

  private static BarSigns signs(PartSpelling spelling, Bar before, Bar bar) {
    int from = spelling.signature(before);
    int to = spelling.signature(bar);
    boolean sameMeter = before.meter().equals(bar.meter());
    return new BarSigns(
        KeySignature.change(from, to),
        sameMeter ? Optional.empty() : Optional.of(bar.meter()),
        BarLines.widthAfter(bar.landmarks().before()));
  }

  private List<Mark> all() {
    addStaff();
    addMusic();
    return marks;
  }

  private void addMusic() {
    groups.forEach(group -> marks.addAll(group.marks()));
    addHeads();
    addRests();
    addCounted();
    SlurCurves curves = new SlurCurves(staff, row, written, reaches);
    marks.addAll(curves.ties());
    addArticulations();
    addSlashesBetween();
    addTuplets();
    marks.addAll(curves.slurs());
    addOctaves();
  }

  private void addStaff() {
    int fifths = spelling.signature(row.span().start());
    double header = StaffHeader.width(staff, fifths, music.meter());
    marks.addAll(staff.lines(row.left() - header, row.right()));
    marks.addAll(StaffHeader.of(staff, fifths, music.meter(), row.left()));
    addSigns();
    for (Bar bar : row.bars()) {
      marks.addAll(BarLines.opening(staff, bar.landmarks().before(), row.left(bar)));
      marks.addAll(BarLines.ending(staff, bar.landmarks().after(), row.right(bar)));
    }
  }

  private void addSigns() {
    for (int i = 1; i < row.bars().size(); i++) {
      Bar bar = row.bars().get(i);
      BarSigns signs = signs(spelling, row.bars().get(i - 1), bar);
      if (isShown(signs, bar)) {
        marks.addAll(signs.marks(staff, row.left(bar)));
      }
    }
  }

  private boolean isShown(BarSigns signs, Bar bar) {
    return row.signs(bar) >= signs.width() * staff.space() - 1e-6;
  }

  /** Accidentals follow the signature that the reader has seen. */
  private void addHeads() {
    int seen = spelling.signature(row.bars().get(0));
    Bar before = row.bars().get(0);
    for (Bar bar : row.bars()) {
      BarSigns signs = signs(spelling, before, bar);
      seen = signs.key().width() > 0 && isShown(signs, bar) ? spelling.signature(bar) : seen;
      before = bar;
      Heads heads = new Heads(staff, new Accidentals(seen));
      for (NotatedItem note : written) {
        if (!note.isRest() && bar.span().contains(note.onset())) {
          marks.addAll(heads.of(note, row.x(note.onset()), reaches.of(note).up()));
        }
      }
    }
  }

  private void addArticulations() {
    for (NotatedItem note : written) {
      if (!note.isRest() && note.attacks()) {
        double middle = row.x(note.onset()) + note.form().headWidth() * staff.space() / 2;
        List<Mark> own = Articulations.of(staff, note, middle, reaches.of(note));
        reaches.grow(note, own);
        marks.addAll(own);
      }
    }
  }

  private void addRests() {
    for (int i = 0; i < written.size(); i++) {
      NotatedItem rest = written.get(i);
      if (rest.isRest() && rest.shown() && !row.isCounted(bar(rest))) {
        boolean afterFlag = i > 0 && hasFlagBeside(written.get(i - 1));
        addRest(rest, afterFlag ? FLAG * staff.space() : 0);
      }
    }
  }

  /** Whether a note has a flag that reaches towards what follows. */
  private boolean hasFlagBeside(NotatedItem note) {
    return !note.isRest()
        && note.form().beams() > 0
        && reaches.of(note).up()
        && groups.stream().anyMatch(g -> !g.isBeamed() && g.notes().get(0).equals(note));
  }

  private void addRest(NotatedItem rest, double moved) {
    Bar bar = bar(rest);
    double at = row.x(rest.span().start()) + moved;
    if (rest.isWholeBar()) {
      at = (row.left(bar) + row.signs(bar) + row.right(bar) - Signs.WHOLE_HEAD * staff.space()) / 2;
    }
    List<Mark> signs = restAt(rest, at);
    double right = signs.stream().mapToDouble(mark -> mark.bounds().right()).max().orElse(at);
    marks.addAll(right > row.right(bar) ? restAt(rest, at - (right - row.right(bar))) : signs);
  }

  private Bar bar(NotatedItem item) {
    return row.bars().stream()
        .filter(each -> each.span().contains(item.onset()))
        .findFirst()
        .orElseThrow();
  }

  private List<Mark> restAt(NotatedItem rest, double at) {
    List<Mark> signs = new ArrayList<>();
    double baseline = staff.bottom() - rest.form().restRaisedSpaces() * staff.space();
    signs.add(staff.sign(rest.form().rest(), at, baseline, 1));
    for (int dot = 0; dot < rest.form().dots(); dot++) {
      double right = at + (Signs.restWidth(rest.form()) + 0.4 + 0.55 * dot) * staff.space();
      signs.add(Signs.dot(right, staff.y(5), 0.2 * staff.space()));
    }
    return signs;
  }

  /** Bars that are counted: a bar across the staff for all that stand together, and how many. */
  private void addCounted() {
    int first = 0;
    while (first < row.bars().size()) {
      int end = first + 1;
      while (end < row.bars().size() && continues(row.bars().get(end))) {
        end++;
      }
      Bar bar = row.bars().get(first);
      Span span = new Span(bar.span().start(), row.bars().get(end - 1).span().end());
      if (row.isCounted(bar) && music.given().stream().noneMatch(span::overlaps)) {
        double left = row.left(bar) + row.signs(bar);
        BarLine line = row.bars().get(end - 1).landmarks().after();
        double right = row.right(bar) - BarLines.widthBefore(line) * staff.space();
        marks.addAll(CountedBars.of(staff, end - first, left, right));
      }
      first = end;
    }
  }

  private boolean continues(Bar bar) {
    return row.isCounted(bar) && row.left(bar) == row.right(bar);
  }

  /** Between two notes that alternate, from stem to stem. */
  private void addSlashesBetween() {
    for (int i = 1; i < groups.size(); i++) {
      StemGroup from = groups.get(i - 1);
      StemGroup to = groups.get(i);
      NotatedItem first = from.notes().get(from.notes().size() - 1);
      Optional<TremoloSign> sign =
          first.tremolo().filter(each -> each.place() == TremoloSign.SlashPlace.TO_NEXT);
      int count = sign.map(TremoloSign::slashes).orElse(0);
      for (int slash = 0; slash < count; slash++) {
        int last = from.notes().size() - 1;
        double gap = 0.8 * staff.space();
        double offset = from.slashOffset(slash, count);
        marks.add(
            new Mark.Outline(
                Path.line(
                    from.stemX(last) + gap,
                    from.middle(last) + offset,
                    to.stemX(0) - gap,
                    to.middle(0) + offset),
                0.38 * staff.space(),
                Ink.FULL));
      }
    }
  }

  private void addTuplets() {
    List<NotatedItem> open = new ArrayList<>();
    for (NotatedItem one : written) {
      if (one.item().edge().starts()) {
        open.clear();
      }
      open.add(one);
      if (one.item().edge().stops()) {
        marks.addAll(tuplet(open));
      }
    }
  }

  private List<Mark> tuplet(List<NotatedItem> members) {
    boolean beamed = groups.stream().anyMatch(g -> g.isBeamed() && g.notes().containsAll(members));
    List<NotatedItem> notes = members.stream().filter(note -> !note.isRest()).toList();
    List<Reaches.InkReach> all = notes.stream().map(reaches::of).toList();
    boolean above = all.stream().filter(Reaches.InkReach::up).count() * 2 >= all.size();
    double space = staff.space();
    double y =
        above
            ? all.stream().mapToDouble(Reaches.InkReach::top).min().orElse(staff.top())
                - 0.25 * space
            : all.stream().mapToDouble(Reaches.InkReach::bottom).max().orElse(staff.bottom())
                + 1.25 * space;
    if (!beamed) {
      y =
          above
              ? Math.min(y, staff.top() - 0.6 * space)
              : Math.max(y, staff.bottom() + 1.6 * space);
    }
    double left = row.x(members.get(0).onset());
    double right = row.x(members.get(members.size() - 1).onset()) + Signs.HEAD * space;
    String figure = Integer.toString(members.get(0).item().ratio().orElseThrow().actual());
    List<Mark> sign = TupletSign.of(figure, left, right, y, above, beamed, space);
    notes.forEach(note -> reaches.grow(note, sign));
    return sign;
  }

  /** Beyond whatever the notes have, from the first to the last. */
  private void addOctaves() {
    List<Mark> notes = List.copyOf(marks);
    for (OctaveLines.OctaveLine line : octaves.lines()) {
      double left = row.x(written.get(line.first()).onset());
      double right = row.x(written.get(line.last()).onset()) + Signs.HEAD * staff.space();
      marks.addAll(OctaveSign.of(staff, left, right, line.up(), notes));
    }
  }
}
