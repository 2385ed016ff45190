package stafette.split.thin;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import stafette.check.alone.ThinnedStroke;
import stafette.check.alone.Thinning;
import stafette.plan.GivenStretch;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.time.Position;

/**
 * Cuts a line into stretches and says what a player may keep of each. A stretch is a bar; a bar in
 * which the score keeps the player from some strokes, or the instrument lacks some, is cut into its
 * beats.
 */
final class ThinChoices {
  private final Line line;
  private final Player player;
  private final long readyMicros;
  private final boolean sounding;

  ThinChoices(Line line, Player player, long readyMicros, boolean sounding) {
    this.line = line;
    this.player = player;
    this.readyMicros = readyMicros;
    this.sounding = sounding;
  }

  /** A stretch before it is known which patterns tell it from others. */
  private record Cut(int first, int last, boolean whole, boolean hindered) {}

  /** The stretches one after the other, each with its choices from full to empty. */
  List<ThinStretch> all() {
    List<Cut> cuts = cuts();
    Set<Thinning> different = different(cuts);
    return IntStream.range(0, cuts.size())
        .mapToObj(i -> stretch(cuts.get(i), i > 0 && cuts.get(i - 1).hindered, different))
        .toList();
  }

  private List<Cut> cuts() {
    List<Cut> result = new ArrayList<>();
    for (int first = 0; first < line.count(); ) {
      int last = lastOfBar(first);
      if (isHindered(first, last)) {
        for (int beat = first; beat <= last; ) {
          int end = lastOfBeat(beat);
          result.add(new Cut(beat, end, false, isHindered(beat, end)));
          beat = end + 1;
        }
      } else {
        result.add(new Cut(first, last, true, false));
      }
      first = last + 1;
    }
    return result;
  }

  private int lastOfBar(int first) {
    int last = first;
    while (last + 1 < line.count() && bar(last + 1) == bar(first)) {
      last++;
    }
    return last;
  }

  private int bar(int j) {
    return line.bars().at(line.stroke(j).onset()).index();
  }

  private int lastOfBeat(int first) {
    int last = first;
    while (last + 1 < line.count() && line.sameBeat(last + 1) && bar(last + 1) == bar(first)) {
      last++;
    }
    return last;
  }

  private boolean isHindered(int first, int last) {
    for (int j = first; j <= last; j++) {
      if (!reaches(line.stroke(j)) || isTaken(line.onsetMicros(j), line.endMicros(j))) {
        return true;
      }
    }
    return false;
  }

  private boolean reaches(Stroke stroke) {
    return stroke.tones().stream().allMatch(player.instrument()::reaches);
  }

  private boolean reachesAll(List<ThinnedStroke> strokes) {
    return strokes.stream().map(ThinnedStroke::stroke).allMatch(this::reaches);
  }

  private boolean isTaken(long from, long to) {
    return player.busy().stream().anyMatch(busy -> busy.fromMicros() < to && from < ready(busy));
  }

  private long ready(GivenStretch busy) {
    return busy.toMicros() + Math.max(readyMicros, busy.changeMicros());
  }

  /** Patterns that keep the same wherever the player is free are one: the first of them. */
  private Set<Thinning> different(List<Cut> cuts) {
    Map<List<Position>, Thinning> first = new LinkedHashMap<>();
    first.put(List.of(), Thinning.NOTHING);
    for (Thinning pattern : Thinning.values()) {
      List<Position> onsets =
          cuts.stream()
              .filter(cut -> !cut.hindered)
              .flatMap(cut -> kept(cut, pattern).stream())
              .map(kept -> kept.stroke().onset())
              .toList();
      first.putIfAbsent(onsets, pattern);
    }
    return Set.copyOf(first.values());
  }

  private ThinStretch stretch(Cut cut, boolean returning, Set<Thinning> different) {
    Map<Thinning, List<ThinnedStroke>> kept = new EnumMap<>(Thinning.class);
    for (Thinning pattern : Thinning.values()) {
      List<ThinnedStroke> strokes = kept(cut, pattern);
      boolean offered =
          cut.hindered
              ? pattern == Thinning.NOTHING || (!strokes.isEmpty() && reachesAll(strokes))
              : different.contains(pattern);
      if (offered) {
        kept.put(pattern, strokes);
      }
    }
    return new ThinStretch(
        cut.first,
        cut.last,
        cut.whole,
        cut.hindered,
        ChangePlace.at(line, cut.first, returning),
        kept);
  }

  private List<ThinnedStroke> kept(Cut cut, Thinning pattern) {
    return ThinnedStroke.of(line, cut.first, cut.last, pattern, sounding);
  }
}
