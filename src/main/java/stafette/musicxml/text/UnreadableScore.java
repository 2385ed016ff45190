package stafette.musicxml.text;

import stafette.words.Objection;
import stafette.words.Sentence;

/**
 * A file that can't be read as a score; the message names the place and what to do, but not the
 * file.
 */
public final class UnreadableScore extends Objection {
  private static final long serialVersionUID = 1;

  public UnreadableScore(Sentence sentence) {
    super(sentence);
  }
}
