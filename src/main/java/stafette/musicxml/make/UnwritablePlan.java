package stafette.musicxml.make;

import stafette.words.Objection;
import stafette.words.Sentence;

/**
 * A plan that has no place in a part of the score as it is notated; the message names the place and
 * what to do.
 */
public final class UnwritablePlan extends Objection {
  private static final long serialVersionUID = 1;

  public UnwritablePlan(Sentence sentence) {
    super(sentence);
  }
}
