package stafette.tables;

import java.util.ArrayList;
import java.util.List;

/** What was found wrong so far, so that a user sees all of it at once. */
final class Problems {
  private final List<String> found = new ArrayList<>();

  /**
   * @param where "techniques.csv, row 14"
   * @param what the rest of the sentence
   */
  void add(String where, String what) {
    found.add(where + ": " + what);
  }

  List<String> all() {
    return List.copyOf(found);
  }

  void throwIfAny() throws UnreadableFile {
    if (!found.isEmpty()) {
      throw new UnreadableFile(found);
    }
  }
}
