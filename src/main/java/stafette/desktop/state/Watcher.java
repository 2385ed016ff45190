package stafette.desktop.state;

import stafette.plan.Favour;
import stafette.split.Splitter;
import stafette.words.Sentence;
import stafette.work.OpenPlan;
import stafette.work.SideBySide;

/** Is told what becomes of a session, on the window's thread. */
public interface Watcher {
  /** Hears nothing. */
  Watcher NOBODY =
      new Watcher() {
        @Override
        public void changed(Desk desk, boolean dragging) {}

        @Override
        public void began(WatchedWork work) {}

        @Override
        public void progress(Splitter.Progress progress) {}

        @Override
        public void goesOn(boolean anything) {}

        @Override
        public void compared(SideBySide plans) {}

        @Override
        public void refused(Sentence why) {}
      };

  /**
   * Another desk, or the same with another plan.
   *
   * @param dragging whether it is only tried, the tempi not looked for
   */
  void changed(Desk desk, boolean dragging);

  /**
   * A file was opened, or what was left behind.
   *
   * @param score what became of the score since
   */
  default void opened(OpenPlan.ScoreNow score) {}

  /** Something that takes long has begun. */
  void began(WatchedWork work);

  /** A search goes on. */
  void progress(Splitter.Progress progress);

  /**
   * A search for another plan begins.
   *
   * @param favour what it favours
   * @param left how many are to come at most, this one included
   */
  default void comparing(Favour favour, int left) {}

  /**
   * Something that takes long has begun or is over.
   *
   * @param anything whether anything that takes long goes on
   */
  void goesOn(boolean anything);

  /** Other plans beside the present one. */
  void compared(SideBySide plans);

  /** Something can't be done; in words for a musician. */
  void refused(Sentence why);

  /** What takes long. */
  enum WatchedWork {
    OPENING,
    PROPOSING,
    PLANNING,
    MENDING,
    COMPARING,
    WRITING
  }
}
