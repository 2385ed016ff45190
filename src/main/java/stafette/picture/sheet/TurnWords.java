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
import stafette.plan.Turn;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.BarBeat;
import stafette.time.Position;
import stafette.words.Sentence;

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

  BarBeat entryPlace() {
    return SheetFigures.place(played.line(), played.first());
  }

  /** "count 14 bars"; empty if there is not more than one. */
  Sentence counted() {
    Bar bar = played.line().bars().at(played.line().stroke(played.first()).onset());
    int bars = CountedStretch.restBefore(plan, segment.player(), bar);
    return bars < 2 ? Sentence.NONE : Sentence.of("count {0} bars", bars);
  }

  BarBeat exitPlace() {
    return SheetFigures.place(played.line(), played.last());
  }

  /** "from Flute 2", "after your own turn" or "begins the line". */
  Sentence from() {
    return entry().map(handoff -> from(handoff)).orElse(Sentence.of("you begin the line"));
  }

  private Sentence from(Handoff handoff) {
    Sentence others = SheetHandoffs.others(plan, handoff.leaves(), segment.player());
    return others.isEmpty() ? Sentence.of("you play on") : Sentence.of("from {0}", others);
  }

  /** "to Flute 2". */
  Sentence to() {
    return exit().map(handoff -> to(handoff)).orElse(Sentence.of("you end the line"));
  }

  private Sentence to(Handoff handoff) {
    Sentence others = SheetHandoffs.others(plan, handoff.enters(), segment.player());
    return others.isEmpty() ? Sentence.of("you play on") : Sentence.of("to {0}", others);
  }

  Sentence sharedAtEntry() {
    return entry().map(this::sharing).orElse(Sentence.NONE);
  }

  Sentence sharedAtExit() {
    return exit().map(this::sharing).orElse(Sentence.NONE);
  }

  private Sentence sharing(Handoff handoff) {
    if (handoff.shared() <= 0) {
      return Sentence.of("after the rest");
    }
    int own = shared(handoff).size();
    return own == 0
        ? Sentence.of("sharing no note of yours")
        : Sentence.of("sharing {0}", SheetFigures.notes(own));
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

  Sentence technique() {
    return ShownTechnique.inWords(plan, segment);
  }

  /** Which notes of a hocket are the player's, and with whom it is shared. */
  Sentence hocket() {
    return plan.turns().stream()
        .filter(turn -> turn.isHocket() && turn.segments().contains(segment))
        .findFirst()
        .map(
            turn ->
                turn.segments().get(0).equals(segment)
                    ? Sentence.of("{0} in turn with {1}; you begin", unit(), partner(turn))
                    : Sentence.of("{0} in turn with {1}; you follow", unit(), partner(turn)))
        .orElse(Sentence.NONE);
  }

  private Sentence partner(Turn turn) {
    return SheetHandoffs.others(plan, turn, segment.player());
  }

  private Sentence unit() {
    return switch (plan.brief().rules().hocket()) {
      case NO, STROKE -> Sentence.of("note by note");
      case GROUP -> Sentence.of("group by group");
      case BEAT -> Sentence.of("beat by beat");
    };
  }

  /** Which of several relays; that the turn was kept on purpose. */
  Sentence remarks() {
    Sentence relay = SheetHandoffs.relay(plan.brief(), segment.relay());
    if (!isKept()) {
      return relay;
    }
    return relay.isEmpty() ? Sentence.of("kept") : Sentence.of("{0}, kept", relay);
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

  Sentence length() {
    long micros =
        played.line().endMicros(played.last()) - played.line().onsetMicros(played.first());
    return Sentence.of(
        "{0} in {1}", SheetFigures.notes(played.strokes()), SheetFigures.seconds(micros));
  }

  /** The metronome mark of the fastest notes; nothing for a single note. */
  Sentence rate() {
    return report.ratePerSecond() > 0
        ? SheetFigures.mark(report.ratePerSecond())
        : Sentence.of("a single note");
  }

  Sentence perSecond() {
    return report.ratePerSecond() > 0
        ? SheetFigures.perSecond(report.ratePerSecond())
        : Sentence.NONE;
  }

  String share() {
    return Strain.percent(report.strain());
  }

  /** What the share is made of. */
  List<Sentence> shares() {
    return List.of(
        Sentence.of("rate {0}", Strain.percent(report.use())),
        Sentence.of("tired {0}", Strain.percent(report.tiredness())));
  }

  double breath() {
    return report.breath();
  }
}
