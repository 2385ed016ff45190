package stafette.ask;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stafette.plan.Halves;
import stafette.plan.Hocket;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.score.ToneChoice;
import stafette.words.Sentence;
import stafette.words.Settable;

/**
 * How a line is relayed, beside who plays.
 *
 * @param hocket whether pairs may take turns, and how
 * @param together how many always play, one or more
 * @param eachTone whether each tone of chords gets a relay of its own, all planned together
 * @param locks what must be kept
 */
public record Relaying(Hocket hocket, int together, boolean eachTone, List<LockWish> locks) {
  /** One relay, no hocket, nothing locked. */
  public static final Relaying PLAIN = new Relaying(Hocket.NO, 1, false, List.of());

  /** More than so many at a time would be a crowd. */
  public static final int MOST_TOGETHER = 4;

  private static final long MICROS_IN_MILLI = 1_000;
  private static final long MICROS_IN_MINUTE = 60_000_000;

  public Relaying {
    locks = List.copyOf(locks);
  }

  /** With or without hockets. */
  public Relaying with(Hocket other) {
    return new Relaying(other, together, eachTone, locks);
  }

  /** With so many who always play. */
  public Relaying with(int players) {
    return new Relaying(hocket, players, eachTone, locks);
  }

  /** With a relay for each tone of chords, or one for all. */
  public Relaying withEachTone(boolean each) {
    return new Relaying(hocket, together, each, locks);
  }

  /** With other locks. */
  public Relaying with(List<LockWish> others) {
    return new Relaying(hocket, together, eachTone, others);
  }

  /**
   * What is to be said where pairs can't take turns as they may, since the line is too fast there.
   */
  public Optional<Sentence> tooFast(Line line) {
    Halves halves = Halves.of(line, hocket);
    return IntStream.range(0, line.count())
        .filter(stroke -> !halves.interlocks(stroke, 1))
        .mapToObj(
            stroke ->
                Sentence.of(
                    "{0}: notes {1} ms apart are too close for two players to take in turn by"
                        + " stroke or by group, which goes from {2} ms on, about sixteenths at"
                        + " quarter = {3}; let pairs take beats in turn{4}, or choose a slower"
                        + " tempo",
                    line.placeOf(stroke),
                    halves.apartMicros(stroke) / MICROS_IN_MILLI,
                    Halves.LEAST_APART_MICROS / MICROS_IN_MILLI,
                    MICROS_IN_MINUTE / (4 * Halves.LEAST_APART_MICROS),
                    Settable.HOCKET))
        .findFirst();
  }

  /**
   * The lines of the relays, the top tone's first.
   *
   * @param line with all tones if each is to have its relay
   */
  List<Line> lines(Line line) {
    List<Line> tones = eachTone ? tones(line) : List.of(line);
    List<Line> lines = new ArrayList<>();
    tones.forEach(tone -> lines.addAll(Collections.nCopies(together, tone)));
    return lines;
  }

  private static List<Line> tones(Line line) {
    int most = line.strokes().stream().mapToInt(stroke -> stroke.tones().size()).max().orElse(1);
    return IntStream.rangeClosed(1, most)
        .mapToObj(number -> tone(line, new ToneChoice.FromTop(number)))
        .toList();
  }

  private static Line tone(Line line, ToneChoice choice) {
    List<Integer> kept = new ArrayList<>();
    List<Stroke> strokes = new ArrayList<>();
    for (int j = 0; j < line.count(); j++) {
      Stroke stroke = line.stroke(j);
      if (!choice.from(stroke.tones()).isEmpty()) {
        kept.add(j);
        strokes.add(stroke.withTones(choice.from(stroke.tones())));
      }
    }
    return new Line(
            line.source().with(choice),
            strokes,
            kept.stream().map(line::cover).toList(),
            line.bars(),
            line.tempo(),
            line.keys())
        .expressed(line.expression())
        .withClockFrom(line.clockStart());
  }
}
