package stafette.desktop.state;

import java.util.List;
import java.util.Optional;
import stafette.check.JudgedPlan;
import stafette.plan.Handoff;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.PlanEdit;
import stafette.words.Sentence;

/**
 * Changes the plan on the desk by hand, and keeps parts of it as they are. Segments and handoffs
 * are numbered as in {@link PlanEdit}. An edit that the plan has no place for leaves it as it is
 * and is refused in words.
 */
public final class ByHand {
  private final Session session;

  ByHand(Session session) {
    this.session = session;
  }

  /** One step, unless the plan stays the very same. */
  public void edit(PlanEdit edit) {
    Desk base = session.settled();
    base.bare()
        .ifPresent(
            plan ->
                plan.with(edit)
                    .ifPresentOrElse(
                        changed -> keep(base, plan, changed),
                        () -> refuse(edit.match(new WhyNotByHand(plan)))));
  }

  private void keep(Desk base, Plan plan, Plan changed) {
    if (changed.equals(plan)) {
      session.letGo();
    } else {
      session.go(base.with(JudgedPlan.of(changed)));
    }
  }

  private void refuse(Sentence why) {
    session.letGo();
    session.refused(why);
  }

  /** Tries an edit while it is being dragged; {@link #edit} keeps it, a let go doesn't. */
  public void drag(PlanEdit edit) {
    Desk base = session.settled();
    base.bare()
        .flatMap(plan -> plan.with(edit))
        .ifPresent(plan -> session.attemptDesk(base.with(JudgedPlan.atOnce(plan))));
  }

  /** A handoff of the plan as it was before a drag. */
  public Optional<Handoff> handoff(int number) {
    return session
        .settled()
        .bare()
        .map(Plan::handoffs)
        .filter(all -> number < all.size())
        .map(all -> all.get(number));
  }

  /** Divides a segment; the second part goes to the player of the fewest strokes so far. */
  public void split(int segment, int stroke) {
    planWith(segment)
        .ifPresent(
            plan ->
                HandEdits.split(plan, segment, stroke)
                    .ifPresentOrElse(
                        this::edit,
                        () ->
                            refuse(
                                Sentence.of("there is nobody else to take over; add a player"))));
  }

  /** Gives a segment to another player, with the technique that is preferred. */
  public void give(int segment, int player) {
    edit(new PlanEdit.Give(segment, player, 0));
  }

  /** Deals a turn out between its player and the next one who is not in it, or gives it back. */
  public void hocket(int segment) {
    planWith(segment).ifPresent(plan -> edit(HandEdits.hocket(plan, segment)));
  }

  /** Keeps a handoff as it is, or no longer if it was kept. */
  public void lockHandoff(int handoff) {
    handoff(handoff).map(kept -> Locking.toggled(locks(), kept)).ifPresent(this::relock);
  }

  /** Keeps a segment as it is, or no longer if it was kept. */
  public void lockSegment(int segment) {
    planWith(segment)
        .map(plan -> Locking.toggled(locks(), plan.segments().get(segment)))
        .ifPresent(this::relock);
  }

  /** Keeps all that a player plays as it is, or no longer. */
  public void lockPlayer(String name, boolean keep) {
    session
        .settled()
        .bare()
        .map(plan -> Locking.of(plan, name))
        .ifPresent(
            own -> relock(keep ? Locking.with(locks(), own) : Locking.without(locks(), own)));
  }

  private List<Lock> locks() {
    return session.settled().locks();
  }

  private void relock(List<Lock> locks) {
    session.changeLine(line -> line.locking(locks));
  }

  private Optional<Plan> planWith(int segment) {
    return session.settled().bare().filter(plan -> segment < plan.segments().size());
  }
}
