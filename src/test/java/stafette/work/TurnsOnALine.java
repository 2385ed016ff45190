package stafette.work;

import java.util.function.ToDoubleFunction;
import stafette.check.JudgedPlan;
import stafette.check.SegmentReport;
import stafette.check.Strain;
import stafette.check.TempoWindow;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Position;

/**
 * A plan in a line or two, to be read and compared: whose turn is which bars, and what it takes.
 */
final class TurnsOnALine {
  private final Plan plan;
  private final Line line;

  private TurnsOnALine(Plan plan) {
    this.plan = plan;
    this.line = plan.line();
  }

  /**
   * "Flute 1 1-2 | Flute 2 3-4": bars by their number; "3.2" is a place inside a bar, and what ends
   * there lands there.
   */
  static String turns(Plan plan) {
    TurnsOnALine turns = new TurnsOnALine(plan);
    return String.join(" | ", plan.segments().stream().map(turns::turn).toList());
  }

  /** "breath 40 %, tired 51 %, quarter = 41 to 114". */
  static String effort(JudgedPlan judged) {
    TempoWindow window = judged.window().orElseThrow();
    return "breath %s, tired %s, %s to %s"
        .formatted(
            Strain.percent(most(judged, SegmentReport::breath)),
            Strain.percent(most(judged, SegmentReport::tiredness)),
            window.slowestText(),
            window.fastestText());
  }

  private static double most(JudgedPlan judged, ToDoubleFunction<SegmentReport> what) {
    return judged.verdict().segments().stream().mapToDouble(what).max().orElse(0);
  }

  private String turn(Segment segment) {
    int index = plan.segments().indexOf(segment);
    boolean last = index == plan.segments().size() - 1;
    boolean lands = !last && plan.segments().get(index + 1).first() <= segment.last();
    String from = place(line.stroke(segment.first()).onset());
    String to = lands ? upTo(segment.last()) : bar(line.stroke(segment.last()).onset());
    return plan.player(segment).name() + " " + (from.equals(to) ? from : from + "-" + to);
  }

  private String upTo(int landing) {
    Position onset = line.stroke(landing).onset();
    Bar bar = line.bars().at(onset);
    return isFirst(onset) ? line.bars().get(bar.index() - 1).number() : place(onset);
  }

  private String place(Position onset) {
    return isFirst(onset) ? bar(onset) : line.bars().nameOf(onset).dotted().toString();
  }

  private String bar(Position onset) {
    return line.bars().at(onset).number();
  }

  private boolean isFirst(Position onset) {
    return line.bars().at(onset).span().start().equals(onset);
  }
}
