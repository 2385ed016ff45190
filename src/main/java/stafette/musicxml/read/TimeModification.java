package stafette.musicxml.read;

import java.util.Optional;
import stafette.musicxml.text.DecimalText;
import stafette.musicxml.text.Element;
import stafette.musicxml.text.Malformed;
import stafette.notation.BarItem.Ratio;
import stafette.time.BeatUnit;
import stafette.time.Length;
import stafette.time.Rational;

/**
 * How a note differs in time from what its written value says; nested tuplets already multiplied.
 *
 * @param actual so many
 * @param normal in the time of so many
 * @param unit the value of which the normal ones are counted, if stated
 */
public record TimeModification(int actual, int normal, Optional<Length> unit) {
  static Optional<TimeModification> in(Element note) throws Malformed {
    Optional<Element> found = note.child("time-modification");
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Element modification = found.get();
    int actual =
        DecimalText.wholeOf(modification, "actual-notes", 0, Ratio.MOST.intValueExact(), 0);
    int normal =
        DecimalText.wholeOf(modification, "normal-notes", 0, Ratio.MOST.intValueExact(), 0);
    Optional<Length> unit =
        modification
            .textOf("normal-type")
            .flatMap(type -> BeatUnit.of(type, modification.all("normal-dot").size()))
            .map(BeatUnit::length);
    return actual == 0 || normal == 0 || actual == normal
        ? Optional.empty()
        : Optional.of(new TimeModification(actual, normal, unit));
  }

  Rational ratio() {
    return Rational.of(normal, actual);
  }
}
