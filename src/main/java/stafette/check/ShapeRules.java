package stafette.check;

import java.util.ArrayList;
import java.util.List;
import stafette.plan.Halves;
import stafette.plan.Handoff;
import stafette.plan.Hocket;
import stafette.plan.OverlapRule;
import stafette.plan.Plan;
import stafette.plan.Turn;
import stafette.score.Line;
import stafette.score.Place;
import stafette.words.Sentence;

/**
 * How segments must follow one another: every stroke by one player outside the overlaps, by two
 * inside, never by three; overlaps as long as the rules say; and nobody after themselves. None of
 * it changes with the tempo.
 */
final class ShapeRules {
  private final Plan plan;
  private final Line line;
  private final List<Turn> turns;
  private final List<Finding> findings = new ArrayList<>();

  private ShapeRules(Plan plan, List<Turn> turns) {
    this.plan = plan;
    this.turns = turns;
    this.line = plan.brief().line(turns.get(0).relay());
  }

  static List<Finding> findings(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (List<Turn> turns : plan.relays()) {
      ShapeRules rules = new ShapeRules(plan, turns);
      rules.relay();
      findings.addAll(rules.findings);
    }
    findings.addAll(DoublingRules.findings(plan));
    findings.addAll(HocketRules.findings(plan));
    findings.addAll(LockRules.findings(plan));
    return findings;
  }

  private void relay() {
    ends();
    List<Handoff> handoffs = new ArrayList<>();
    for (int k = 1; k < turns.size(); k++) {
      handoffs.add(new Handoff(turns.get(k - 1), turns.get(k)));
    }
    handoffs.forEach(this::order);
    handoffs.forEach(this::overlap);
    for (int k = 2; k < turns.size(); k++) {
      three(turns.get(k - 2), turns.get(k));
    }
    turns.forEach(this::hocket);
  }

  private void ends() {
    Turn first = turns.get(0);
    if (first.first() > 0) {
      shape(
          first,
          0,
          Sentence.of(
              "nobody plays the first {0} of the line; let {1} begin here",
              Wording.notes(first.first()), name(first)));
    }
    Turn last = turns.get(turns.size() - 1);
    int left = line.count() - 1 - last.last();
    if (left > 0) {
      shape(
          last,
          last.last(),
          Sentence.of(
              "nobody plays the last {0} of the line; let {1} play to the end",
              Wording.notes(left), name(last)));
    }
  }

  private void order(Handoff handoff) {
    Turn leaves = handoff.leaves();
    Turn enters = handoff.enters();
    if (enters.first() <= leaves.first()) {
      shape(
          enters,
          enters.first(),
          Sentence.of(
              "enters no later than {0}, who should come before; let it enter later",
              name(leaves)));
    }
    if (enters.last() <= leaves.last()) {
      shape(
          enters,
          enters.last(),
          Sentence.of(
              "leaves no later than {0}, who should be relieved; let it play on", name(leaves)));
    }
    if (enters.shares(leaves)) {
      shape(
          enters,
          enters.first(),
          Sentence.of(
              "follows itself; give one of the two stretches to somebody else, or make them one"));
    }
  }

  private void overlap(Handoff handoff) {
    int missing = -handoff.shared();
    if (missing > 0) {
      int from = handoff.leaves().last() + 1;
      shape(
          handoff.leaves(),
          from,
          Sentence.of(
              "nobody plays {0} from here; let {1} enter on the landing note",
              Wording.notes(missing), name(handoff.enters())));
    } else if (!Costing.overSilence(line, handoff)) {
      length(handoff);
    }
  }

  private void length(Handoff handoff) {
    OverlapRule rule = plan.brief().rules().overlap();
    int shared = handoff.shared();
    if (shared < rule.min()) {
      overlap(
          handoff,
          Sentence.of(
              "shares {0} with {1}, and at least {2} should be shared; let it enter earlier",
              Wording.notes(Math.max(0, shared)), name(handoff.leaves()), rule.min()));
    } else if (rule.max().isPresent() && shared > rule.max().getAsInt()) {
      overlap(
          handoff,
          Sentence.of(
              "shares {0} with {1}, and at most {2} should be shared; let it enter later",
              Wording.notes(shared), name(handoff.leaves()), rule.max().getAsInt()));
    } else if (rule.max().isEmpty() && longerThanBeat(handoff)) {
      overlap(
          handoff,
          Sentence.of(
              "shares more than a beat with {0}; let it enter later", name(handoff.leaves())));
    }
  }

  private boolean longerThanBeat(Handoff handoff) {
    int landing = handoff.leaves().last();
    long shared = line.onsetMicros(landing) - line.onsetMicros(handoff.enters().first());
    return shared > line.beatMicros(landing);
  }

  private void three(Turn before, Turn enters) {
    if (enters.first() <= before.last()) {
      shape(
          enters,
          enters.first(),
          Sentence.of(
              "enters before {0} has left, so three play at once; let {0} leave earlier",
              name(before)));
    }
  }

  /** Stroke by stroke goes only where a beat has an even number of them. */
  private void hocket(Turn turn) {
    if (!turn.isHocket() || plan.brief().rules().hocket() != Hocket.STROKE) {
      return;
    }
    Halves halves = plan.brief().halves(turn.relay());
    for (int j = turn.first(); j <= turn.last(); j++) {
      if (!halves.evenBeat(j)) {
        shape(
            turn,
            j,
            Sentence.of(
                "is one of a pair who take notes in turn, but this beat has an odd number of them;"
                    + " let the pair play elsewhere, or take groups or beats in turn"));
        return;
      }
    }
  }

  private Sentence name(Turn turn) {
    return plan.who(turn);
  }

  private void shape(Turn turn, int stroke, Sentence sentence) {
    Place place = Whereabouts.of(plan.player(turn.segments().get(0)), line, stroke);
    findings.add(Finding.at(Finding.FindingKind.SHAPE, place, sentence));
  }

  private void overlap(Handoff handoff, Sentence sentence) {
    Turn enters = handoff.enters();
    Place place = Whereabouts.of(plan.player(enters.segments().get(0)), line, enters.first());
    findings.add(Finding.at(Finding.FindingKind.OVERLAP, place, sentence));
  }
}
