package stafette.desktop.window;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import stafette.desktop.state.BackgroundWork;

/** The threads beside the window's own; a program that ends waits for none of them. */
final class Threads {
  private final ExecutorService aside = thread("aside");
  private final ExecutorService writer = thread("writer");
  private final ExecutorService hearing = thread("hearing");

  private static ExecutorService thread(String name) {
    return Executors.newSingleThreadExecutor(
        work -> {
          Thread thread = new Thread(work, name);
          thread.setDaemon(true);
          return thread;
        });
  }

  /** For the work on the desk. */
  BackgroundWork forDesk() {
    return new BackgroundWork(aside, Platform::runLater, writer);
  }

  /** For making ready what is heard. */
  BackgroundWork forHearing() {
    return new BackgroundWork(hearing, Platform::runLater, hearing);
  }

  /** Before or after whatever is worked on at the desk. */
  void aside(Runnable work) {
    aside.execute(work);
  }

  boolean areClosed() {
    return aside.isShutdown();
  }

  /** Ends them; what is to be written still is. */
  void close() {
    aside.shutdownNow();
    writer.shutdown();
    hearing.shutdownNow();
  }
}
