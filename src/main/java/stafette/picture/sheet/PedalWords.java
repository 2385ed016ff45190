package stafette.picture.sheet;

import java.util.stream.Collectors;
import stafette.limits.HarpPedals;
import stafette.plan.HarpTurn;

/** How a harp sets its pedals for a turn: all before its first one, then those that move. */
final class PedalWords {
  private PedalWords() {}

  static String of(HarpTurn turn) {
    if (turn.setups().isEmpty()) {
      return "no course of the pedals has all notes";
    }
    String changes =
        turn.changes().stream()
            .map(change -> words(turn, change))
            .collect(Collectors.joining("; "));
    return changes.isEmpty() ? "" : "pedals " + changes;
  }

  private static String words(HarpTurn turn, HarpTurn.PedalChange change) {
    String set =
        change.setsAll()
            ? change.setting().toString()
            : change.moved().stream().map(PedalWords::words).collect(Collectors.joining(" "));
    return change.stroke() == turn.played().first()
        ? set
        : "from " + SheetFigures.place(turn.played().line(), change.stroke()) + " " + set;
  }

  private static String words(HarpPedals.Pedal pedal) {
    return pedal.alter() == 0 ? pedal.letter() + " natural" : pedal.toString();
  }
}
