package stafette.sound;

import stafette.words.Objection;
import stafette.words.Sentence;

/** Sound can't be made on this Java, or with this soundbank; the message says why, for people. */
public final class NoSound extends Objection {
  private static final long serialVersionUID = 1;

  NoSound(Sentence sentence, Throwable cause) {
    super(sentence, cause);
  }

  NoSound(Sentence sentence) {
    super(sentence);
  }
}
