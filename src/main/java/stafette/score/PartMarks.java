package stafette.score;

import java.util.List;
import stafette.time.Span;

/**
 * What stands in a part beside its notes.
 *
 * @param words in the order of time
 * @param pedal where the right pedal of a keyboard is down, in the order of time
 * @param hairpins in the order of time
 * @param beams how its notes are beamed, in the order of time
 * @param trembled its notes with slashes, in the order of time
 */
public record PartMarks(
    List<Words> words,
    List<Span> pedal,
    List<Hairpin> hairpins,
    List<Beamed> beams,
    List<Trembled> trembled) {
  public static final PartMarks NONE = new PartMarks(List.of(), List.of());

  /**
   * Notes of a voice under one beam.
   *
   * @param span from the first to the end of the last
   * @param strand the voice
   */
  public record Beamed(Span span, Strand strand) {}

  /** Slashed notes of a voice. */
  public record Trembled(Expression.SlashedSpan slashed, Strand strand) {}

  /** Words and pedals alone. */
  public PartMarks(List<Words> words, List<Span> pedal) {
    this(words, pedal, List.of(), List.of(), List.of());
  }

  public PartMarks {
    words = List.copyOf(words);
    pedal = List.copyOf(pedal);
    hairpins = List.copyOf(hairpins);
    beams = List.copyOf(beams);
    trembled = List.copyOf(trembled);
  }
}
