package stafette.picture.sheet;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import stafette.limits.HarpPedals;
import stafette.limits.Way;
import stafette.plan.Played;
import stafette.score.Pitch;
import stafette.score.Tone;

/** How a harp sets its pedals for a turn. */
final class PedalWords {
  private PedalWords() {}

  static String of(Played played, Way way) {
    Set<Integer> sounding = new HashSet<>();
    Set<Integer> repeated = new HashSet<>();
    List<Tone> before = List.of();
    for (int j = played.first(); j <= played.last(); j++) {
      List<Tone> tones = played.line().stroke(j).tones();
      keys(tones).forEach(sounding::add);
      if (keys(tones).toList().equals(keys(before).toList())) {
        keys(tones).forEach(repeated::add);
      }
      before = tones;
    }
    return HarpPedals.settingFor(sounding, way.twinStrings() ? repeated : Set.of())
        .map(setting -> "pedals " + setting)
        .orElse("no one setting of the pedals has all notes: change on the way");
  }

  private static Stream<Integer> keys(List<Tone> tones) {
    return tones.stream().filter(Pitch.class::isInstance).map(Tone::key);
  }
}
