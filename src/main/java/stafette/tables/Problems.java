package stafette.tables;

import java.util.ArrayList;
import java.util.List;
import stafette.words.Sentence;
import stafette.words.UnreadableFile;

/** What was found wrong so far, so that a user sees all of it at once. */
final class Problems {
  private final List<Sentence> found = new ArrayList<>();

  /**
   * @param where "techniques.csv, row 14"
   * @param what the rest of the sentence
   */
  void add(String where, Sentence what) {
    found.add(Sentence.of("{0}: {1}", where, what));
  }

  /** In words that only the command line says, of tables. */
  void add(String where, String what) {
    add(where, Sentence.name(what));
  }

  List<String> all() {
    return found.stream().map(Sentence::toString).toList();
  }

  void throwIfAny() throws UnreadableFile {
    if (!found.isEmpty()) {
      throw new UnreadableFile(found);
    }
  }
}
