package stafette.check;

import java.util.List;

/**
 * What the judge says of a plan.
 *
 * @param findings what is wrong: in the plan's shape, then segment by segment, then player by
 *     player; empty if the plan holds
 * @param keepsMargin whether it holds within the margin of tempo of its rules as well
 * @param segments one report for each segment, in order
 * @param cost under the plan's own weights
 * @param hardest the share of players who manage the hardest part, between 0 and 1
 * @param odds that all players manage, between 0 and 1
 * @param oddsAtHeadroom that they would manage the same plan at {@link #HEADROOM} times the tempo;
 *     never more than {@code odds}
 */
public record Verdict(
    List<Finding> findings,
    boolean keepsMargin,
    List<SegmentReport> segments,
    Cost cost,
    double hardest,
    double odds,
    double oddsAtHeadroom) {
  /** What a conductor may add on the night: five per cent; a choice of ours, no measured figure. */
  public static final double HEADROOM = 1.05;

  public Verdict {
    findings = List.copyOf(findings);
    segments = List.copyOf(segments);
  }

  public boolean holds() {
    return findings.isEmpty();
  }
}
