package stafette.cli;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stafette.words.Fault;
import stafette.words.Sentence;

/** What is said where the program itself is at fault. */
final class Faults {
  private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}_./:=+,#-]+");

  private static final String REPORT = "Please report it, with the file and this command: ";

  private Faults() {}

  /**
   * Where it showed, what it was, and the command to report it with.
   *
   * @param file what the command was about, for a fault that names no place of its own
   */
  static String words(Throwable fault, Optional<String> file, String... args) {
    Sentence where = Fault.where(fault);
    String place = where.isEmpty() ? file.map(name -> name + ": ").orElse("") : where + ": ";
    return place
        + what(Fault.what(fault))
        + System.lineSeparator()
        + (Fault.what(fault) instanceof OutOfMemoryError ? "The command was: " : REPORT)
        + command(args);
  }

  private static String what(Throwable what) {
    return what instanceof OutOfMemoryError
        ? Fault.outOfMemory() + ", such as java -Xmx4g -jar stafette.jar …"
        : "this is a fault of the program, not of your score (" + told(what) + spot(what) + ")";
  }

  /** The fault and what it came from, without Java's packages. */
  private static String told(Throwable what) {
    return Stream.iterate(what, Objects::nonNull, Throwable::getCause)
        .map(each -> each.getClass().getSimpleName() + message(each))
        .collect(Collectors.joining("; "));
  }

  private static String message(Throwable what) {
    return what.getMessage() == null ? "" : ": " + what.getMessage();
  }

  /** The line of the program's own text that was at work. */
  private static String spot(Throwable what) {
    return Arrays.stream(what.getStackTrace())
        .filter(frame -> frame.getClassName().startsWith("stafette."))
        .findFirst()
        .map(frame -> "; " + frame.getFileName() + ":" + frame.getLineNumber())
        .orElse("");
  }

  private static String command(String... args) {
    return Arrays.stream(args)
        .map(Faults::quoted)
        .collect(Collectors.joining(" ", "stafette ", ""));
  }

  private static String quoted(String arg) {
    return PLAIN.matcher(arg).matches() ? arg : '"' + arg.replace("\"", "\\\"") + '"';
  }
}
