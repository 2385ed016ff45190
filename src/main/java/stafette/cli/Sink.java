package stafette.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/** Where a stream of the terminal's leads, which knows whether all of it arrived. */
final class Sink extends FilterOutputStream {
  private Optional<String> failure = Optional.empty();

  Sink(OutputStream to) {
    super(to);
  }

  @Override
  public void write(int one) throws IOException {
    attempt(() -> out.write(one));
  }

  @Override
  public void write(byte[] bytes, int from, int length) throws IOException {
    attempt(() -> out.write(bytes, from, length));
  }

  @Override
  public void flush() throws IOException {
    attempt(out::flush);
  }

  private interface SinkAction {
    void run() throws IOException;
  }

  private void attempt(SinkAction step) throws IOException {
    try {
      step.run();
    } catch (IOException e) {
      failure = failure.or(() -> Optional.of(String.valueOf(e.getMessage())));
      throw e;
    }
  }

  /** What the system said when it did not take everything; empty if it did. */
  Optional<String> failure() {
    return failure;
  }

  /** Whether whoever read it has gone away, as head does once it has enough. */
  static boolean isGone(String failure) {
    return failure.toLowerCase(Locale.ROOT).contains("pipe");
  }
}
