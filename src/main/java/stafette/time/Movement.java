package stafette.time;

import java.util.Optional;
import stafette.words.Sayable;
import stafette.words.Sentence;

/**
 * One of several movements in a score: with each of them the printed bar numbers begin anew.
 *
 * @param number counted from 1
 * @param title as printed, if it is known
 */
public record Movement(int number, Optional<String> title) implements Sayable {
  @Override
  public Sentence inWords() {
    return title
        .map(printed -> Sentence.of("{0}", printed))
        .orElseGet(() -> Sentence.of("movement {0}", number));
  }

  /** Its title, else "movement 2". */
  @Override
  public String toString() {
    return inWords().toString();
  }
}
