package stafette.plan.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.score.Dynamic;
import stafette.time.Position;
import stafette.time.Span;

/**
 * What stands beside the notes of one passage, each by place.
 *
 * <p>A hairpin that goes on where another player takes over is divided: who leaves arrives at the
 * dynamic that it has reached there, who enters begins with it, and has the rest and the goal.
 *
 * @param characters words for its character
 */
public record PassageMarks(
    List<MarkedWords> characters, List<MarkedDynamic> dynamics, List<Swell> swells) {
  public PassageMarks {
    characters = List.copyOf(characters);
    dynamics = List.copyOf(dynamics);
    swells = List.copyOf(swells);
  }

  /** Words such as "leggiero" at a note. */
  public record MarkedWords(Position at, String text) {}

  /** A dynamic at a note. */
  public record MarkedDynamic(Position at, Dynamic dynamic) {}

  /**
   * A hairpin, or words that say the same, as far as a player has it.
   *
   * @param span from its first note to the end of its last one
   * @param last the onset of its last note
   * @param louder whether it grows louder
   * @param words that say so, such as "cresc."; empty for a wedge
   * @param dashed whether dashes follow
   */
  public record Swell(
      Span span, Position last, boolean louder, Optional<String> words, boolean dashed) {}

  /**
   * The marks of passages that one player reads one after the other.
   *
   * @param beside where the player has something else
   */
  public static List<PassageMarks> all(List<WrittenPassage> passages, Landings beside) {
    List<PassageMarks> all = new ArrayList<>();
    LastRead last = LastRead.NOTHING;
    for (WrittenPassage passage : passages) {
      PassageMarking marking = new PassageMarking(passage, last, beside);
      all.add(marking.marks());
      last = marking.read();
    }
    return all;
  }
}
