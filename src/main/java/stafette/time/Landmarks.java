package stafette.time;

import java.util.List;
import java.util.Optional;

/**
 * What stands at a bar in every part, so that all find their way by it.
 *
 * @param rehearsal its rehearsal mark, such as "B"
 * @param tempo words for the tempo that stand in it
 * @param before the bar line at its beginning, if it has one of its own
 * @param after the bar line at its end
 */
public record Landmarks(
    Optional<String> rehearsal, List<TempoWords> tempo, BarLine before, BarLine after) {
  public static final Landmarks NONE =
      new Landmarks(Optional.empty(), List.of(), BarLine.PLAIN, BarLine.PLAIN);

  public Landmarks {
    tempo = List.copyOf(tempo);
  }

  /** Words such as "Allegro" or "rit.", as printed. */
  public record TempoWords(Position at, String text) {}

  /** What a bar line looks like, and so what it means. */
  public enum BarLine {
    PLAIN,
    DOUBLE,
    /** Thin and thick, as at the end. */
    FINAL,
    /** With the dots of a repeat. */
    REPEAT
  }

  /** Whether a section begins with the bar. */
  boolean opens() {
    return rehearsal.isPresent() || before != BarLine.PLAIN;
  }

  /** Whether a section ends with the bar. */
  boolean closes() {
    return after != BarLine.PLAIN;
  }
}
