package stafette.picture.sheet;

import java.util.List;
import java.util.stream.Collectors;
import stafette.check.Pedals;
import stafette.limits.PedalCourse;
import stafette.limits.Way;
import stafette.plan.Played;

/** How a harp sets its pedals for a turn. */
final class PedalWords {
  private PedalWords() {}

  static String of(Played played, Way way) {
    List<PedalCourse.PedalSetup> setups = Pedals.of(played, way);
    return setups.isEmpty()
        ? "no course of the pedals has all notes"
        : "pedals "
            + setups.stream().map(setup -> words(played, setup)).collect(Collectors.joining("; "));
  }

  private static String words(Played played, PedalCourse.PedalSetup setup) {
    return setup.stroke() == played.first()
        ? setup.setting().toString()
        : "from " + SheetFigures.place(played.line(), setup.stroke()) + " " + setup.setting();
  }
}
