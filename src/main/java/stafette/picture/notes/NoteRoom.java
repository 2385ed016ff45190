package stafette.picture.notes;

import java.util.ArrayList;
import java.util.List;
import stafette.notation.Accidentals;
import stafette.plan.Played;
import stafette.score.Grace;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;

/**
 * How much room the notes and rests of a line need in parts that are spelled alike. A player who
 * enters within a bar may need an accidental that the others need no more, so room is kept for all;
 * and for a rest in place of each note, since others play it.
 */
public final class NoteRoom {
  private static final double AIR = 0.5;
  private static final double DOT = 0.55;

  private final PartSpelling spelling;
  private final List<NotatedItem> items;

  /** What accidentals, grace notes and seconds take to the left of each head, in spaces. */
  private final double[] before;

  public NoteRoom(Line line, PartSpelling spelling) {
    this.spelling = spelling;
    List<Bar> bars = bars(line);
    items =
        spelling.of(Notation.of(List.of(new Played(line, 0, line.count() - 1)), List.of(), bars));
    before = new double[items.size()];
    int bar = 0;
    Accidentals holding = accidentals(bars.get(bar));
    for (int j = 0; j < before.length; j++) {
      if (!bars.get(bar).span().contains(items.get(j).onset())) {
        bar++;
        holding = accidentals(bars.get(bar));
      }
      before[j] = before(items.get(j), holding, accidentals(bars.get(bar)));
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
    return perQuarter(new Span(items.get(0).onset(), items.get(items.size() - 1).span().end()));
  }

  /** The room of what begins in a span, and of what comes next. */
  public double perQuarter(Span span) {
    double most = 0;
    for (int j = firstIn(span) + 1; j < before.length; j++) {
      Position from = items.get(j - 1).onset();
      if (!span.contains(from)) {
        return most;
      }
      most = Math.max(most, perQuarterUpTo(j));
    }
    return most;
  }

  /** From an item to the next. */
  private double perQuarterUpTo(int index) {
    NotatedItem from = items.get(index - 1);
    double quarters = items.get(index).onset().since(from.onset()).quarters().toDouble();
    double flags = index > 1 && items.get(index).isRest() ? flag(from) : 0;
    double moved = index > 1 && from.isRest() ? flag(items.get(index - 2)) : 0;
    return (width(from) + Math.max(flags, moved) + AIR + before[index]) / quarters;
  }

  /** How far a rest after it gives way. */
  private static double flag(NotatedItem note) {
    boolean flagged = !note.isRest() && note.form().beams() > 0 && note.item().beams().isEmpty();
    return flagged ? Engraver.FLAG : 0;
  }

  private static double width(NotatedItem item) {
    if (item.isWholeBar()) {
      return 0;
    }
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
