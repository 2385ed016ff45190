package stafette.desktop.relay;

import java.util.Optional;
import stafette.desktop.state.Desk;
import stafette.desktop.state.Session;
import stafette.desktop.texts.Texts;
import stafette.plan.Handoff;
import stafette.plan.PlanEdit;
import stafette.work.LineAsWritten;

/** Shows the plan on the desk in the relay, and edits it as the hands on it do. */
public final class RelayPresenter implements RelayGestures {
  private final Session session;
  private final Texts texts;
  private final RelayView view;
  private final Runnable why;
  private Optional<HearingGestures> hearing = Optional.empty();

  /**
   * @param why brings to the front what is to be said of the plan
   */
  public RelayPresenter(Session session, Texts texts, Runnable why) {
    this.why = why;
    this.session = session;
    this.texts = texts;
    this.view = new RelayView(texts, this);
  }

  public RelayView view() {
    return view;
  }

  /** From now on this is told what is chosen, and from where it is to play. */
  public void heardBy(HearingGestures other) {
    hearing = Optional.of(other);
  }

  /** Shows the plan on the desk, or the line as it is written, or what to do. */
  public void show(Desk desk) {
    desk.plan()
        .ifPresentOrElse(
            judged -> view.show(judged.plan(), judged.verdict()),
            () ->
                desk.line()
                    .flatMap(LineAsWritten::of)
                    .ifPresentOrElse(
                        written ->
                            view.showAsWritten(
                                written, desk.preventing(), texts.get(emptiness(desk))),
                        () -> view.clear(texts.get(emptiness(desk)))));
  }

  private static String emptiness(Desk desk) {
    if (desk.line().isEmpty()) {
      return "relay.choose";
    }
    return desk.isImpossible() ? "relay.none" : "relay.empty";
  }

  @Override
  public void moveHandoff(int handoff, HandoffEnd end, int stroke, boolean done) {
    session
        .byHand()
        .handoff(handoff)
        .map(now -> move(handoff, now, end, stroke))
        .ifPresent(
            edit -> {
              if (done) {
                session.byHand().edit(edit);
              } else {
                session.byHand().drag(edit);
              }
            });
  }

  private static PlanEdit move(int number, Handoff now, HandoffEnd end, int stroke) {
    int first = now.enters().first();
    int last = now.leaves().last();
    return switch (end) {
      case ENTERS -> new PlanEdit.Move(number, stroke, last);
      case LEAVES -> new PlanEdit.Move(number, first, stroke);
      case BOTH -> new PlanEdit.Move(number, first + stroke - last, stroke);
    };
  }

  @Override
  public void cancelMove() {
    session.letGo();
  }

  @Override
  public void give(int segment, int player) {
    session.byHand().give(segment, player);
  }

  @Override
  public void split(int segment, int stroke) {
    session.byHand().split(segment, stroke);
  }

  @Override
  public void join(int handoff) {
    session.byHand().edit(new PlanEdit.Join(handoff));
  }

  @Override
  public void lockHandoff(int handoff) {
    session.byHand().lockHandoff(handoff);
  }

  @Override
  public void lockSegment(int segment) {
    session.byHand().lockSegment(segment);
  }

  @Override
  public void hocket(int segment) {
    session.byHand().hocket(segment);
  }

  @Override
  public void playFrom(long lineMicros) {
    hearing.ifPresent(now -> now.from(lineMicros));
  }

  @Override
  public void chosen(int segment) {
    hearing.ifPresent(now -> now.choose(segment));
  }

  @Override
  public void chosenHandoff(int handoff) {
    hearing.ifPresent(now -> now.chooseHandoff(handoff));
  }

  @Override
  public void mend(int finding) {
    session.mending().mend(finding);
  }

  @Override
  public void askWhy() {
    why.run();
  }
}
