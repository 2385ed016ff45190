package stafette.picture.notes;

import java.util.List;
import stafette.score.Grace;
import stafette.score.Line;
import stafette.score.Pitch;
import stafette.score.Stroke;
import stafette.score.Tone;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;

/**
 * How much room the notes of a line need in parts that are spelled alike. A player who enters
 * within a bar may need an accidental that the others need no more, so room is kept for all.
 */
public final class NoteRoom {
  private static final double AIR = 0.5;

  private final Line line;
  private final PartSpelling spelling;

  /** What accidentals, grace notes and seconds take to the left of each head, in spaces. */
  private final double[] before;

  public NoteRoom(Line line, PartSpelling spelling) {
    this.line = line;
    this.spelling = spelling;
    before = new double[line.count()];
    Bar bar = line.bars().at(line.stroke(0).onset());
    AccidentalMemory memory = memory(bar);
    for (int j = 0; j < before.length; j++) {
      Stroke stroke = line.stroke(j);
      if (!bar.span().contains(stroke.onset())) {
        bar = line.bars().at(stroke.onset());
        memory = memory(bar);
      }
      before[j] = before(j, memory, memory(bar));
    }
  }

  private AccidentalMemory memory(Bar bar) {
    return new AccidentalMemory(spelling.signature(bar));
  }

  /** The room before the first note of a bar; 0 if the bar does not begin with one. */
  public double beforeFirstOf(Bar bar) {
    int first = firstIn(bar.span());
    boolean begins = first < before.length && line.stroke(first).onset().equals(bar.span().start());
    return begins ? before[first] : 0;
  }

  /** The first stroke that is not before a span; the count of strokes if there is none. */
  private int firstIn(Span span) {
    int low = 0;
    int high = before.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (line.stroke(middle).onset().isBefore(span.start())) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The least width of a quarter note at which no two notes touch, in spaces. */
  public double perQuarter() {
    return perQuarter(line.span());
  }

  /** The room of the notes that begin in a span, and of the next one. */
  public double perQuarter(Span span) {
    double most = 0;
    for (int j = firstIn(span) + 1; j < before.length; j++) {
      Position from = line.stroke(j - 1).onset();
      if (!span.contains(from)) {
        return most;
      }
      double quarters = line.stroke(j).onset().since(from).quarters().toDouble();
      most = Math.max(most, (Signs.HEAD + AIR + before[j]) / quarters);
    }
    return most;
  }

  private double before(int index, AccidentalMemory memory, AccidentalMemory fresh) {
    Stroke stroke = line.stroke(index);
    double width = stroke.graces().isEmpty() ? 0 : GraceNotes.AIR;
    for (Grace grace : stroke.graces()) {
      width +=
          GraceNotes.APART
              + GraceNotes.SCALE * widest(written(grace.tones(), stroke), memory, fresh);
    }
    List<Tone> tones = written(stroke.tones(), stroke);
    double second = hasSecond(tones) ? Signs.HEAD : 0;
    return width + second + stacked(tones, memory, fresh);
  }

  private List<Tone> written(List<Tone> tones, Stroke stroke) {
    return tones.stream().map(tone -> spelling.written(tone, stroke.onset())).toList();
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

  private static double widest(List<Tone> tones, AccidentalMemory memory, AccidentalMemory fresh) {
    return tones.stream().mapToDouble(tone -> accidental(tone, memory, fresh)).max().orElse(0);
  }

  /** Accidentals of a chord stand side by side where they would touch. */
  private static double stacked(List<Tone> tones, AccidentalMemory memory, AccidentalMemory fresh) {
    return tones.stream().mapToDouble(tone -> accidental(tone, memory, fresh)).sum();
  }

  private static double accidental(Tone tone, AccidentalMemory memory, AccidentalMemory fresh) {
    return tone instanceof Pitch pitch
        ? memory.before(pitch).or(() -> fresh.before(pitch)).map(Signs::accidentalWidth).orElse(0.0)
        : 0;
  }
}
