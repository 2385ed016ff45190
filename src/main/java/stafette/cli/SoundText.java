package stafette.cli;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import stafette.check.Ear;
import stafette.check.HandoffEar;
import stafette.plan.Plan;
import stafette.work.PlayPlan;

/** What was played, and the steps in level at the handoffs, as text. */
final class SoundText {
  private static final String RECKONED =
      "published: unrelated sources add up as 10 log10(10^(L1/10) + 10^(L2/10)), two equal ones to 3.01 dB more than either; with the levels of the players as planned with";
  private static final String MEASURED =
      "measured: the mean square of the overlap in the file, above that of up to eight notes of the player who leaves, just before; the voices of a soundbank have levels of their own, and two steady tones on one short note make anything between silence and +6 dB, so look at the mean";
  private static final String COHERENT =
      "the same synthetic voice twice at once would add up to +6.02 dB; so the voices are kept apart, with --spread off by up to 4 ms, less than is noticed";
  private static final String OTHERS =
      "measured with all that sounds, so that what goes on beside the handoff lowers the step";

  private SoundText() {}

  static String of(PlayPlan.Played what, PlayPlan.Request request, PlayPlan.Heard heard) {
    return String.format(
            Locale.ROOT,
            "Played     %s (%.1f s of music, file %.1f s)%n",
            request.file(),
            heard.musicSeconds(),
            heard.fileSeconds())
        + (heard.steps().isEmpty() ? "" : steps(what, request, heard));
  }

  private static String steps(
      PlayPlan.Played what, PlayPlan.Request request, PlayPlan.Heard heard) {
    Plan plan = what.judged().plan();
    List<HandoffEar> ears = Ear.of(plan, what.seats());
    TextTable table = new TextTable().row("", "at", "handoff", "published", "measured");
    for (PlayPlan.Step step : heard.steps()) {
      HandoffEar ear = ears.get(step.number() - 1);
      table.row(
          Integer.toString(step.number()),
          PlanText.at(plan, ear.handoff()),
          PlanText.names(plan, ear.handoff()),
          decibel(
              ear.together().isPresent()
                  ? OptionalDouble.of(ear.together().get().aboveLeavingDecibel())
                  : OptionalDouble.empty()),
          decibel(step.measuredDecibel()));
    }
    table.row(
        "",
        "",
        "mean of those measured",
        decibel(heard.meanPublishedDecibel()),
        decibel(heard.meanDecibel()));
    boolean others = request.withScore() || plan.relays().size() > 1;
    return "\nLevel while both play, above that of who leaves\n\n"
        + table.text(2)
        + "\n"
        + EarText.wrapped(RECKONED)
        + EarText.wrapped(MEASURED)
        + EarText.wrapped(COHERENT)
        + (others ? EarText.wrapped(OTHERS) : "");
  }

  private static String decibel(OptionalDouble level) {
    return level.isPresent() ? String.format(Locale.ROOT, "%+.2f dB", level.getAsDouble()) : "-";
  }
}
