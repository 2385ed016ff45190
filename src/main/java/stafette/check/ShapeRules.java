package stafette.check;

import java.util.ArrayList;
import java.util.List;
import stafette.plan.Handoff;
import stafette.plan.OverlapRule;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Place;

/**
 * How segments must follow one another: every stroke by one player outside the overlaps, by two
 * inside, never by three; overlaps as long as the rules say; and nobody after themselves. None of
 * it changes with the tempo.
 */
final class ShapeRules {
  private final Plan plan;
  private final Line line;
  private final List<Finding> findings = new ArrayList<>();

  private ShapeRules(Plan plan) {
    this.plan = plan;
    this.line = plan.line();
  }

  static List<Finding> findings(Plan plan) {
    ShapeRules rules = new ShapeRules(plan);
    rules.ends();
    plan.handoffs().forEach(rules::order);
    plan.handoffs().forEach(rules::overlap);
    for (int k = 2; k < plan.segments().size(); k++) {
      rules.three(plan.segments().get(k - 2), plan.segments().get(k));
    }
    return rules.findings;
  }

  private void ends() {
    Segment first = plan.segments().get(0);
    if (first.first() > 0) {
      shape(
          first,
          0,
          "nobody plays the first "
              + Wording.notes(first.first())
              + " of the line; let "
              + name(first)
              + " begin here");
    }
    Segment last = plan.segments().get(plan.segments().size() - 1);
    int left = line.count() - 1 - last.last();
    if (left > 0) {
      shape(
          last,
          last.last(),
          "nobody plays the last "
              + Wording.notes(left)
              + " of the line; let "
              + name(last)
              + " play to the end");
    }
  }

  private void order(Handoff handoff) {
    Segment leaves = handoff.leaves();
    Segment enters = handoff.enters();
    if (enters.first() <= leaves.first()) {
      shape(
          enters,
          enters.first(),
          "enters no later than " + name(leaves) + ", who should come before; let it enter later");
    }
    if (enters.last() <= leaves.last()) {
      shape(
          enters,
          enters.last(),
          "leaves no later than " + name(leaves) + ", who should be relieved; let it play on");
    }
    if (enters.player() == leaves.player()) {
      shape(
          enters,
          enters.first(),
          "follows itself; give one of the two stretches to somebody else, or make them one");
    }
  }

  private void overlap(Handoff handoff) {
    int missing = -handoff.shared();
    if (missing > 0) {
      int from = handoff.leaves().last() + 1;
      shape(
          handoff.leaves(),
          from,
          "nobody plays "
              + Wording.notes(missing)
              + " from here; let "
              + name(handoff.enters())
              + " enter on the landing note");
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
          "shares "
              + Wording.notes(Math.max(0, shared))
              + " with "
              + name(handoff.leaves())
              + ", and at least "
              + rule.min()
              + " should be shared; let it enter earlier");
    } else if (rule.max().isPresent() && shared > rule.max().getAsInt()) {
      overlap(
          handoff,
          "shares "
              + Wording.notes(shared)
              + " with "
              + name(handoff.leaves())
              + ", and at most "
              + rule.max().getAsInt()
              + " should be shared; let it enter later");
    } else if (rule.max().isEmpty() && longerThanBeat(handoff)) {
      overlap(
          handoff,
          "shares more than a beat with " + name(handoff.leaves()) + "; let it enter later");
    }
  }

  private boolean longerThanBeat(Handoff handoff) {
    int landing = handoff.leaves().last();
    long shared = line.onsetMicros(landing) - line.onsetMicros(handoff.enters().first());
    return shared > line.beatMicros(landing);
  }

  private void three(Segment before, Segment enters) {
    if (enters.first() <= before.last()) {
      shape(
          enters,
          enters.first(),
          "enters before "
              + name(before)
              + " has left, so three play at once; let "
              + name(before)
              + " leave earlier");
    }
  }

  private String name(Segment segment) {
    return plan.player(segment).name();
  }

  private void shape(Segment segment, int stroke, String sentence) {
    Place place = Whereabouts.of(plan.player(segment), line, stroke);
    findings.add(Finding.at(Finding.Kind.SHAPE, place, sentence));
  }

  private void overlap(Handoff handoff, String sentence) {
    Segment enters = handoff.enters();
    Place place = Whereabouts.of(plan.player(enters), line, enters.first());
    findings.add(Finding.at(Finding.Kind.OVERLAP, place, sentence));
  }
}
