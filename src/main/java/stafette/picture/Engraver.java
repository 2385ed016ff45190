package stafette.picture;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.plan.Played;
import stafette.score.Articulation;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Stroke;
import stafette.score.Tuplet;
import stafette.time.Bar;
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

  private static final double AIR_SPACES = 0.5;

  private final Music music;
  private final Staff staff;
  private final Row row;
  private final List<Written> written;
  private final List<StemGroup> groups;
  private final IdentityHashMap<Written, Reach> reaches = new IdentityHashMap<>();
  private final List<Mark> marks = new ArrayList<>();

  /**
   * What is to be written.
   *
   * @param plays the stretches of lines that the player plays; sounding pitches
   * @param given where it plays something else, so that neither notes nor rests are written
   * @param fifths the key signature: so many sharps, or flats if below zero
   * @param meter the time signature at the beginning, if it is to be shown
   */
  public record Music(List<Played> plays, List<Span> given, int fifths, Optional<Meter> meter) {
    public Music {
      plays = List.copyOf(plays);
      given = List.copyOf(given);
    }
  }

  /** From the highest to the lowest ink of a note, marks left out, and which way its stem goes. */
  private record Reach(double top, double bottom, boolean up) {}

  private Engraver(Music music, Staff staff, Row row) {
    this.music = music;
    this.staff = staff;
    this.row = row;
    written = Notation.of(music.plays(), music.given(), row.bars());
    groups = Beaming.groups(written, staff, row);
  }

  /**
   * Writes.
   *
   * @param row which bars, and where times stand; notes have their left edge there
   */
  public static List<Mark> marks(Music music, Staff staff, Row row) {
    return new Engraver(music, staff, row).all();
  }

  /** How much room the signs before the first bar take. */
  public static double headerWidth(Music music, Staff staff) {
    return StaffHeader.width(staff, music.fifths(), music.meter());
  }

  /** The least width of a quarter note at which no two notes of a line touch. */
  public static double leastPointsPerQuarter(Line line, double staffSpace) {
    return IntStream.range(1, line.count())
        .mapToDouble(j -> neededSpaces(line.stroke(j)) * staffSpace / quarters(line, j))
        .max()
        .orElse(0);
  }

  private static double quarters(Line line, int j) {
    Position before = line.stroke(j - 1).onset();
    return line.stroke(j).onset().since(before).quarters().toDouble();
  }

  /** From the head before to this one. */
  private static double neededSpaces(Stroke stroke) {
    boolean altered =
        stroke.tones().stream().anyMatch(tone -> tone instanceof Pitch pitch && pitch.alter() != 0);
    double accidental = altered ? Signs.accidentalWidth(1) : 0;
    return Signs.HEAD + AIR_SPACES + accidental + 1.4 * stroke.graces().size();
  }

  private List<Mark> all() {
    addStaff();
    for (StemGroup group : groups) {
      marks.addAll(group.marks());
      for (int i = 0; i < group.notes().size(); i++) {
        double top = Math.min(group.end(i), group.far(i)) - staff.space() * 0.5;
        double bottom = Math.max(group.end(i), group.far(i)) + staff.space() * 0.5;
        reaches.put(group.notes().get(i), new Reach(top, bottom, group.up()));
      }
    }
    addHeads();
    written.stream().filter(Written::isRest).forEach(this::addRest);
    addTuplets();
    addTies();
    addSlurs();
    return marks;
  }

  private void addStaff() {
    marks.addAll(staff.lines(row.left() - headerWidth(music, staff), row.right()));
    marks.addAll(StaffHeader.of(staff, music.fifths(), music.meter(), row.left()));
    Path.Pen lines = new Path.Pen();
    for (Bar bar : row.bars()) {
      lines.move(row.right(bar), staff.top()).line(row.right(bar), staff.bottom());
    }
    marks.add(new Mark.Stroke(lines.path(), 0.14 * staff.space(), Ink.FULL));
  }

  private void addHeads() {
    AccidentalMemory memory = new AccidentalMemory(music.fifths());
    Heads heads = new Heads(staff, memory);
    for (Bar bar : row.bars()) {
      memory.newBar();
      for (Written note : written) {
        if (!note.isRest() && bar.span().contains(note.onset())) {
          Reach reach = reach(note);
          double at = row.x(note.onset());
          marks.addAll(heads.of(note, at, reach.up()));
          addArticulations(note, at, reach);
        }
      }
    }
  }

  private Reach reach(Written note) {
    return Optional.ofNullable(reaches.get(note)).orElseThrow();
  }

  /** On the side of the head, bows above the staff. */
  private void addArticulations(Written note, double at, Reach reach) {
    if (!note.attacks() || note.sound().articulations().isEmpty()) {
      return;
    }
    double space = staff.space();
    double middle = at + Signs.headWidth(note.form()) * space / 2;
    List<Articulation> all = note.sound().articulations().stream().sorted().toList();
    List<Articulation> atHead = all.stream().filter(mark -> !staysAbove(mark)).toList();
    List<Articulation> above = all.stream().filter(Engraver::staysAbove).toList();
    double head = reach.up() ? reach.bottom() + 0.6 * space : reach.top() - 0.6 * space;
    marks.addAll(Signs.articulations(atHead, middle, head, reach.up() ? 1 : -1, space));
    int taken = reach.up() ? 0 : atHead.size();
    double high = Math.min(staff.top(), reach.top()) - (0.7 + 0.95 * taken) * space;
    marks.addAll(Signs.articulations(above, middle, high, -1, space));
  }

  private static boolean staysAbove(Articulation mark) {
    return switch (mark) {
      case STRONG_ACCENT, UP_BOW, DOWN_BOW -> true;
      default -> false;
    };
  }

  private void addRest(Written rest) {
    double at = row.x(rest.span().start());
    if (rest.wholeBar()) {
      Bar bar =
          row.bars().stream().filter(b -> b.span().equals(rest.span())).findFirst().orElseThrow();
      at = (row.left(bar) + row.right(bar) - Signs.WHOLE_HEAD * staff.space()) / 2;
    }
    double baseline = staff.bottom() - rest.form().restRaisedSpaces() * staff.space();
    marks.add(staff.sign(rest.form().rest(), at, baseline, 1));
    for (int dot = 0; dot < rest.form().dots(); dot++) {
      double right = at + (1.9 + 0.55 * dot) * staff.space();
      marks.add(Signs.dot(right, staff.y(5), 0.2 * staff.space()));
    }
  }

  private void addTuplets() {
    Map<Tuplet, List<Written>> tuplets = new LinkedHashMap<>();
    for (Written one : written) {
      one.tuplet().ifPresent(t -> tuplets.computeIfAbsent(t, key -> new ArrayList<>()).add(one));
    }
    tuplets.forEach((tuplet, members) -> marks.addAll(tuplet(tuplet, members)));
  }

  private List<Mark> tuplet(Tuplet tuplet, List<Written> members) {
    boolean beamed = groups.stream().anyMatch(g -> g.isBeamed() && g.notes().containsAll(members));
    List<Reach> notes = members.stream().filter(note -> !note.isRest()).map(this::reach).toList();
    boolean above = notes.stream().filter(Reach::up).count() * 2 >= notes.size();
    double space = staff.space();
    double y =
        above
            ? notes.stream().mapToDouble(Reach::top).min().orElse(staff.top()) - 0.25 * space
            : notes.stream().mapToDouble(Reach::bottom).max().orElse(staff.bottom()) + 1.25 * space;
    if (!beamed) {
      y =
          above
              ? Math.min(y, staff.top() - 0.6 * space)
              : Math.max(y, staff.bottom() + 1.6 * space);
    }
    double left = row.x(members.get(0).onset());
    double right = row.x(members.get(members.size() - 1).onset()) + Signs.HEAD * space;
    return TupletSign.of(Integer.toString(tuplet.actual()), left, right, y, above, beamed, space);
  }

  private void addTies() {
    for (int i = 0; i < written.size(); i++) {
      Written note = written.get(i);
      if (note.isRest() || !note.tiedOn()) {
        continue;
      }
      Reach reach = reach(note);
      double space = staff.space();
      double left = row.x(note.onset()) + (Signs.headWidth(note.form()) + 0.1) * space;
      double right = row.x(note.span().end()) - 0.1 * space;
      double y = reach.up() ? reach.bottom() + 0.15 * space : reach.top() - 0.15 * space;
      marks.add(Signs.arc(left, Math.max(right, left + space), y, reach.up() ? 1 : -1, space));
    }
  }

  private void addSlurs() {
    List<Written> open = new ArrayList<>();
    for (Written note : written) {
      if (note.isRest() || (note.attacks() && !note.sound().slurred())) {
        addSlur(open);
        open.clear();
      }
      if (!note.isRest() && (note.sound().slurred() || note.sound().slurContinues())) {
        open.add(note);
      }
    }
    addSlur(open);
  }

  private void addSlur(List<Written> notes) {
    if (notes.size() < 2) {
      return;
    }
    List<Reach> all = notes.stream().map(this::reach).toList();
    boolean below = all.stream().allMatch(Reach::up);
    double space = staff.space();
    double y =
        below
            ? all.stream().mapToDouble(Reach::bottom).max().orElseThrow() + 0.3 * space
            : all.stream().mapToDouble(Reach::top).min().orElseThrow() - 0.3 * space;
    double half = Signs.HEAD / 2 * space;
    double left = row.x(notes.get(0).onset()) + half;
    double right = row.x(notes.get(notes.size() - 1).onset()) + half;
    marks.add(Signs.arc(left, right, y, below ? 1 : -1, space));
  }
}
