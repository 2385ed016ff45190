package stafette.words;

import java.util.ArrayList;
import java.util.List;

/** A table or a JSON file that can't be used, with everything that is wrong in it. */
public final class UnreadableFile extends Objection {
  private static final long serialVersionUID = 1;

  /** A file damaged in one place may be wrong in a thousand. */
  private static final int MOST_TOLD = 20;

  private final transient List<Sentence> problems;

  /**
   * @param problems at least one, each a sentence that names file and place
   */
  public UnreadableFile(List<Sentence> problems) {
    super(Sentence.list(System.lineSeparator(), first(problems)));
    this.problems = List.copyOf(problems);
  }

  private static List<Sentence> first(List<Sentence> all) {
    List<Sentence> told = new ArrayList<>(all.subList(0, Math.min(MOST_TOLD, all.size())));
    if (all.size() > MOST_TOLD) {
      told.add(Sentence.of("and {0} more", all.size() - MOST_TOLD));
    }
    return told;
  }

  public List<String> problems() {
    return problems.stream().map(Sentence::toString).toList();
  }
}
