package stafette.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import stafette.check.ear.Ear;
import stafette.check.ear.HandoffEar;
import stafette.check.ear.OnsetSpread;
import stafette.check.join.JoinAdvice;
import stafette.check.join.JoinReport;
import stafette.plan.Plan;
import stafette.plan.Seat;

/** What the handoffs of a plan may do to the ear, as text. */
final class EarText {
  private static final int WIDTH = 100;

  /** Where what is said of a plan begins, beside its heads. */
  private static final int MARGIN = 11;

  private static final String COLUMNS =
      "together: the level while both play, above that of who leaves alone; then: the level of who enters alone, beside that of who leaves";

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
          PlanText.at(plan, ear.handoff()),
          PlanText.names(plan, ear.handoff()),
          ear.together().map(t -> decibel(t.aboveLeavingDecibel())).orElse("-"),
          ear.together().map(t -> decibel(t.aboveLouderDecibel())).orElse("-"),
          decibel(ear.thenDecibel()),
          ear.together().map(t -> spread(t.spread())).orElse("-"),
          ear.together().map(t -> NumberText.oneDecimal(t.noticeableMillis()) + " ms").orElse("-"),
          ear.distance().map(EarText::distance).orElse("-"));
    }
    boolean seated = ears.stream().anyMatch(ear -> ear.distance().isPresent());
    StringBuilder out =
        new StringBuilder("At the handoffs (an estimate, outside the cost)\n\n")
            .append(table.text(2))
            .append('\n')
            .append(wrapped(COLUMNS));
    Ear.SOURCES.stream()
        .filter(source -> seated || !source.equals(Ear.DISTANCE))
        .forEach(source -> out.append(wrapped(source)));
    return out.toString();
  }

  /** All there is to see to at each join, a row each; empty for a plan without handoffs. */
  static String joins(Plan plan) {
    TextTable table =
        new TextTable().row("at", "handoff", "what to see to (advice, outside the cost)");
    for (JoinReport join : JoinReport.of(plan)) {
      table.row(
          PlanText.at(plan, join.handoff()),
          PlanText.names(plan, join.handoff()),
          join.inWords().toString());
    }
    return plan.handoffs().isEmpty() ? "" : "Joins\n\n" + table.text(2);
  }

  /** Only what is to be done at joins, each thing once with its places; empty where nothing is. */
  static String joinsToMend(Plan plan) {
    String list =
        JoinAdvice.of(plan).stream()
            .map(advice -> wrapped(advice.what() + " (at " + advice.places() + ")", MARGIN))
            .collect(Collectors.joining());
    return list.isEmpty() ? "" : "Joins" + list.substring("Joins".length());
  }

  /** A sentence in lines that fit, all but the first indented further. */
  static String wrapped(String sentence) {
    return wrapped(sentence, 2);
  }

  /** The same, the first line indented by so many spaces and the others by two more. */
  static String wrapped(String sentence, int indent) {
    StringBuilder out = new StringBuilder();
    StringBuilder line = new StringBuilder(" ".repeat(indent - 1));
    for (String word : sentence.split(" ", -1)) {
      if (line.length() + 1 + word.length() > WIDTH) {
        out.append(line).append('\n');
        line = new StringBuilder(" ".repeat(indent + 1));
      }
      line.append(' ').append(word);
    }
    return out.append(line).append('\n').toString();
  }

  static String decibel(double level) {
    String text = String.format(Locale.ROOT, "%+.1f dB", level);
    return text.equals("-0.0 dB") ? "+0.0 dB" : text;
  }

  private static String spread(OnsetSpread spread) {
    return Math.round(spread.leastMillis()) + " to " + Math.round(spread.mostMillis()) + " ms";
  }

  private static String distance(HandoffEar.Distance distance) {
    return NumberText.oneDecimal(distance.metres())
        + " m, "
        + NumberText.oneDecimal(distance.delayMillis())
        + " ms";
  }
}
