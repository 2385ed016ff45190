package stafette.json;

import java.util.ArrayList;
import java.util.List;
import stafette.words.Sentence;
import stafette.words.UnreadableFile;

/** A place in a file, where what is wrong is told; all spots of a file tell it together. */
final class Spot {
  private final String place;
  private final List<Sentence> told;

  private Spot(String place, List<Sentence> told) {
    this.place = place;
    this.told = told;
  }

  /** A whole file. */
  static Spot of(String file) {
    return new Spot(file, new ArrayList<>());
  }

  /** A member of this object. */
  Spot in(String member) {
    return at(place + ", " + member);
  }

  /** An item of a list. */
  Spot in(String list, int index) {
    return in(item(list, index));
  }

  /** What to call an item of a list: the third of "players" is "player 3". */
  static String item(String list, int index) {
    return list.replaceFirst("s$", "") + " " + (index + 1);
  }

  /** Another place, told together with this one. */
  Spot at(String other) {
    return new Spot(other, told);
  }

  @Override
  public String toString() {
    return place;
  }

  void tell(Sentence what) {
    told.add(Sentence.of("{0}: {1}", place, what));
  }

  /** Tells that a member is not what is wanted. */
  void refuse(String member, Sentence wanted, Object found) {
    tell(Sentence.of("{0} must be {1}, found {2}", member, wanted, found.toString()));
  }

  void throwIfAny() throws UnreadableFile {
    if (!told.isEmpty()) {
      throw new UnreadableFile(told);
    }
  }
}
