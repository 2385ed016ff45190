package stafette.split.thin;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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

  /** A pattern for the strokes from first to last, and what it keeps of them. */
  record Choice(int first, int last, Thinning pattern, List<ThinnedStroke> kept) {}

  /** The choices for each stretch, from full to empty. */
  List<List<Choice>> all() {
    List<List<Choice>> result = new ArrayList<>();
    for (int first = 0; first < line.count(); ) {
      int last = lastOfBar(first);
      if (isHindered(first, last)) {
        for (int beat = first; beat <= last; ) {
          int end = lastOfBeat(beat);
          result.add(choices(beat, end));
          beat = end + 1;
        }
      } else {
        result.add(choices(first, last));
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

  private boolean isTaken(long from, long to) {
    return player.busy().stream().anyMatch(busy -> busy.fromMicros() < to && from < ready(busy));
  }

  private long ready(GivenStretch busy) {
    return busy.toMicros() + Math.max(readyMicros, busy.changeMicros());
  }

  /** Patterns that keep the same strokes are one choice: the first of them. */
  private List<Choice> choices(int first, int last) {
    List<Choice> choices = new ArrayList<>();
    Set<List<Position>> known = new HashSet<>();
    for (Thinning pattern : Thinning.values()) {
      List<ThinnedStroke> kept = ThinnedStroke.of(line, first, last, pattern, sounding);
      boolean within = kept.stream().map(ThinnedStroke::stroke).allMatch(this::reaches);
      boolean named = !kept.isEmpty() || pattern == Thinning.NOTHING;
      if (within && named && known.add(kept.stream().map(k -> k.stroke().onset()).toList())) {
        choices.add(new Choice(first, last, pattern, kept));
      }
    }
    return choices;
  }
}
