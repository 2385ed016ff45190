package stafette.desktop.verdict;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.check.Finding;
import stafette.check.JudgedPlan;
import stafette.desktop.state.Desk;
import stafette.desktop.state.Helping;
import stafette.desktop.state.Session;
import stafette.desktop.texts.Texts;
import stafette.split.Reason;
import stafette.words.Sentence;
import stafette.work.PlanInWords;
import stafette.work.Remedy;
import stafette.work.SideBySide;
import stafette.work.SplitLine;

/** Shows what is to be said of the plan on the desk, or why there is none, and what would help. */
public final class VerdictPresenter implements VerdictView.Jumps {
  private final Session session;
  private final IntConsumer reveal;
  private final VerdictView view;
  private List<SplitLine.SplitOutcome> sideBySide = List.of();

  /**
   * @param reveal shows a segment and gives it the keyboard
   */
  public VerdictPresenter(Session session, Texts texts, IntConsumer reveal) {
    this.session = session;
    this.reveal = reveal;
    this.view = new VerdictView(texts, this);
  }

  public VerdictView view() {
    return view;
  }

  /**
   * Shows the verdict; whether it is one that should not be overlooked.
   *
   * @param dragging whether the plan is only tried
   */
  public boolean show(Desk desk, boolean dragging) {
    if (desk.plan().isPresent()) {
      show(desk, desk.plan().get(), dragging);
      return false;
    }
    if (desk.isImpossible()) {
      view.refuse(reasons(desk), helps(desk));
    } else if (desk.found().isPresent()) {
      view.giveUp();
    } else {
      view.clear();
      return false;
    }
    return true;
  }

  private void show(Desk desk, JudgedPlan judged, boolean dragging) {
    view.show(judged, dragging);
    if (!dragging) {
      desk.result()
          .map(result -> PlanInWords.why(result, judged))
          .filter(why -> judged.verdict().holds())
          .ifPresent(view::proven);
      nearest(desk, judged).ifPresent(words -> view.nearest(words, helps(desk)));
    }
  }

  /** Where the search found a plan for a lower share of players alone. */
  private static Optional<Sentence> nearest(Desk desk, JudgedPlan judged) {
    return desk.found()
        .filter(found -> !judged.verdict().holds() && !found.reasons().isEmpty())
        .map(found -> PlanInWords.nearest(judged, found.asked().rules().assurance()));
  }

  private static List<Sentence> reasons(Desk desk) {
    return desk.preventing().stream().map(Reason::text).toList();
  }

  private static List<VerdictView.Help> helps(Desk desk) {
    return desk.remedies().stream()
        .map(remedy -> new VerdictView.Help(remedy.sentence(), Helping.canTake(remedy, desk)))
        .toList();
  }

  /** Shows plans beside the present one, each of which can be taken. */
  public void compare(SideBySide plans) {
    sideBySide =
        Stream.concat(
                Stream.of(plans.main()), plans.columns().stream().map(SideBySide.Column::outcome))
            .toList();
    view.compare(plans);
  }

  @Override
  public void to(Finding finding) {
    session
        .desk()
        .plan()
        .map(JudgedPlan::plan)
        .ifPresent(
            plan ->
                IntStream.range(0, plan.segments().size())
                    .filter(
                        i ->
                            plan.player(plan.segments().get(i))
                                .name()
                                .equals(finding.place().part()))
                    .filter(i -> session.desk().covers(i, finding.place().at()))
                    .findFirst()
                    .ifPresent(reveal));
  }

  @Override
  public void take(int plan) {
    if (plan < sideBySide.size()) {
      session.take(sideBySide.get(plan));
    }
  }

  @Override
  public void help(int remedy) {
    List<Remedy> remedies = session.desk().remedies();
    if (remedy < remedies.size()) {
      new Helping(session).take(remedies.get(remedy));
    }
  }
}
