package stafette.split.thin;

import stafette.check.alone.Harmony;
import stafette.score.Line;

/** Where a background part may change its pattern, and how many times the price of a change. */
enum ChangePlace {
  /** Where something begins: a phrase, or four bars of one; a harmony; the player after a rest. */
  BEGINNING(1),
  /** After two bars of a phrase. */
  HALFWAY(2),
  ELSEWHERE(4);

  private static final int PHRASE = 4;

  private final int times;

  ChangePlace(int times) {
    this.times = times;
  }

  int times() {
    return times;
  }

  /**
   * Where a stroke stands.
   *
   * @param returning whether the player had something else to play just before, or lacked a note
   */
  static ChangePlace at(Line line, int j, boolean returning) {
    boolean bar = j == 0 || bar(line, j) != bar(line, j - 1);
    int inPhrase = Math.floorMod(line.phrase(j), PHRASE);
    if (returning || line.restsBefore(j) || Harmony.beginsAt(line, j) || (bar && inPhrase == 0)) {
      return BEGINNING;
    }
    return bar && inPhrase == PHRASE / 2 ? HALFWAY : ELSEWHERE;
  }

  private static int bar(Line line, int j) {
    return line.bars().at(line.stroke(j).onset()).index();
  }
}
