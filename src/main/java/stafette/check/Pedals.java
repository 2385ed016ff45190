package stafette.check;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stafette.limits.HarpPedals;
import stafette.limits.PedalCourse;
import stafette.limits.Way;
import stafette.plan.Played;
import stafette.score.Line;

/** How the pedals of a harp are set for a turn. */
public final class Pedals {
  private Pedals() {}

  /** The settings one after the other; none where no course of settings has all notes. */
  public static List<PedalCourse.PedalSetup> of(Played played, Way way) {
    if (way.twinStrings()) {
      return twins(played)
          .map(setting -> List.of(new PedalCourse.PedalSetup(played.first(), setting)))
          .orElse(List.of());
    }
    PedalCourse course = PedalCourse.of(played.line(), played.first(), played.last());
    return course.last() == played.last()
        ? course.upTo(played.last())
        : withTheRest(played.line(), played.first(), played.last());
  }

  /** As the judge goes: with an eye on what comes after the turn. */
  private static List<PedalCourse.PedalSetup> withTheRest(Line line, int first, int last) {
    PedalCourse course = PedalCourse.from(line, first, 1);
    return course.last() >= last ? course.upTo(last) : List.of();
  }

  private static Optional<HarpPedals.Setting> twins(Played played) {
    Line line = played.line();
    Set<Integer> sounding = new HashSet<>();
    Set<Integer> repeated = new HashSet<>();
    for (int j = played.first(); j <= played.last(); j++) {
      sounding.addAll(line.stroke(j).keys());
      if (j > played.first() && line.stroke(j).isLike(line.stroke(j - 1))) {
        repeated.addAll(line.stroke(j).keys());
      }
    }
    return HarpPedals.settingFor(sounding, repeated);
  }
}
