package stafette.score;

import stafette.words.Objection;
import stafette.words.Sentence;

/**
 * The score has no line like the one that was asked for; the message says why, and what to ask for
 * instead.
 */
public final class NoSuchLine extends Objection {
  private static final long serialVersionUID = 1;

  public NoSuchLine(Sentence sentence) {
    super(sentence);
  }
}
