package stafette.desktop.window;

import java.nio.file.Path;
import java.util.Optional;
import stafette.desktop.state.LineInWords;
import stafette.desktop.state.Session;
import stafette.desktop.texts.Texts;

/** Sees to it that work by hand is asked about before it leaves the desk. */
final class Leaving {
  private final Session session;
  private final Asking asking;
  private final LineInWords words;
  private final Texts texts;

  Leaving(Session session, Asking asking, LineInWords words, Texts texts) {
    this.session = session;
    this.asking = asking;
    this.words = words;
    this.texts = texts;
  }

  /** Does something after which the desk is another one; no if the user would rather not. */
  boolean before(Runnable next) {
    boolean allowed = isAllowed();
    if (allowed) {
      next.run();
    }
    return allowed;
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
    file.ifPresent(this::keepIn);
    return session.kept().safe();
  }

  private void keepIn(Path file) {
    words.attempt(
        texts,
        () -> {
          session.writing().savePlan(file);
          words.say(texts.get("window.written", file));
        });
  }
}
