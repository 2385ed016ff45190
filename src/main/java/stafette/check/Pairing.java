package stafette.check;

import java.util.List;
import stafette.limits.Instrument;
import stafette.plan.Brief;
import stafette.plan.Handoff;
import stafette.plan.Turn;
import stafette.plan.Weights;

/** Who leaves and who enters at a handoff, by their instruments. */
record Pairing(Instrument leaving, Instrument entering) {
  /** Of hocket pairs those two that blend worst, the first of equals. */
  static Pairing worst(Brief brief, Handoff handoff) {
    Weights weights = brief.rules().weights();
    Pairing worst =
        new Pairing(
            instruments(brief, handoff.leaves()).get(0),
            instruments(brief, handoff.enters()).get(0));
    for (Instrument leaving : instruments(brief, handoff.leaves())) {
      for (Instrument entering : instruments(brief, handoff.enters())) {
        Pairing pairing = new Pairing(leaving, entering);
        worst = pairing.blend(weights) > worst.blend(weights) ? pairing : worst;
      }
    }
    return worst;
  }

  int blend(Weights weights) {
    return weights.blend(leaving, entering);
  }

  static List<Instrument> instruments(Brief brief, Turn turn) {
    return turn.segments().stream().map(s -> brief.players().get(s.player()).instrument()).toList();
  }
}
