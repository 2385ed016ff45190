package stafette.picture.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import stafette.check.SegmentReport;
import stafette.check.ShownTechnique;
import stafette.check.Strain;
import stafette.plan.Handoff;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Played;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Position;

/** What one player is told of one of its turns. */
final class TurnWords {
  private final Plan plan;
  private final SegmentReport report;
  private final Segment segment;
  private final Played played;

  TurnWords(Plan plan, SegmentReport report) {
    this.plan = plan;
    this.report = report;
    segment = report.segment();
    played = plan.played(segment);
  }

  Played played() {
    return played;
  }

  Segment segment() {
    return segment;
  }

  Optional<Handoff> entry() {
    return plan.handoffs().stream()
        .filter(handoff -> handoff.enters().segments().contains(segment))
        .findFirst();
  }

  Optional<Handoff> exit() {
    return plan.handoffs().stream()
        .filter(handoff -> handoff.leaves().segments().contains(segment))
        .findFirst();
  }

  String entryPlace() {
    return SheetFigures.place(played.line(), played.first());
  }

  /** "count 14 bars"; empty if there is not more than one. */
  String counted() {
    Bar bar = played.line().bars().at(played.line().stroke(played.first()).onset());
    int bars = CountedStretch.restBefore(plan, segment.player(), bar);
    return bars < 2 ? "" : "count " + bars + " bars";
  }

  String exitPlace() {
    return SheetFigures.place(played.line(), played.last());
  }

  /** "from Flute 2", "after your own turn" or "begins the line". */
  String from() {
    return entry().map(handoff -> from(handoff)).orElse("you begin the line");
  }

  private String from(Handoff handoff) {
    String others = SheetHandoffs.others(plan, handoff.leaves(), segment.player());
    return others.isEmpty() ? "you play on" : "from " + others;
  }

  /** "to Flute 2". */
  String to() {
    return exit().map(handoff -> to(handoff)).orElse("you end the line");
  }

  private String to(Handoff handoff) {
    String others = SheetHandoffs.others(plan, handoff.enters(), segment.player());
    return others.isEmpty() ? "you play on" : "to " + others;
  }

  String sharedAtEntry() {
    return entry().map(this::sharing).orElse("");
  }

  String sharedAtExit() {
    return exit().map(this::sharing).orElse("");
  }

  private String sharing(Handoff handoff) {
    if (handoff.shared() <= 0) {
      return "after the rest";
    }
    int own = shared(handoff).size();
    return own == 0
        ? "sharing no note of yours"
        : "sharing " + SheetFigures.counted(own, "note", "notes");
  }

  /** When the player's own notes begin that others play too at a handoff. */
  List<Position> shared(Handoff handoff) {
    Line line = plan.line(segment);
    Position first = line.stroke(handoff.enters().first()).onset();
    Position last = line.stroke(handoff.leaves().last()).onset();
    return IntStream.rangeClosed(played.first(), played.last())
        .mapToObj(j -> played.line().stroke(j).onset())
        .filter(onset -> !onset.isBefore(first) && !onset.isAfter(last))
        .toList();
  }

  String technique() {
    return ShownTechnique.names(plan, segment);
  }

  /** Which notes of a hocket are the player's, and with whom it is shared. */
  String hocket() {
    return plan.turns().stream()
        .filter(turn -> turn.isHocket() && turn.segments().contains(segment))
        .findFirst()
        .map(
            turn ->
                unit()
                    + " in turn with "
                    + SheetHandoffs.others(plan, turn, segment.player())
                    + (turn.segments().get(0).equals(segment) ? "; you begin" : "; you follow"))
        .orElse("");
  }

  private String unit() {
    return switch (plan.brief().rules().hocket()) {
      case NO, STROKE -> "note by note";
      case GROUP -> "group by group";
      case BEAT -> "beat by beat";
    };
  }

  /** Which of several relays; that the turn was kept on purpose. */
  String remarks() {
    String relay = SheetHandoffs.relay(plan.brief(), segment.relay());
    String kept = isKept() ? "kept" : "";
    return relay + (relay.isEmpty() || kept.isEmpty() ? "" : ", ") + kept;
  }

  private boolean isKept() {
    return plan.brief().rules().locks().stream()
        .anyMatch(
            lock ->
                lock.relay() == segment.relay()
                    && Lock.playing(lock).equals(OptionalInt.of(segment.player()))
                    && segment.first() <= lock.first()
                    && lock.last() <= segment.last());
  }

  String length() {
    long micros =
        played.line().endMicros(played.last()) - played.line().onsetMicros(played.first());
    return SheetFigures.counted(played.strokes(), "note", "notes")
        + " in "
        + SheetFigures.seconds(micros);
  }

  /** The metronome mark of the fastest notes; nothing for a single note. */
  String rate() {
    return report.ratePerSecond() > 0 ? SheetFigures.mark(report.ratePerSecond()) : "a single note";
  }

  String perSecond() {
    return report.ratePerSecond() > 0 ? SheetFigures.perSecond(report.ratePerSecond()) : "";
  }

  String share() {
    return Strain.percent(report.strain());
  }

  /** What the share is made of. */
  List<String> shares() {
    return List.of(
        "rate " + Strain.percent(report.use()), "tired " + Strain.percent(report.tiredness()));
  }

  double breath() {
    return report.breath();
  }
}
