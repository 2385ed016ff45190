package stafette.desktop.state;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Where what is on the desk is kept.
 *
 * @param file the plan file that it belongs to, if there is one
 * @param safe whether nothing made by hand would be lost with the desk
 */
public record Kept(Optional<Path> file, boolean safe) {
  /** In no file, and needing none: a choice or a search brings it back. */
  public static final Kept EASILY_HAD_AGAIN = new Kept(Optional.empty(), true);

  /** In no file, though there is work by hand in it. */
  static final Kept NOWHERE = new Kept(Optional.empty(), false);

  static Kept in(Path file) {
    return new Kept(Optional.of(file), true);
  }

  /** After work by hand. */
  Kept changed() {
    return new Kept(file, false);
  }

  /** After a search, which differs from what a file has. */
  Kept searched() {
    return file.isPresent() ? changed() : this;
  }

  /** After the plan was written into a score; a plan file stays behind what was changed since. */
  Kept written() {
    return new Kept(file, safe || file.isEmpty());
  }
}
