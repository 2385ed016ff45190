package stafette.desktop.rules;

import java.util.Optional;
import stafette.limits.Assurance;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.Joins;
import stafette.plan.OverlapRule;
import stafette.plan.SourceTreatment;
import stafette.score.Slurring;
import stafette.score.ToneChoice;
import stafette.score.Tremolo;

/** Other rules that somebody asks for. Each answers in words why not; nothing if it holds now. */
public interface RuleGestures {
  Optional<String> favour(Favour favour);

  Optional<String> overlap(OverlapRule overlap);

  /** Rest before an entry. */
  Optional<String> ready(double seconds);

  Optional<String> assurance(Assurance assurance);

  Optional<String> hocket(Hocket hocket);

  /** How many always play. */
  Optional<String> together(int players);

  /**
   * Which tones of chords.
   *
   * @param each whether each of them gets players of its own
   */
  Optional<String> tones(ToneChoice choice, boolean each);

  /** What slurs the line gets beside those of the score. */
  Optional<String> slurring(Slurring slurring);

  Optional<String> tremolo(Tremolo tremolo);

  /** What writing makes of the line that was split. */
  Optional<String> source(SourceTreatment source);

  /** How the notes are marked that two players share. */
  Optional<String> joins(Joins joins);

  /** Whether louder instruments are marked softer. */
  Optional<String> balanced(boolean balanced);

  /** Whether harps are told in the score how to set their pedals. */
  Optional<String> pedals(boolean told);
}
