package stafette.keep;

import java.io.IOException;
import java.nio.channels.ClosedByInterruptException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.util.Optional;
import stafette.words.Sentence;

/** What the system says of a file that can't be had, without the words of Java round it. */
final class FileTrouble {
  private FileTrouble() {}

  /** In few words, to stand in brackets. */
  static Sentence with(IOException e) {
    if (e instanceof AccessDeniedException) {
      return Sentence.of("the system does not allow it");
    }
    if (e instanceof FileSystemLoopException) {
      return Sentence.of("links lead round in a circle");
    }
    if (e instanceof ClosedByInterruptException) {
      return Sentence.of("it was ended");
    }
    Optional<String> reason =
        Optional.ofNullable(
            e instanceof FileSystemException file ? file.getReason() : e.getMessage());
    return reason
        .map(text -> Sentence.of("{0}", text))
        .orElse(Sentence.of("the system gives no reason"));
  }
}
