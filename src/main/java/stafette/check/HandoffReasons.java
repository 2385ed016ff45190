package stafette.check;

import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.Weights;
import stafette.score.Line;

/**
 * Why a handoff costs what it costs: a few words for each part of {@link HandoffCost}.
 *
 * @param handoff its price and its cover
 * @param entry where in the bar who enters begins
 * @param landing where in the bar who leaves ends
 * @param overlap how much they share beside what was aimed at
 * @param blend from what instrument to what; of hocket pairs the two that blend worst
 */
public record HandoffReasons(
    String handoff, String entry, String landing, String overlap, String blend) {
  public static HandoffReasons of(Brief brief, Handoff handoff) {
    Line line = brief.line(handoff.enters().relay());
    Weights weights = brief.rules().weights();
    boolean free = Costing.overSilence(line, handoff);
    return new HandoffReasons(
        free
            ? "after a rest of the line, which costs nothing"
            : price(weights, line.cover(handoff.leaves().last())),
        "enters " + at(line, handoff.enters().first()),
        "lands " + at(line, handoff.leaves().last()),
        free
            ? "nothing shared"
            : overlap(handoff.shared(), Costing.target(brief, handoff.leaves())),
        blend(weights, Pairing.worst(brief, handoff)));
  }

  private static String price(Weights weights, int cover) {
    int taken = Math.min(Math.min(cover, weights.coverMost()), weights.handoff());
    return taken == 0
        ? "nothing covers it"
        : weights.handoff() + " less " + taken + ": attacks of other parts cover it";
  }

  private static String at(Line line, int stroke) {
    return switch (line.rank(stroke)) {
      case BAR -> "on the first beat of the bar";
      case BEAT -> "on the beat";
      case HALF -> isThird(line, stroke) ? "on a third of the beat" : "on half the beat";
      case ELSEWHERE -> "off the beat";
    };
  }

  private static boolean isThird(Line line, int stroke) {
    return line.placeOf(stroke).at().beatText().endsWith("/3");
  }

  private static String overlap(int shared, int target) {
    String wanted = target == 1 ? "the landing note alone" : "the " + target + " aimed at";
    int beside = Math.abs(shared - target);
    return beside == 0
        ? "shares " + wanted
        : Wording.notes(beside) + (shared > target ? " more" : " fewer") + " shared than " + wanted;
  }

  private static String blend(Weights weights, Pairing pairing) {
    Instrument leaving = pairing.leaving();
    Instrument entering = pairing.entering();
    if (leaving.name().equals(entering.name())) {
      return leaving.name() + " to " + entering.name();
    }
    double louder = entering.levelDecibel() - leaving.levelDecibel();
    return leaving.name()
        + " to "
        + entering.name()
        + (Math.abs(louder) > weights.decibelFree()
            ? ", " + Wording.decibel(Math.abs(louder)) + (louder > 0 ? " louder" : " softer")
            : "");
  }
}
