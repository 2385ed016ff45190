package stafette.picture.sheet;

import java.util.List;
import stafette.check.Pedals;
import stafette.limits.PedalCourse;
import stafette.limits.Way;
import stafette.plan.Played;
import stafette.words.Sentence;

/** How a harp sets its pedals for a turn. */
final class PedalWords {
  private PedalWords() {}

  static Sentence of(Played played, Way way) {
    List<PedalCourse.PedalSetup> setups = Pedals.of(played, way);
    return setups.isEmpty()
        ? Sentence.of("no course of the pedals has all notes")
        : Sentence.of(
            "pedals {0}",
            Sentence.list("; ", setups.stream().map(setup -> words(played, setup)).toList()));
  }

  private static Sentence words(Played played, PedalCourse.PedalSetup setup) {
    return setup.stroke() == played.first()
        ? Sentence.list(List.of(setup.setting().toString()))
        : Sentence.of(
            "from {0} {1}",
            SheetFigures.place(played.line(), setup.stroke()), setup.setting().toString());
  }
}
