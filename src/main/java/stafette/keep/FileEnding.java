package stafette.keep;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;

/** Tells what a file is to be by the ending of its name. */
public final class FileEnding {
  private FileEnding() {}

  /** The kind whose name the ending is; empty if it is none of them. */
  public static <E extends Enum<E>> Optional<E> of(Path file, Class<E> kinds) {
    String name = String.valueOf(file.getFileName()).toUpperCase(Locale.ROOT);
    return EnumSet.allOf(kinds).stream().filter(kind -> name.endsWith("." + kind)).findFirst();
  }
}
