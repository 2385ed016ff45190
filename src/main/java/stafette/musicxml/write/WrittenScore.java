package stafette.musicxml.write;

import java.util.List;
import stafette.musicxml.text.Replacement;
import stafette.words.Sentence;

/** A score with a plan written into it. */
public final class WrittenScore {
  private final byte[] bytes;
  private final List<Replacement> replacements;
  private final List<Sentence> changes;

  WrittenScore(byte[] bytes, List<Replacement> replacements, List<Sentence> changes) {
    this.bytes = bytes;
    this.replacements = List.copyOf(replacements);
    this.changes = List.copyOf(changes);
  }

  /** The whole file, not to be changed. */
  public byte[] bytes() {
    return bytes;
  }

  /** Where its text differs from the score's, by place. */
  public List<Replacement> replacements() {
    return replacements;
  }

  /** A sentence for each part that was changed; empty if the score had it all already. */
  public List<Sentence> changes() {
    return changes;
  }
}
