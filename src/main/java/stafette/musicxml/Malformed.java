package stafette.musicxml;

import stafette.words.Objection;
import stafette.words.Sentence;

/**
 * Something in an element that can't be read; whoever knows part and bar turns it into an {@link
 * UnreadableScore}.
 */
final class Malformed extends Objection {
  private static final long serialVersionUID = 1;

  Malformed(Sentence sentence) {
    super(sentence);
  }
}
