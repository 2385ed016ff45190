package stafette.musicxml.text;

import stafette.words.Objection;
import stafette.words.Sentence;

/**
 * Something in an element that can't be read; whoever knows part and bar turns it into an {@link
 * UnreadableScore}.
 */
public final class Malformed extends Objection {
  private static final long serialVersionUID = 1;

  public Malformed(Sentence sentence) {
    super(sentence);
  }
}
