package stafette.desktop.state;

import java.util.Optional;
import stafette.check.JudgedPlan;
import stafette.plan.Plan;
import stafette.work.OpenLine;
import stafette.work.Remedy;

/** Does what would help where there is no plan. */
public final class Helping {
  private final Session session;

  public Helping(Session session) {
    this.session = session;
  }

  /** Whether a remedy can be asked for; one that leaves notes out can't. */
  public static boolean canTake(Remedy remedy, Desk desk) {
    return line(desk, remedy).isPresent();
  }

  /** Puts what a remedy changes on the desk with its plan, in one step. */
  public void take(Remedy remedy) {
    Desk desk = session.desk();
    line(desk, remedy).ifPresent(line -> session.go(with(desk, line, remedy.plan().plan())));
  }

  private static Desk with(Desk desk, OpenLine line, Plan plan) {
    return desk.with(line, line.adopted(plan).map(JudgedPlan::of));
  }

  private static Optional<OpenLine> line(Desk desk, Remedy remedy) {
    return desk.line().flatMap(line -> line.under(remedy));
  }
}
