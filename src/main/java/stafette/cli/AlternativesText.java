package stafette.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import stafette.check.JudgedPlan;
import stafette.check.Strain;
import stafette.check.TempoWindow;
import stafette.check.Traits;
import stafette.score.Place;
import stafette.words.Sentence;
import stafette.work.SideBySide;
import stafette.work.SplitLine;

/** A plan and its alternatives side by side. */
final class AlternativesText {
  private final List<SplitLine.SplitOutcome> outcomes = new ArrayList<>();
  private final List<Traits> traits = new ArrayList<>();
  private final SideBySide plans;
  private final Details details;

  private AlternativesText(SideBySide plans, Details details) {
    this.details = details;
    this.plans = plans;
    outcomes.add(plans.main());
    traits.add(plans.traits().orElseThrow());
    for (SideBySide.Column column : plans.columns()) {
      outcomes.add(column.outcome());
      traits.add(column.traits());
    }
  }

  /**
   * A column for each plan, then what differs; empty if there is no plan.
   *
   * @param details whether points are told too
   */
  static String of(SideBySide plans, Details details) {
    return plans.traits().isEmpty() ? "" : new AlternativesText(plans, details).text();
  }

  private String text() {
    StringBuilder out = new StringBuilder();
    if (plans.columns().isEmpty()) {
      out.append("\nNo alternative differs enough from the plan:\n");
    } else {
      out.append("\nSide by side\n\n").append(table().text(2)).append('\n').append(differences());
    }
    plans
        .dropped()
        .forEach(
            dropped ->
                out.append("  -  ")
                    .append(dropped.favour().text())
                    .append(": ")
                    .append(Options.say(dropped.why()))
                    .append('\n'));
    return out.toString();
  }

  private TextTable table() {
    TextTable table = new TextTable();
    List<String> head = new ArrayList<>(List.of("", "plan"));
    IntStream.rangeClosed(1, plans.columns().size()).mapToObj(Integer::toString).forEach(head::add);
    table.row(head.toArray(String[]::new));
    row(table, "favours", (outcome, of) -> outcome.brief().rules().favour().text());
    row(table, "handoffs", (outcome, of) -> Integer.toString(of.handoffs()));
    players(table);
    row(table, "highest strain", (outcome, of) -> Strain.percent(of.highestStrain()));
    row(table, "mean strain", (outcome, of) -> Strain.percent(of.meanStrain()));
    row(table, "tightest from", (outcome, of) -> spot(of.tightest()));
    row(table, "odds", (outcome, of) -> (int) Math.floor(of.odds() * 100) + " in 100");
    row(table, "slowest", (outcome, of) -> window(outcome, TempoWindow::slowestText));
    row(table, "fastest", (outcome, of) -> window(outcome, TempoWindow::fastestText));
    if (details.explain()) {
      row(table, "blend", (outcome, of) -> of.blend() == 0 ? "-" : of.blend() + " points");
      row(table, "by the plan's weights", (outcome, of) -> Integer.toString(of.cost()));
      row(table, "by its own weights", (outcome, of) -> own(outcome));
    }
    return table;
  }

  /** A row for each player who plays in one of the plans. */
  private void players(TextTable table) {
    for (int i = 0; i < traits.get(0).turns().size(); i++) {
      int player = i;
      if (traits.stream().anyMatch(one -> one.turns().get(player).segments() > 0)) {
        row(table, traits.get(0).turns().get(i).player(), (outcome, of) -> turns(of, player));
      }
    }
  }

  private void row(
      TextTable table, String name, BiFunction<SplitLine.SplitOutcome, Traits, String> of) {
    List<String> cells = new ArrayList<>(List.of(name));
    for (int i = 0; i < outcomes.size(); i++) {
      cells.add(of.apply(outcomes.get(i), traits.get(i)));
    }
    table.row(cells.toArray(String[]::new));
  }

  private static String turns(Traits of, int player) {
    int segments = of.turns().get(player).segments();
    return segments == 0 ? "-" : segments == 1 ? "1 turn" : segments + " turns";
  }

  private static String spot(Place place) {
    return place.part() + ", " + place.at().inShort();
  }

  private static String window(
      SplitLine.SplitOutcome outcome, Function<TempoWindow, Sentence> end) {
    return outcome
        .plan()
        .flatMap(JudgedPlan::window)
        .map(end)
        .map(Sentence::toString)
        .orElse("at no tempo");
  }

  private static String own(SplitLine.SplitOutcome outcome) {
    int cost = outcome.plan().orElseThrow().verdict().cost().total();
    return outcome
        .result()
        .match(
            best -> cost + ", optimal",
            none -> Integer.toString(cost),
            stopped -> cost + ", at least " + stopped.bound());
  }

  private String differences() {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < plans.columns().size(); i++) {
      SideBySide.Column column = plans.columns().get(i);
      out.append("  ")
          .append(i + 1)
          .append("  ")
          .append(column.favour().text())
          .append(": ")
          .append(Sentence.list(column.differs()))
          .append('\n');
    }
    return out.toString();
  }
}
