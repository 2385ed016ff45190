package stafette.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import stafette.check.Ear;
import stafette.check.HandoffEar;
import stafette.plan.Plan;
import stafette.work.PlayPlan;

/** What was played, as text. */
final class SoundText {
  private static final String SOURCES =
      "published: unrelated sources add up as 10 log10(10^(L1/10) + 10^(L2/10)), two equal ones to 3.01 dB more than either; measured: the energy of the shared notes in this sound, beside that of who leaves alone. On one short note two synthetic voices beat, and anything up to 6 dB may come out; the mean of many tells more";

  private SoundText() {}

  /** Which file, how long, and how loud the handoffs are. */
  static String of(Plan plan, Path file, PlayPlan.Sounded sounded) {
    String text = "Sounded    " + file + ", " + Figures.oneDecimal(sounded.seconds()) + " s\n";
    return sounded.togetherDecibel().isPresent() ? text + levels(plan, sounded) : text;
  }

  private static String levels(Plan plan, PlayPlan.Sounded sounded) {
    List<HandoffEar> ears = Ear.of(plan, Map.of());
    TextTable table = new TextTable().row("at", "handoff", "published", "measured");
    for (int i = 0; i < ears.size(); i++) {
      HandoffEar ear = ears.get(i);
      table.row(
          PlanText.at(plan, ear.handoff()),
          PlanText.names(plan, ear.handoff()),
          ear.together().map(t -> EarText.decibel(t.aboveLeavingDecibel())).orElse("-"),
          measured(sounded.stepDecibels().get(i)));
    }
    table.row("", "all together", "", measured(sounded.togetherDecibel()));
    return "\nLouder while both play\n\n" + table.text(2) + "\n" + EarText.wrapped(SOURCES);
  }

  private static String measured(OptionalDouble decibel) {
    return decibel.isPresent() ? EarText.decibel(decibel.getAsDouble()) : "-";
  }
}
