package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stafette.time.Position;
import stafette.time.Span;

/**
 * When a keyboard's right pedal is down, from its signs in the order of time (MusicXML 4.0,
 * pedal-type). A second press without a lift takes the pedal anew. A line that breaks off lifts it,
 * unless it goes on later. What ends or changes while only the middle pedal is down is that one's.
 */
final class RightPedal {
  private final Map<Position, List<WrittenMeasure.PedalSign>> signs = new TreeMap<>();
  private final List<Span> down = new ArrayList<>();
  private Optional<Position> pressed = Optional.empty();
  private boolean isMiddleDown;
  private boolean isBroken;

  void add(Position at, WrittenMeasure.PedalSign sign) {
    signs.computeIfAbsent(at, key -> new ArrayList<>()).add(sign);
  }

  /** The spans; one that is never lifted stays down to the end of the score. */
  List<Span> down(Position end) {
    signs.forEach((at, here) -> here.stream().sorted().distinct().forEach(sign -> take(at, sign)));
    lift(end);
    return List.copyOf(down);
  }

  private void take(Position at, WrittenMeasure.PedalSign sign) {
    switch (sign) {
      case STOP -> {
        if (pressed.isPresent()) {
          lift(at);
        } else {
          isMiddleDown = false;
        }
      }
      case BREAK -> {
        isBroken = pressed.isPresent();
        lift(at);
      }
      case MIDDLE -> isMiddleDown = true;
      case CHANGE -> {
        if (pressed.isPresent() || !isMiddleDown) {
          press(at);
        }
      }
      case PRESS -> press(at);
      case RESUME -> resume(at);
      default -> throw new IllegalStateException("an unknown sign of the pedal: " + sign);
    }
  }

  private void press(Position at) {
    lift(at);
    pressed = Optional.of(at);
    isBroken = false;
  }

  private void lift(Position at) {
    pressed.filter(from -> from.isBefore(at)).ifPresent(from -> down.add(new Span(from, at)));
    pressed = Optional.empty();
  }

  private void resume(Position at) {
    if (isBroken) {
      pressed = Optional.of(down.remove(down.size() - 1).start());
      isBroken = false;
    } else if (pressed.isEmpty()) {
      press(at);
    }
  }
}
