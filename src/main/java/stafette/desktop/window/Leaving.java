package stafette.desktop.window;

import java.nio.file.Path;
import java.util.Optional;
import stafette.desktop.state.Session;
import stafette.desktop.texts.Texts;
import stafette.work.Refusal;

/** Sees to it that work by hand is asked about before it leaves the desk. */
final class Leaving {
  private final Session session;
  private final Asking asking;
  private final Doer.Words words;
  private final Texts texts;

  Leaving(Session session, Asking asking, Doer.Words words, Texts texts) {
    this.session = session;
    this.asking = asking;
    this.words = words;
    this.texts = texts;
  }

  /** Does something after which the desk is another one, unless the user would rather not. */
  void before(Runnable next) {
    if (isAllowed()) {
      next.run();
    }
  }

  /** Whether the desk may be cleared: nothing would be lost, or the user has said so. */
  boolean isAllowed() {
    if (session.kept().safe()) {
      return true;
    }
    return switch (asking.parting()) {
      case KEEP -> isKept();
      case LEAVE -> true;
      case CANCEL -> false;
    };
  }

  private boolean isKept() {
    Optional<Path> file = session.kept().file().or(() -> asking.toWrite(words.proposed(".json")));
    try {
      if (file.isPresent()) {
        session.writing().savePlan(file.get());
        words.say(texts.get("window.written", file.get()));
      }
    } catch (Refusal e) {
      words.warn(texts.say(e));
    }
    return session.kept().safe();
  }
}
