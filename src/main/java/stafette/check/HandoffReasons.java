package stafette.check;

import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.Weights;
import stafette.score.Line;
import stafette.time.Rank;
import stafette.words.Sentence;

/**
 * Why a handoff costs what it costs: a few words for each part of {@link HandoffCost}.
 *
 * @param handoff its price and its cover
 * @param entry where in the bar who enters begins
 * @param landing where in the bar who leaves ends
 * @param phrase where in the phrase it lands, or what it cuts
 * @param overlap how much they share beside what was aimed at
 * @param blend from what instrument to what; of hocket pairs the two that blend worst
 */
public record HandoffReasons(
    Sentence handoff,
    Sentence entry,
    Sentence landing,
    Sentence phrase,
    Sentence overlap,
    Sentence blend) {
  public static HandoffReasons of(Brief brief, Handoff handoff) {
    Line line = brief.line(handoff.enters().relay());
    Weights weights = brief.rules().weights();
    boolean free = Costing.overSilence(line, handoff);
    return new HandoffReasons(
        free
            ? Sentence.of("after a rest of the line, which costs nothing")
            : price(weights, line.cover(handoff.leaves().last())),
        Sentence.of("enters {0}", at(line, handoff.enters().first())),
        Sentence.of("lands {0}", at(line, handoff.leaves().last())),
        phrase(line, handoff),
        free
            ? Sentence.of("nothing shared")
            : overlap(handoff.shared(), Costing.target(brief, handoff.leaves())),
        blend(weights, Pairing.worst(brief, handoff)));
  }

  private static Sentence price(Weights weights, int cover) {
    int taken = Math.min(Math.min(cover, weights.coverMost()), weights.handoff());
    return taken == 0
        ? Sentence.of("nothing covers it")
        : Sentence.of("{0} less {1}: attacks of other parts cover it", weights.handoff(), taken);
  }

  private static Sentence at(Line line, int stroke) {
    return switch (line.rank(stroke)) {
      case BAR -> Sentence.of("on the first beat of the bar");
      case BEAT -> Sentence.of("on the beat");
      case HALF ->
          isThird(line, stroke)
              ? Sentence.of("on a third of the beat")
              : Sentence.of("on half the beat");
      case ELSEWHERE -> Sentence.of("off the beat");
    };
  }

  private static Sentence phrase(Line line, Handoff handoff) {
    int landing = handoff.leaves().last();
    if (Costing.cutsSlur(line, handoff.enters().first()) || Costing.cutsSlur(line, landing)) {
      return Sentence.of("under a slur that goes on");
    }
    if (line.rank(landing) != Rank.BAR) {
      return Sentence.of("inside a bar");
    }
    int number = line.phrase(landing);
    return number == 0
        ? Sentence.of("where a phrase begins")
        : number == 1
            ? Sentence.of("after 1 bar of the phrase")
            : Sentence.of("after {0} bars of the phrase", number);
  }

  private static boolean isThird(Line line, int stroke) {
    return line.placeOf(stroke).at().beatText().endsWith("/3");
  }

  private static Sentence overlap(int shared, int target) {
    Sentence wanted =
        target == 1
            ? Sentence.of("the landing note alone")
            : Sentence.of("the {0} aimed at", target);
    int beside = Math.abs(shared - target);
    if (beside == 0) {
      return Sentence.of("shares {0}", wanted);
    }
    return shared > target
        ? Sentence.of("{0} more shared than {1}", Wording.notes(beside), wanted)
        : Sentence.of("{0} fewer shared than {1}", Wording.notes(beside), wanted);
  }

  private static Sentence blend(Weights weights, Pairing pairing) {
    Instrument leaving = pairing.leaving();
    Instrument entering = pairing.entering();
    double louder = entering.levelDecibel() - leaving.levelDecibel();
    boolean alike =
        leaving.name().equals(entering.name()) || Math.abs(louder) <= weights.decibelFree();
    if (alike) {
      return Sentence.of("{0} to {1}", leaving, entering);
    }
    Sentence decibel = Wording.decibel(Math.abs(louder));
    return louder > 0
        ? Sentence.of("{0} to {1}, {2} louder", leaving, entering, decibel)
        : Sentence.of("{0} to {1}, {2} softer", leaving, entering, decibel);
  }
}
