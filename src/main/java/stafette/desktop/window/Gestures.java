package stafette.desktop.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import stafette.check.Finding;
import stafette.check.JudgedPlan;
import stafette.desktop.hearing.HearingPresenter;
import stafette.desktop.passages.LineForm;
import stafette.desktop.passages.PassagesView;
import stafette.desktop.players.PlayerGestures;
import stafette.desktop.relay.RelayGestures;
import stafette.desktop.state.Helping;
import stafette.desktop.state.Session;
import stafette.desktop.tempo.TempoRule;
import stafette.desktop.verdict.VerdictView;
import stafette.plan.Handoff;
import stafette.plan.PlanEdit;
import stafette.plan.Seat;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.time.TempoMark;
import stafette.work.CheckScore;
import stafette.work.OpenLine;
import stafette.work.Remedy;
import stafette.work.SplitLine;

/** What is done to the panels, as work on the session. */
public final class Gestures
    implements RelayGestures,
        PlayerGestures,
        PassagesView.Chosen,
        VerdictView.Jumps,
        TempoRule.Moved {
  private final Session session;
  private final IntConsumer reveal;
  private final Consumer<Runnable> leaving;
  private Optional<HearingPresenter> listener = Optional.empty();
  private List<SplitLine.SplitOutcome> sideBySide = List.of();

  /**
   * @param reveal shows a segment and gives it the keyboard
   * @param leaving does what clears the desk, unless the user would rather not
   */
  public Gestures(Session session, IntConsumer reveal, Consumer<Runnable> leaving) {
    this.session = session;
    this.reveal = reveal;
    this.leaving = leaving;
  }

  /** From now on this listener is told what is chosen, and from where it is to play. */
  public void heardBy(HearingPresenter other) {
    listener = Optional.of(other);
  }

  /** The plans that can be taken now, as numbered on the screen. */
  void offer(List<SplitLine.SplitOutcome> plans) {
    sideBySide = List.copyOf(plans);
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
    listener.ifPresent(now -> now.from(lineMicros));
  }

  @Override
  public void chosen(int segment) {
    listener.ifPresent(now -> now.choose(segment));
  }

  @Override
  public void chosenHandoff(int handoff) {
    listener.ifPresent(now -> now.chooseHandoff(handoff));
  }

  @Override
  public void add(String name) {
    session.add(name, Optional.empty());
  }

  @Override
  public boolean isTold(String name) {
    return session
        .desk()
        .score()
        .map(checked -> checked.score().score())
        .flatMap(score -> session.limits().told(score, name))
        .isPresent();
  }

  @Override
  public void remove(String name) {
    session.remove(name);
  }

  @Override
  public void plays(String name, String instrument) {
    session.add(name, Optional.of(instrument));
  }

  @Override
  public void lock(String name, boolean kept) {
    session.byHand().lockPlayer(name, kept);
  }

  @Override
  public void countOther(String name, boolean counts) {
    session.free(name, !counts);
  }

  @Override
  public void allow(String name, String technique, boolean allowed) {
    session.rules().allow(name, technique, allowed);
  }

  @Override
  public void sit(String name, Optional<Seat> seat) {
    session.sit(name, seat);
  }

  @Override
  public void measured(
      String name, String technique, double peak, double sustained, double staminaStrokes) {
    session.measured(name, technique, new OpenLine.Measured(peak, sustained, staminaStrokes));
  }

  @Override
  public void move(String name, int places) {
    session.move(name, places);
  }

  @Override
  public void passage(CheckScore.PassageVerdicts passage) {
    leaving.accept(() -> session.choose(passage));
  }

  @Override
  public void line(LineForm.Wish line) {
    LineChoice choice =
        new LineChoice(
            line.part(),
            line.bars().map(BarChoice::new),
            line.staff(),
            line.voice(),
            Optional.of(line.tone()));
    leaving.accept(() -> session.choose(choice));
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

  @Override
  public void to(TempoMark tempo, boolean done) {
    session.tempo(tempo, done);
  }
}
