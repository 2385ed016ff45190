package stafette.words;

import java.util.List;

/** A table or a JSON file that can't be used, with everything that is wrong in it. */
public final class UnreadableFile extends Objection {
  private static final long serialVersionUID = 1;

  private final transient List<Sentence> problems;

  /**
   * @param problems at least one, each a sentence that names file and place
   */
  public UnreadableFile(List<Sentence> problems) {
    super(Sentence.list(System.lineSeparator(), problems));
    this.problems = List.copyOf(problems);
  }

  public List<String> problems() {
    return problems.stream().map(Sentence::toString).toList();
  }
}
