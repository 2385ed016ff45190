package stafette.picture.sheet;

import java.util.List;
import stafette.limits.HarpPedals;
import stafette.plan.HarpTurn;
import stafette.words.Sentence;

/** How a harp sets its pedals for a turn: all before its first one, then those that move. */
final class PedalWords {
  private PedalWords() {}

  static Sentence of(HarpTurn turn) {
    if (turn.setups().isEmpty()) {
      return Sentence.of("no course of the pedals has all notes");
    }
    List<Sentence> changes = turn.changes().stream().map(change -> words(turn, change)).toList();
    return changes.isEmpty()
        ? Sentence.NONE
        : Sentence.of("pedals {0}", Sentence.list("; ", changes));
  }

  private static Sentence words(HarpTurn turn, HarpTurn.PedalChange change) {
    Sentence set =
        change.setsAll()
            ? Sentence.list(List.of(change.setting().toString()))
            : Sentence.list(" ", change.moved().stream().map(PedalWords::words).toList());
    return change.stroke() == turn.played().first()
        ? set
        : Sentence.of(
            "from {0} {1}", SheetFigures.place(turn.played().line(), change.stroke()), set);
  }

  private static Sentence words(HarpPedals.Pedal pedal) {
    return pedal.alter() == 0
        ? Sentence.of("{0} natural", String.valueOf(pedal.letter()))
        : Sentence.list(List.of(pedal.toString()));
  }
}
