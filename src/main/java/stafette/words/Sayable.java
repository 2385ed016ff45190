package stafette.words;

/** Something that has words of its own, in any language. */
@FunctionalInterface
public interface Sayable {
  /** The words. */
  Sentence inWords();
}
