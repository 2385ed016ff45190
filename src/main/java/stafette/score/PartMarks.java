package stafette.score;

import java.util.List;
import stafette.time.Span;

/**
 * What stands in a part beside its notes.
 *
 * @param words in the order of time
 * @param pedal where the right pedal of a keyboard is down, in the order of time
 * @param hairpins in the order of time
 */
public record PartMarks(List<Words> words, List<Span> pedal, List<Hairpin> hairpins) {
  public static final PartMarks NONE = new PartMarks(List.of(), List.of(), List.of());

  /** Marks without hairpins. */
  public PartMarks(List<Words> words, List<Span> pedal) {
    this(words, pedal, List.of());
  }

  public PartMarks {
    words = List.copyOf(words);
    pedal = List.copyOf(pedal);
    hairpins = List.copyOf(hairpins);
  }
}
