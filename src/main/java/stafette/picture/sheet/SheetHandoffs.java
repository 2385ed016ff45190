package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.List;
import stafette.check.join.JoinCut;
import stafette.check.join.JoinReport;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.Joins;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Turn;
import stafette.plan.WrittenAs;
import stafette.score.Line;
import stafette.score.LineSource;
import stafette.score.ToneChoice;
import stafette.time.BarBeat;
import stafette.words.Sentence;

/** What is said of a handoff. */
final class SheetHandoffs {
  private final Plan plan;
  private final Handoff handoff;
  private final WrittenAs how;

  /**
   * @param how what is marked in the parts anyway
   */
  SheetHandoffs(Plan plan, Handoff handoff, WrittenAs how) {
    this.plan = plan;
    this.handoff = handoff;
    this.how = how;
  }

  Line line() {
    return plan.brief().line(handoff.enters().relay());
  }

  BarBeat entry() {
    return SheetFigures.place(line(), handoff.enters().first());
  }

  BarBeat landing() {
    return SheetFigures.place(line(), handoff.leaves().last());
  }

  /** When who enters begins, on the line's clock. */
  long entryMicros() {
    return line().onsetMicros(handoff.enters().first());
  }

  Sentence time() {
    return SheetFigures.seconds(entryMicros());
  }

  /** "1 note", or "after the rest". */
  Sentence together() {
    return handoff.shared() > 0
        ? SheetFigures.notes(handoff.shared())
        : Sentence.of("none, after the rest");
  }

  /** What helps: that others attack there and cover it, that it was kept on purpose. */
  List<Sentence> hints() {
    List<Sentence> hints = new ArrayList<>();
    if (plan.brief().rules().locks().stream().anyMatch(lock -> Lock.keeps(lock, handoff))) {
      hints.add(Sentence.of("kept"));
    }
    if (handoff.shared() > 0 && line().cover(handoff.leaves().last()) > 0) {
      hints.add(Sentence.of("other parts attack here"));
    }
    return hints;
  }

  /** What there is to see to that the parts don't have, as short as it goes; empty for most. */
  List<Sentence> toDo() {
    JoinReport join = JoinReport.of(plan, handoff);
    List<Sentence> words = new ArrayList<>();
    join.cuts()
        .forEach(
            cut ->
                words.add(
                    cut == JoinCut.SLUR
                        ? Sentence.of("cuts a slur")
                        : Sentence.of("cuts a group")));
    join.balance()
        .filter(levels -> !how.balanced())
        .ifPresent(levels -> words.add(levels.inWords()));
    boolean isPlain = how.joins() == Joins.SHADED && handoff.shared() > 0;
    if (join.isExposed() && !isPlain) {
      words.add(Sentence.of("the accent exposes the entry"));
    }
    join.audibleFlam()
        .ifPresent(
            flam -> words.add(Sentence.of("may flam ({0} notes of one pitch)", flam.notes())));
    return words;
  }

  /** The players of a turn without one of them: "Flute 1 and Flute 2"; nothing if none is left. */
  static Sentence others(Plan plan, Turn turn, int player) {
    return turn.segments().stream()
        .filter(segment -> segment.player() != player)
        .map(segment -> Sentence.list(List.of(plan.player(segment).name())))
        .reduce((one, other) -> Sentence.of("{0} and {1}", one, other))
        .orElse(Sentence.NONE);
  }

  /** Which of several relays: "top tone", "first relay"; empty if there is but one. */
  static Sentence relay(Brief brief, int relay) {
    if (brief.lines().size() == 1) {
      return Sentence.NONE;
    }
    List<ToneChoice> tones =
        brief.lines().stream().map(Line::source).map(LineSource::tone).toList();
    boolean byTone = tones.stream().distinct().count() == tones.size();
    return byTone ? tone(tones.get(relay)) : Sentence.of("relay {0}", relay + 1);
  }

  private static Sentence tone(ToneChoice choice) {
    return choice.match(
        all -> Sentence.of("all tones"),
        bottom -> Sentence.of("bottom tone"),
        fromTop ->
            fromTop.number() == 1
                ? Sentence.of("top tone")
                : Sentence.of("tone {0}", fromTop.number()));
  }
}
