package stafette.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.check.Strain;
import stafette.limits.Demand;
import stafette.plan.Margin;
import stafette.plan.Plan;
import stafette.split.Reason;
import stafette.split.tempo.FastestTempo;
import stafette.split.tempo.TempoCell;
import stafette.split.tempo.TempoRow;
import stafette.work.CompareTempi;

/** Tempo against number of players, in words. */
final class TempoText {
  private TempoText() {}

  static String of(CompareTempi.TempoOutcome outcome) {
    StringBuilder out = new StringBuilder();
    if (!outcome.score().score().tempoStated()) {
      out.append("The score states no tempo; quarter = 120 is assumed (--tempo sets another).\n");
    }
    out.append(
            PlanText.line(
                outcome.brief().line(), Demand.usualRatePerSecond(outcome.brief().line())))
        .append("\n\nThe highest strain, by tempo and number of players:\n\n")
        .append(table(outcome))
        .append("\n- no plan exists")
        .append(hasUnknown(outcome) ? "  ? not known in the time set (--time)\n\n" : "\n\n");
    outcome.table().fastest().forEach(edge -> out.append(fastest(edge)));
    out.append(fewest(outcome.table().presentRow()));
    outcome.presentPlan().map(plan -> PlanText.summary(plan, Margin.NONE)).ifPresent(out::append);
    outcome.table().presentRow().reasons().forEach(reason -> out.append(why(reason)));
    return out.append('\n').append(NumberText.CAUTION).append('\n').toString();
  }

  private static String table(CompareTempi.TempoOutcome outcome) {
    int players = outcome.brief().players().size();
    TextTable table =
        new TextTable()
            .row(
                Stream.concat(
                        Stream.of("tempo"),
                        IntStream.rangeClosed(1, players).mapToObj(TempoText::players))
                    .toArray(String[]::new));
    for (TempoRow row : outcome.table().rows()) {
      String mark = row.mark() + (row.mark().equals(outcome.present()) ? ", now" : "");
      table.row(
          Stream.concat(Stream.of(mark), row.cells().stream().map(cell -> cell(outcome, cell)))
              .toArray(String[]::new));
    }
    return table.text(2);
  }

  private static String cell(CompareTempi.TempoOutcome outcome, TempoCell cell) {
    OptionalDouble strain = outcome.strain(cell);
    if (strain.isPresent()) {
      return Strain.percent(strain.getAsDouble());
    }
    return cell.proven() ? "-" : "?";
  }

  private static boolean hasUnknown(CompareTempi.TempoOutcome outcome) {
    return outcome.table().rows().stream()
        .flatMap(row -> row.cells().stream())
        .anyMatch(cell -> cell.plan().isEmpty() && !cell.proven());
  }

  private static String fastest(FastestTempo edge) {
    String head = edge.players() == 1 ? "Fastest    " : "           ";
    String tempo =
        edge.mark()
            .map(mark -> (edge.proven() ? "up to " : "at least up to ") + mark)
            .orElse(
                edge.proven() ? "at none of these tempi" : "at none of these tempi that is known");
    return head + players(edge.players()) + " " + tempo + names(edge.plan()) + "\n";
  }

  private static String fewest(TempoRow present) {
    OptionalInt fewest = present.fewest();
    if (fewest.isEmpty()) {
      return "Fewest     all together can't play it at "
          + present.mark()
          + (present.fewestIsProven() ? "\n" : ", as far as is known\n");
    }
    return "Fewest     "
        + players(fewest.getAsInt())
        + " at "
        + present.mark()
        + (present.fewestIsProven() ? "" : ", if not fewer")
        + names(present.cell(fewest.getAsInt()).plan())
        + "\n";
  }

  private static String names(Optional<Plan> plan) {
    return plan.map(Plan::playing).map(TempoText::joined).orElse("");
  }

  private static String joined(List<String> names) {
    return ": " + String.join(", ", names);
  }

  private static String why(Reason reason) {
    return "           " + Options.say(reason.text()) + "\n";
  }

  private static String players(int number) {
    return number + (number == 1 ? " player" : " players");
  }
}
