package stafette.words;

/**
 * Something that a user can set, as far as sentences speak of it: a fact that says how. Each front
 * end says it in a remark of its own, in parentheses with a blank before them; where it can't be
 * set nothing is said, so that the sentence reads well without.
 */
public enum Settable implements Sayable {
  /** Which tones of chords make a line. */
  TONES,
  /** How broken octaves and chords are read. */
  READING,
  PLAYERS,
  /** Techniques that not everybody has. */
  TECHNIQUES,
  /** The techniques of one player, in place of all expected ones. */
  PLAYER_TECHNIQUES,
  OVERLAP,
  /** The rest before an entry. */
  REST,
  FAVOUR,
  /** In what turns pairs of players take the line. */
  HOCKET,
  /** The instruments that a line is checked against. */
  INSTRUMENTS,
  /** Which limits are in force. */
  LIMITS,
  /** Who colours a line in the background. */
  COLOUR,
  SOUNDBANK,
  /** Whether a line is heard by one player and without overlaps too. */
  COMPARISON,
  SOLO,
  MUTE,
  PAPER,
  /** Whether a file that is there may be replaced. */
  REPLACING;

  /** Nothing, unless a front end knows better. */
  @Override
  public Sentence inWords() {
    return Sentence.NONE;
  }
}
