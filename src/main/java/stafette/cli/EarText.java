package stafette.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import stafette.check.Ear;
import stafette.check.HandoffEar;
import stafette.check.OnsetSpread;
import stafette.plan.Plan;
import stafette.plan.Seat;

/** What the handoffs of a plan may do to the ear, as text. */
final class EarText {
  private EarText() {}

  /** A table of the handoffs, and below it on what it rests; empty for a plan without handoffs. */
  static String of(Plan plan, Map<String, Seat> seats) {
    List<HandoffEar> ears = Ear.of(plan, seats);
    if (ears.isEmpty()) {
      return "";
    }
    TextTable table =
        new TextTable()
            .row(
                "at",
                "handoff",
                "together",
                "over the louder",
                "then",
                "onsets apart",
                "just noticed",
                "distance");
    for (HandoffEar ear : ears) {
      table.row(
          PlanText.at(plan.line(), ear.handoff()),
          PlanText.names(plan, ear.handoff()),
          ear.together().map(t -> decibel(t.aboveLeavingDecibel())).orElse("-"),
          ear.together().map(t -> decibel(t.aboveLouderDecibel())).orElse("-"),
          decibel(ear.thenDecibel()),
          ear.together().map(t -> spread(t.spread())).orElse("-"),
          ear.together().map(t -> Figures.oneDecimal(t.noticeableMillis()) + " ms").orElse("-"),
          ear.distance().map(EarText::distance).orElse("-"));
    }
    StringBuilder out =
        new StringBuilder("At the handoffs (an estimate, outside the cost)\n\n")
            .append(table.text(2))
            .append(
                "\n  together: level while both play, above who leaves alone; then: who enters alone, against who leaves\n");
    Ear.SOURCES.forEach(source -> out.append("  ").append(source).append('\n'));
    return out.toString();
  }

  private static String decibel(double level) {
    String text = String.format(Locale.ROOT, "%+.1f dB", level);
    return text.equals("-0.0 dB") ? "+0.0 dB" : text;
  }

  private static String spread(OnsetSpread spread) {
    return Math.round(spread.leastMillis()) + " to " + Math.round(spread.mostMillis()) + " ms";
  }

  private static String distance(HandoffEar.Distance distance) {
    return Figures.oneDecimal(distance.metres())
        + " m, "
        + Figures.oneDecimal(distance.delayMillis())
        + " ms";
  }
}
