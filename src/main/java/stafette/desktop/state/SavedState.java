package stafette.desktop.state;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Where what is on the desk is kept.
 *
 * @param file the plan file that it belongs to, if there is one
 * @param safe whether nothing made by hand would be lost with the desk
 */
public record SavedState(Optional<Path> file, boolean safe) {
  /** In no file, and needing none: a choice or a search brings it back. */
  public static final SavedState EASILY_HAD_AGAIN = new SavedState(Optional.empty(), true);

  /** In no file, though there is work by hand in it. */
  static final SavedState NOWHERE = new SavedState(Optional.empty(), false);

  static SavedState in(Path file) {
    return new SavedState(Optional.of(file), true);
  }

  /** After work by hand. */
  SavedState changed() {
    return new SavedState(file, false);
  }

  /** After a search, which differs from what a file has. */
  SavedState searched() {
    return file.isPresent() ? changed() : this;
  }

  /** After the plan was written into a score; a plan file stays behind what was changed since. */
  SavedState written() {
    return new SavedState(file, safe || file.isEmpty());
  }
}
