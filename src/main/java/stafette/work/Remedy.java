package stafette.work;

import stafette.check.SegmentReport;
import stafette.words.Sentence;

/**
 * A change under which a line has a plan, verified by making one.
 *
 * @param option what to type for it, such as {@code --tempo 104}; or what to do where no option
 *     does it
 * @param sentence what changes and what comes of it
 * @param plan a plan under the changed brief, the cheapest that was found
 */
public record Remedy(String option, Sentence sentence, JudgedPlan plan) {
  static Remedy of(String option, Sentence change, JudgedPlan judged) {
    long percent =
        Math.round(
            100
                * judged.verdict().segments().stream()
                    .mapToDouble(SegmentReport::strain)
                    .max()
                    .orElse(0));
    return new Remedy(
        option,
        Sentence.of(
            "{0}: {1} play it, highest strain {2} %",
            change, Sentence.list(judged.plan().playing()), percent),
        judged);
  }
}
