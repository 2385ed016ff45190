package stafette.picture.notes;

import java.util.Locale;

/** Clefs, by the note on the bottom line of the staff. */
public enum Clef {
  TREBLE(0x1D11E, 30, 0),
  ALTO(0x1D121, 24, 0),
  TENOR(0x1D121, 22, 1),
  BASS(0x1D122, 18, 0),
  /** Reads as the treble clef does. */
  PERCUSSION(0x1D125, 30, 0);

  private final String sign;
  private final int bottomLine;
  private final int raisedSpaces;

  Clef(int codePoint, int bottomLine, int raisedSpaces) {
    this.sign = Character.toString(codePoint);
    this.bottomLine = bottomLine;
    this.raisedSpaces = raisedSpaces;
  }

  /** The clef that an instrument's table names: "G2", "F4", "C3", "C4", "percussion". */
  public static Clef of(String name) {
    return switch (name.toUpperCase(Locale.ROOT)) {
      case "F4" -> BASS;
      case "C3" -> ALTO;
      case "C4" -> TENOR;
      case "PERCUSSION" -> PERCUSSION;
      default -> TREBLE;
    };
  }

  String sign() {
    return sign;
  }

  /** The letter on the bottom line, counted from C0. */
  int bottomLine() {
    return bottomLine;
  }

  /** How far the sign stands above where the face has it, in staff spaces. */
  int raisedSpaces() {
    return raisedSpaces;
  }
}
