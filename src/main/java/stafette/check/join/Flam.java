package stafette.check.join;

import java.util.Optional;
import stafette.check.ear.OnsetSpread;
import stafette.limits.Instrument;
import stafette.plan.Handoff;
import stafette.score.Line;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * Notes of one repeated pitch that two players play together: one such note is a landing, several
 * in a row are heard twice each, since the players' onsets lie apart.
 *
 * @param notes the longest row of them, at least two
 * @param spread how far the players' onsets lie apart
 */
public record Flam(int notes, OnsetSpread spread) implements Sayable {
  /** Empty where no pitch is repeated in the overlap; a tremolo that nobody counts is no row. */
  static Optional<Flam> of(Line line, Handoff handoff, Instrument leaving, Instrument entering) {
    int longest = 1;
    int row = 1;
    for (int j = handoff.enters().first() + 1; j <= handoff.leaves().last(); j++) {
      row = repeats(line, j) ? row + 1 : 1;
      longest = Math.max(longest, row);
    }
    return longest == 1
        ? Optional.empty()
        : Optional.of(new Flam(longest, OnsetSpread.between(leaving, entering)));
  }

  private static boolean repeats(Line line, int j) {
    return line.stroke(j).isLike(line.stroke(j - 1)) && !line.stroke(j).isTremolo();
  }

  @Override
  public Sentence inWords() {
    return Sentence.of(
        "{0} repeated notes together flam, {1} to {2} ms apart: share the landing note alone",
        notes, Math.round(spread.leastMillis()), Math.round(spread.mostMillis()));
  }
}
