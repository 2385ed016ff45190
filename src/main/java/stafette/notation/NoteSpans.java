package stafette.notation;

/**
 * What reaches over several strokes and begins or ends on one.
 *
 * @param slur slurs
 * @param trill trills that are written out
 */
public record NoteSpans(Reach slur, Reach trill) {
  public static final NoteSpans NONE = new NoteSpans(Reach.NONE, Reach.NONE);

  /**
   * Where something stands that reaches over several strokes.
   *
   * @param starts whether it begins on a note
   * @param stops whether it ends on a note
   */
  public record Reach(boolean starts, boolean stops) {
    public static final Reach NONE = new Reach(false, false);
  }
}
