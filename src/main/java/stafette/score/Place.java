package stafette.score;

import stafette.time.BarBeat;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * A place for people: "Clarinet 1, bar 34, beat 2".
 *
 * @param part the name of the part or player
 * @param at the bar and beat
 */
public record Place(String part, BarBeat at) implements Sayable {
  @Override
  public Sentence inWords() {
    return Sentence.of("{0}, {1}", part, at);
  }

  @Override
  public String toString() {
    return inWords().toString();
  }
}
