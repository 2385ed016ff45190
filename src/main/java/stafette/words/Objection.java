package stafette.words;

/** Something that stands in the way, told in words for a musician. */
public abstract class Objection extends Exception implements Sayable {
  private static final long serialVersionUID = 1;

  private final transient Sentence sentence;

  protected Objection(Sentence sentence) {
    super(sentence.toString());
    this.sentence = sentence;
  }

  protected Objection(Sentence sentence, Throwable cause) {
    super(sentence.toString(), cause);
    this.sentence = sentence;
  }

  @Override
  public Sentence inWords() {
    return sentence;
  }
}
