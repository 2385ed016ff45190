package stafette.desktop.state;

import java.nio.file.Path;
import stafette.desktop.texts.Texts;
import stafette.words.Refusal;

/** Where something is said in a line. */
public interface LineInWords {
  void say(String words);

  /** Says what can't be done. */
  void warn(String words);

  /** Says again how the plan on the desk stands. */
  void rest();

  /** A name for a file made from the score's. */
  Path proposed(String ending);

  /** Does something, or says why not. */
  default void attempt(Texts texts, Session.SessionStep step) {
    try {
      step.run();
    } catch (Refusal e) {
      warn(texts.say(e));
    }
  }
}
