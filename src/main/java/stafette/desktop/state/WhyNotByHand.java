package stafette.desktop.state;

import stafette.plan.Hocket;
import stafette.plan.Plan;
import stafette.plan.PlanEdit;
import stafette.words.Sentence;

/** Why a plan has no place for an edit. */
record WhyNotByHand(Plan plan) implements PlanEdit.EditKinds<Sentence> {
  private static final Sentence NO_PLACE = Sentence.of("the plan has no such place");

  @Override
  public Sentence move(PlanEdit.Move move) {
    return Sentence.of(
        "the handoff can't go there: each player begins and ends later than the one before, with"
            + " notes of their own");
  }

  @Override
  public Sentence give(PlanEdit.Give give) {
    return Sentence.of(
        "this player can't take it: no technique of theirs fits the line, or the other half of"
            + " these notes is theirs");
  }

  @Override
  public Sentence split(PlanEdit.Split split) {
    return Sentence.of("it can't be divided there: both players need notes of their own");
  }

  @Override
  public Sentence join(PlanEdit.Join join) {
    return NO_PLACE;
  }

  @Override
  public Sentence pair(PlanEdit.Pair pair) {
    return plan.brief().rules().hocket() == Hocket.NO
        ? Sentence.of("the rules allow no hocket; allow one under Rules")
        : Sentence.of(
            "there is nobody else to share these notes with in a hocket, or they are too few");
  }

  @Override
  public Sentence alone(PlanEdit.Alone alone) {
    return NO_PLACE;
  }
}
