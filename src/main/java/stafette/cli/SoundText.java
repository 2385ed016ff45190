package stafette.cli;

import java.util.Locale;
import java.util.OptionalDouble;
import stafette.plan.Handoff;
import stafette.plan.Plan;
import stafette.work.PlayPlan;

/** What was played, and the steps in level at the handoffs, as text. */
final class SoundText {
  private static final String PUBLISHED =
      "published: unrelated sources add up as 10 log10(10^(L1/10) + 10^(L2/10)), two equal ones to 3.01 dB more than either; here with the levels of the players as planned with";
  private static final String OVER_ONE =
      "over one: measured in the sound, the overlap beside the same notes without who enters; the voices of a soundbank have levels of their own, and of one short note two steady tones make anything between silence and +6.02 dB, so look at the mean";
  private static final String OVER_BEFORE =
      "over before: measured beside up to eight notes just before, whatever their pitches and accents";
  private static final String COHERENT =
      "one synthetic voice twice at the same moment would add up to +6.02 dB, as no two players do; so they are kept apart, with --spread off too: then by up to 4 ms, less than is noticed";
  private static final String OTHERS =
      "measured with all that sounds, so that what goes on beside the handoff lowers the step";

  private SoundText() {}

  static String of(PlayPlan.PlayedPiece what, PlayPlan.SoundRequest request, PlayPlan.Heard heard) {
    return String.format(
            Locale.ROOT,
            "Played     %s (%.1f s of music, file %.1f s)\n",
            request.file(),
            heard.musicSeconds(),
            heard.fileSeconds())
        + (heard.steps().isEmpty() ? "" : steps(what, request, heard));
  }

  private static String steps(
      PlayPlan.PlayedPiece what, PlayPlan.SoundRequest request, PlayPlan.Heard heard) {
    Plan plan = what.judged().plan();
    TextTable table =
        new TextTable().row("", "at", "handoff", "published", "over one", "over before");
    for (PlayPlan.PlayStep step : heard.steps()) {
      Handoff handoff = plan.handoffs().get(step.number() - 1);
      row(
          table,
          Integer.toString(step.number()),
          PlanText.at(plan, handoff),
          PlanText.names(plan, handoff),
          step);
    }
    heard.mean().ifPresent(mean -> row(table, "", "", "mean", mean));
    boolean others = request.withScore() || plan.relays().size() > 1;
    return "\nLevel while both play, above that of who leaves\n\n"
        + table.text(2)
        + "\n"
        + EarText.wrapped(PUBLISHED)
        + EarText.wrapped(OVER_ONE)
        + EarText.wrapped(OVER_BEFORE)
        + EarText.wrapped(COHERENT)
        + (others ? EarText.wrapped(OTHERS) : "");
  }

  private static void row(
      TextTable table, String number, String at, String names, PlayPlan.PlayStep step) {
    table.row(
        number,
        at,
        names,
        decibel(step.published()),
        decibel(step.overOne()),
        decibel(step.overBefore()));
  }

  private static String decibel(OptionalDouble level) {
    return level.isPresent() ? String.format(Locale.ROOT, "%+.2f dB", level.getAsDouble()) : "-";
  }
}
