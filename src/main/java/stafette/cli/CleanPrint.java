package stafette.cli;

import java.io.PrintStream;
import java.nio.charset.Charset;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Prints to a terminal. Characters with which a name in a score could steer the terminal, or turn
 * the order of what is read round, are shown as a sign in their place; only line ends pass.
 */
final class CleanPrint extends PrintStream {
  private static final Pattern CONTROL =
      Pattern.compile("[\\p{Cc}\\u202a-\\u202e\\u2066-\\u2069&&[^\\n\\r]]|\\r(?!\\n)");
  private static final String IN_ITS_PLACE = "\uFFFD";

  private final Sink sink;

  CleanPrint(Sink sink, boolean autoFlush, Charset charset) {
    super(sink, autoFlush, charset);
    this.sink = sink;
  }

  /** What the system said when it did not take everything; empty if it did. */
  Optional<String> failure() {
    flush();
    return sink.failure();
  }

  @Override
  public void print(String text) {
    super.print(CONTROL.matcher(String.valueOf(text)).replaceAll(IN_ITS_PLACE));
  }

  @Override
  public void print(Object fact) {
    print(String.valueOf(fact));
  }
}
