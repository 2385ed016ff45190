package stafette.picture.notes;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import stafette.notation.Accidentals;
import stafette.plan.written.WrittenPassage;
import stafette.score.Grace;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;

/**
 * How much room notes and rests need in parts that are spelled alike. A player who enters within a
 * bar may need an accidental that the others need no more, so room is kept for all; and for a rest
 * in place of each note, since others play it.
 */
public final class NoteRoom {
  private static final double AIR = 0.5;
  private static final double DOT = 0.55;

  private final PartSpelling spelling;
  private final List<NotatedItem> items;

  /** What accidentals, grace notes and seconds take to the left of each head, in spaces. */
  private final double[] before;

  /** Which of the items begins its bar, so that what stands before it has room there anyway. */
  private final BitSet opening = new BitSet();

  /** All of a line; any of its notes may be the first of somebody's in its bar. */
  public NoteRoom(Line line, PartSpelling spelling) {
    this(
        spelling.of(Notation.of(List.of(WrittenPassage.whole(line)), List.of(), bars(line))),
        bars(line),
        spelling,
        true);
  }

  /**
   * Just what somebody plays, with rests for the rest.
   *
   * @param given where no rests are shown
   * @param bars in order
   */
  public NoteRoom(
      List<WrittenPassage> plays, List<Span> given, List<Bar> bars, PartSpelling spelling) {
    this(spelling.of(Notation.of(plays, given, bars)), bars, spelling, false);
  }

  private NoteRoom(
      List<NotatedItem> items, List<Bar> bars, PartSpelling spelling, boolean anyMayEnter) {
    this.items = items;
    this.spelling = spelling;
    before = new double[items.size()];
    int bar = 0;
    Accidentals holding = accidentals(bars.get(bar));
    for (int j = 0; j < before.length; j++) {
      if (!bars.get(bar).span().contains(items.get(j).onset())) {
        bar++;
        holding = accidentals(bars.get(bar));
      }
      opening.set(j, items.get(j).onset().equals(bars.get(bar).span().start()));
      Accidentals fresh = anyMayEnter ? accidentals(bars.get(bar)) : holding;
      before[j] = before(items.get(j), holding, fresh);
    }
  }

  private static List<Bar> bars(Line line) {
    List<Bar> bars = new ArrayList<>();
    int last = line.bars().at(line.stroke(line.count() - 1).onset()).index();
    for (int i = line.bars().at(line.stroke(0).onset()).index(); i <= last; i++) {
      bars.add(line.bars().get(i));
    }
    return bars;
  }

  private Accidentals accidentals(Bar bar) {
    return new Accidentals(spelling.signature(bar));
  }

  /** The room before the first note of a bar; 0 if the bar does not begin with one. */
  public double beforeFirstOf(Bar bar) {
    int first = firstIn(bar.span());
    boolean begins = first < before.length && items.get(first).onset().equals(bar.span().start());
    return begins ? before[first] : 0;
  }

  /** The first item that is not before a span; the count of items if there is none. */
  private int firstIn(Span span) {
    int low = 0;
    int high = before.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (items.get(middle).onset().isBefore(span.start())) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The least width of a quarter note at which nothing touches, in spaces. */
  public double perQuarter() {
    double most = 0;
    for (int j = 1; j < before.length; j++) {
      Position from = items.get(j - 1).onset();
      double quarters = items.get(j).onset().since(from).quarters().toDouble();
      most = Math.max(most, (after(j - 1) + beforeWithin(j)) / quarters);
    }
    return most;
  }

  /**
   * What a note or rest takes, in spaces.
   *
   * @param before its onset, beside what a bar line leaves anyway
   * @param after its onset, with the air that what follows keeps from it
   */
  public record ItemRoom(double before, double after) {
    /** What two at the same place take. */
    public ItemRoom with(ItemRoom other) {
      return new ItemRoom(Math.max(before, other.before), Math.max(after, other.after));
    }
  }

  /** What each note and rest takes that is shown in a bar. */
  public NavigableMap<Position, ItemRoom> within(Bar bar) {
    NavigableMap<Position, ItemRoom> rooms = new TreeMap<>();
    for (int j = firstIn(bar.span()); j < before.length; j++) {
      if (!bar.span().contains(items.get(j).onset())) {
        break;
      }
      if (items.get(j).shown()) {
        rooms.put(items.get(j).onset(), new ItemRoom(beforeWithin(j), after(j)));
      }
    }
    return rooms;
  }

  /** What stands before an item within its bar. */
  private double beforeWithin(int index) {
    return opening.get(index) ? 0 : before[index];
  }

  private double after(int index) {
    NotatedItem item = items.get(index);
    boolean last = index + 1 == before.length || opening.get(index + 1);
    double flags = !last && items.get(index + 1).isRest() ? flag(item) : 0;
    double moved = index > 0 && item.isRest() ? flag(items.get(index - 1)) : 0;
    return width(item) + Math.max(flags, moved) + AIR;
  }

  /** How far a rest after it gives way. */
  private static double flag(NotatedItem note) {
    boolean flagged = !note.isRest() && note.form().beams() > 0 && note.item().beams().isEmpty();
    return flagged ? Engraver.FLAG : 0;
  }

  private static double width(NotatedItem item) {
    double widest = Math.max(item.form().headWidth(), Signs.restWidth(item.form()));
    return widest + item.form().dots() * DOT;
  }

  private static double before(NotatedItem note, Accidentals holding, Accidentals fresh) {
    if (!note.attacks()) {
      return 0;
    }
    Stroke stroke = note.sound();
    double width = stroke.graces().isEmpty() ? 0 : GraceNotes.AIR;
    for (Grace grace : stroke.graces()) {
      width += GraceNotes.APART + GraceNotes.SCALE * widest(grace.tones(), holding, fresh);
    }
    List<Tone> tones = stroke.tones();
    double second = hasSecond(tones) ? Signs.HEAD : 0;
    return width + second + stacked(tones, holding, fresh);
  }

  /** Whether one of two heads stands beside the other. */
  private static boolean hasSecond(List<Tone> tones) {
    for (int i = 1; i < tones.size(); i++) {
      if (tones.get(i - 1) instanceof Pitch low
          && tones.get(i) instanceof Pitch high
          && high.diatonic() - low.diatonic() <= 1) {
        return true;
      }
    }
    return false;
  }

  private static double widest(List<Tone> tones, Accidentals holding, Accidentals fresh) {
    return tones.stream().mapToDouble(tone -> accidental(tone, holding, fresh)).max().orElse(0);
  }

  /** Accidentals of a chord stand side by side where they would touch. */
  private static double stacked(List<Tone> tones, Accidentals holding, Accidentals fresh) {
    return tones.stream().mapToDouble(tone -> accidental(tone, holding, fresh)).sum();
  }

  private static double accidental(Tone tone, Accidentals holding, Accidentals fresh) {
    return tone instanceof Pitch pitch && (holding.mustShow(pitch) || fresh.mustShow(pitch))
        ? Signs.accidentalWidth(pitch.alter())
        : 0;
  }
}
