package stafette.musicxml.share;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import stafette.limits.HarpPedals;
import stafette.plan.HarpTurn;
import stafette.time.Position;

/** The signs for a harpist's pedals: a diagram where many are set, names where one or two move. */
final class PedalSigns {
  private PedalSigns() {}

  /** Those for the turns of a harp. */
  static List<Sign> of(Collection<HarpTurn> turns) {
    return turns.stream()
        .flatMap(turn -> turn.changes().stream().map(change -> sign(turn, change)))
        .toList();
  }

  private static Sign sign(HarpTurn turn, HarpTurn.PedalChange change) {
    Position at = turn.played().line().stroke(change.stroke()).onset();
    return change.setsAll()
        ? Sign.pedals(at, change.setting())
        : Sign.pedalWords(
            at,
            change.moved().stream()
                .map(HarpPedals.Pedal::inWords)
                .collect(Collectors.joining(" ")));
  }
}
