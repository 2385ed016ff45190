package stafette.cli;

import java.util.List;
import stafette.check.Cost;
import stafette.check.Costing;
import stafette.check.Effort;
import stafette.check.HandoffCost;
import stafette.check.HandoffReasons;
import stafette.check.SegmentCost;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Segment;

/** What a plan costs and why: by segment, by handoff, and the sum. */
final class CostText {
  private final Plan plan;
  private final Cost cost;

  private CostText(Plan plan, Cost cost) {
    this.plan = plan;
    this.cost = cost;
  }

  static String of(Plan plan, Cost cost) {
    CostText text = new CostText(plan, cost);
    return "Cost       in points under the weights of this plan\n\n"
        + text.segments()
        + (cost.handoffs().isEmpty() ? "" : "\n" + text.handoffs())
        + "\n"
        + text.sum();
  }

  private String segments() {
    TextTable table =
        new TextTable()
            .row(
                "player",
                "from",
                "to",
                "fast notes",
                "spent at the end",
                "short",
                "register",
                "points");
    for (int i = 0; i < plan.segments().size(); i++) {
      Segment segment = plan.segments().get(i);
      SegmentCost parts = cost.segments().get(i);
      Effort effort = Costing.effort(plan.brief(), segment);
      table.row(
          plan.player(segment).name(),
          PlanText.at(plan.line(segment), segment.first()),
          PlanText.at(plan.line(segment), segment.last()),
          NumberText.oneDecimal(effort.fastPoints()),
          NumberText.oneDecimal(effort.spentPoints()),
          Integer.toString(parts.shortTurn()),
          Integer.toString(parts.register()),
          Integer.toString(parts.total()));
    }
    return table.text(2);
  }

  private String handoffs() {
    TextTable table = new TextTable().row("at", "handoff", "part", "points", "why");
    List<Handoff> handoffs = plan.handoffs();
    for (int i = 0; i < handoffs.size(); i++) {
      HandoffCost parts = cost.handoffs().get(i);
      HandoffReasons why = HandoffReasons.of(plan.brief(), handoffs.get(i));
      table
          .row(
              PlanText.at(plan, handoffs.get(i)),
              PlanText.names(plan, handoffs.get(i)),
              "handoff",
              Integer.toString(parts.handoff()),
              why.handoff().toString())
          .row("", "", "entry", Integer.toString(parts.entry()), why.entry().toString())
          .row("", "", "landing", Integer.toString(parts.landing()), why.landing().toString())
          .row("", "", "phrase", Integer.toString(parts.phrase()), why.phrase().toString())
          .row("", "", "overlap", Integer.toString(parts.overlap()), why.overlap().toString())
          .row("", "", "blend", Integer.toString(parts.blend()), why.blend().toString());
    }
    return table.text(2);
  }

  private String sum() {
    long used = plan.segments().stream().mapToInt(Segment::player).distinct().count();
    int segments = cost.segments().stream().mapToInt(SegmentCost::total).sum();
    int handoffs = cost.handoffs().stream().mapToInt(HandoffCost::total).sum();
    TextTable table =
        new TextTable()
            .row(
                "segments",
                Integer.toString(segments),
                "fast notes and what is spent rounded together")
            .row("handoffs", Integer.toString(handoffs), "");
    if (cost.hockets() > 0) {
      table.row("hockets", Integer.toString(cost.hockets()), "for the stretches of pairs");
    }
    return table
        .row("players", Integer.toString(cost.players()), used + " used")
        .row("idle", Integer.toString(cost.idle()), "who was named, could play, and does not")
        .row("sum", Integer.toString(cost.total()), "")
        .text(2);
  }
}
