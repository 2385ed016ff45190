package stafette.check;

import java.util.ArrayList;
import java.util.List;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.Place;
import stafette.time.Bar;
import stafette.time.BarBeat;
import stafette.time.Length;
import stafette.time.Position;

/** Names places in a player's part. */
final class Whereabouts {
  private Whereabouts() {}

  static Place of(Player player, Line line, int stroke) {
    return new Place(player.name(), line.placeOf(stroke).at());
  }

  /** A stroke of the line that begins just then, else the beat of the score that holds the time. */
  static Place of(Player player, Line line, long micros) {
    int low = 0;
    int high = line.count() - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (line.onsetMicros(middle) < micros) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return line.onsetMicros(low) == micros
        ? of(player, line, low)
        : new Place(player.name(), beatAt(line, micros));
  }

  private static BarBeat beatAt(Line line, long micros) {
    int low = 0;
    int high = line.bars().count() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (line.micros(line.bars().get(middle).span().start()) <= micros) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    Bar bar = line.bars().get(low);
    Position last = bar.span().start();
    for (Position beat : beats(bar)) {
      if (line.micros(beat) <= micros) {
        last = beat;
      }
    }
    return bar.nameOf(last);
  }

  private static List<Position> beats(Bar bar) {
    List<Position> result = new ArrayList<>();
    Position at = bar.span().start();
    while (bar.span().contains(at)) {
      result.add(at);
      Length beat = bar.beatLengthAt(at);
      at = bar.beatStart(at).plus(beat);
    }
    return result;
  }
}
