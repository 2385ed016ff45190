package stafette.desktop.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stafette.check.Cost;
import stafette.check.HandoffCost;
import stafette.check.HandoffReasons;
import stafette.check.SegmentCost;
import stafette.desktop.texts.Texts;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.time.BarBeat;

/**
 * One thing that costs points.
 *
 * @param what in words
 * @param why in words; may be empty
 */
record CostRow(String what, int points, String why) {
  /** All that costs something, the dearest first. */
  static List<CostRow> of(Plan plan, Cost cost, Texts texts) {
    List<CostRow> rows = new ArrayList<>();
    for (int i = 0; i < plan.segments().size(); i++) {
      add(rows, plan, plan.segments().get(i), cost.segments().get(i), texts);
    }
    for (int i = 0; i < plan.handoffs().size(); i++) {
      add(rows, plan, plan.handoffs().get(i), cost.handoffs().get(i), texts);
    }
    rows.add(new CostRow(texts.get("cost.players"), cost.players(), ""));
    rows.add(new CostRow(texts.get("cost.hockets"), cost.hockets(), ""));
    return rows.stream()
        .filter(row -> row.points() > 0)
        .sorted(Comparator.comparingInt(CostRow::points).reversed())
        .toList();
  }

  private static void add(
      List<CostRow> rows, Plan plan, Segment segment, SegmentCost cost, Texts texts) {
    String place = texts.say(at(plan.line(segment), segment.first()));
    String name = plan.player(segment).name();
    rows.add(new CostRow(texts.get("cost.strain", name, place), cost.strain(), ""));
    rows.add(new CostRow(texts.get("cost.short", name, place), cost.shortTurn(), ""));
    rows.add(new CostRow(texts.get("cost.register", name, place), cost.register(), ""));
  }

  private static void add(
      List<CostRow> rows, Plan plan, Handoff handoff, HandoffCost cost, Texts texts) {
    HandoffReasons why = HandoffReasons.of(plan.brief(), handoff);
    String place =
        texts.say(at(plan.brief().line(handoff.leaves().relay()), handoff.enters().first()));
    rows.add(
        new CostRow(texts.get("cost.handoff", place), cost.handoff(), texts.say(why.handoff())));
    rows.add(new CostRow(texts.get("cost.entry", place), cost.entry(), texts.say(why.entry())));
    rows.add(
        new CostRow(texts.get("cost.landing", place), cost.landing(), texts.say(why.landing())));
    rows.add(new CostRow(texts.get("cost.phrase", place), cost.phrase(), texts.say(why.phrase())));
    rows.add(
        new CostRow(texts.get("cost.overlap", place), cost.overlap(), texts.say(why.overlap())));
    rows.add(new CostRow(texts.get("cost.blend", place), cost.blend(), texts.say(why.blend())));
  }

  private static BarBeat at(Line line, int stroke) {
    return line.bars().nameOf(line.stroke(stroke).onset());
  }
}
