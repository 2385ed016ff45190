package stafette.desktop.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Asks what only the user knows. */
public interface Asking {
  /** A score or a plan to open. */
  Optional<Path> toOpen();

  /**
   * A file to write.
   *
   * @param proposed its name, and the folder to begin in
   */
  Optional<Path> toWrite(Path proposed);

  /** Whether the user agrees to what would be done. */
  boolean agrees(Proposal proposal);

  /** What shall become of work by hand that is in no file yet, before it leaves the desk. */
  Parting parting();

  /**
   * Something to agree to.
   *
   * @param title what would be done
   * @param what in single lines
   * @param note what else should be known; may be empty
   * @param action what the button says that does it
   */
  record Proposal(String title, List<String> what, String note, String action) {
    public Proposal {
      what = List.copyOf(what);
    }
  }

  /** What becomes of work that leaves the desk. */
  enum Parting {
    KEEP,
    LEAVE,
    CANCEL
  }
}
