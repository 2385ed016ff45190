package stafette.desktop.rules;

import stafette.ask.SplitRequest;
import stafette.limits.Assurance;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.OverlapRule;
import stafette.plan.WrittenAs;
import stafette.score.Slurring;
import stafette.score.Tremolo;
import stafette.work.OpenLine;

/**
 * The rules in force.
 *
 * @param readySeconds rest before an entry
 * @param together how many always play
 * @param tones which tones of chords
 * @param fullest how many tones the fullest chord of the line has
 * @param slurring what slurs the line gets beside those of the score
 * @param writing how the plan is written into the score
 */
public record RulesNow(
    Favour favour,
    OverlapRule overlap,
    double readySeconds,
    Assurance assurance,
    Hocket hocket,
    int together,
    Tones tones,
    int fullest,
    Slurring slurring,
    Tremolo tremolo,
    WrittenAs writing) {
  /** The rules of a line. */
  public static RulesNow of(OpenLine line, WrittenAs writing) {
    SplitRequest asked = line.asked();
    return new RulesNow(
        asked.favour(),
        asked.overlap(),
        asked.readySeconds(),
        asked.assurance(),
        asked.relaying().hocket(),
        asked.relaying().together(),
        new Tones(line.line().source().tone(), asked.relaying().eachTone()),
        line.tones(),
        asked.line().slurring(),
        asked.line().tremolo(),
        writing);
  }
}
