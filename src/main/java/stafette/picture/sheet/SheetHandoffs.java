package stafette.picture.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stafette.check.join.JoinCut;
import stafette.check.join.JoinReport;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Turn;
import stafette.score.Line;
import stafette.score.LineSource;

/** What is said of a handoff. */
final class SheetHandoffs {
  private final Plan plan;
  private final Handoff handoff;

  SheetHandoffs(Plan plan, Handoff handoff) {
    this.plan = plan;
    this.handoff = handoff;
  }

  Line line() {
    return plan.brief().line(handoff.enters().relay());
  }

  String entry() {
    return SheetFigures.place(line(), handoff.enters().first());
  }

  String landing() {
    return SheetFigures.place(line(), handoff.leaves().last());
  }

  /** When who enters begins, on the line's clock. */
  long entryMicros() {
    return line().onsetMicros(handoff.enters().first());
  }

  String time() {
    return SheetFigures.seconds(entryMicros());
  }

  /** "1 note", or "after the rest". */
  String together() {
    return handoff.shared() > 0
        ? SheetFigures.counted(handoff.shared(), "note", "notes")
        : "none, after the rest";
  }

  /** What helps: that others attack there and cover it, that it was kept on purpose. */
  String hint() {
    boolean kept =
        plan.brief().rules().locks().stream().anyMatch(lock -> Lock.keeps(lock, handoff));
    boolean covered = handoff.shared() > 0 && line().cover(handoff.leaves().last()) > 0;
    return (kept ? "kept" : "")
        + (kept && covered ? ", " : "")
        + (covered ? "other parts attack here" : "");
  }

  /** What there is to see to, as short as it goes; empty for most. */
  String toDo() {
    JoinReport join = JoinReport.of(plan, handoff);
    List<String> words = new ArrayList<>();
    join.cuts().forEach(cut -> words.add(cut == JoinCut.SLUR ? "cuts a slur" : "cuts a group"));
    join.balance().ifPresent(levels -> words.add(levels.inWords().toString()));
    if (join.isExposed()) {
      words.add("the accent exposes the entry");
    }
    join.audibleFlam()
        .ifPresent(flam -> words.add("may flam (" + flam.notes() + " notes of one pitch)"));
    return String.join("; ", words);
  }

  /** The players of a turn without one of them: "Flute 1 and Flute 2". */
  static String others(Plan plan, Turn turn, int player) {
    return turn.segments().stream()
        .filter(segment -> segment.player() != player)
        .map(segment -> plan.player(segment).name())
        .collect(Collectors.joining(" and "));
  }

  /** Which of several relays: "top tone", "first relay"; empty if there is but one. */
  static String relay(Brief brief, int relay) {
    if (brief.lines().size() == 1) {
      return "";
    }
    List<String> tones =
        brief.lines().stream().map(Line::source).map(LineSource::tone).map(t -> t.text()).toList();
    boolean byTone = tones.stream().distinct().count() == tones.size();
    return byTone ? tone(tones.get(relay)) : "relay " + (relay + 1);
  }

  private static String tone(String text) {
    return Character.isDigit(text.charAt(0)) ? "tone " + text : text + " tone";
  }
}
