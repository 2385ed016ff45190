package stafette.desktop.state;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import stafette.plan.Favour;
import stafette.plan.Handoff;
import stafette.plan.Hocket;
import stafette.plan.Lock;
import stafette.plan.Pattern;
import stafette.plan.Plan;
import stafette.plan.PlanEdit;
import stafette.plan.Seat;
import stafette.plan.Segment;
import stafette.plan.SourceTreatment;
import stafette.score.LineChoice;
import stafette.time.BarBeat;
import stafette.time.TempoMark;
import stafette.work.ChangedPart;
import stafette.work.CheckScore;
import stafette.work.JudgedPlan;
import stafette.work.LimitsInForce;
import stafette.work.LineRequest;
import stafette.work.OpenLine;
import stafette.work.OpenPlan;
import stafette.work.OpenScore;
import stafette.work.PlayerWish;
import stafette.work.ProposePlayers;
import stafette.work.Refusal;
import stafette.work.Relaying;
import stafette.work.Remembered;
import stafette.work.Reports;
import stafette.work.SideBySide;
import stafette.work.SplitLine;
import stafette.work.TempoWish;
import stafette.work.WriteScore;

/**
 * Work on one score from opening it to writing it: choose a line, say who plays, plan, change by
 * hand, undo, write. What is refused leaves the desk as it is and is told to the watcher.
 */
public final class Session {
  private static final int MOST_ALTERNATIVES = 5;

  /** The searches for other plans can't be ended, so they are short. */
  private static final double COMPARING_SECONDS = 8;

  private final LimitsInForce limits;
  private final Remembered remembered;
  private final Labour labour;
  private Watcher watcher = Watcher.NOBODY;
  private History history = new History(Desk.EMPTY);
  private Optional<Desk> tried = Optional.empty();

  /**
   * A session with an empty desk.
   *
   * @param remembered recent files, and what is kept in case the program ends unforeseen
   * @param labour where long work goes on
   */
  public Session(LimitsInForce limits, Remembered remembered, Labour labour) {
    this.limits = limits;
    this.remembered = remembered;
    this.labour = labour;
  }

  /** From now on this watcher is told. */
  public void watchedBy(Watcher other) {
    watcher = other;
  }

  /** What is on the desk, a drag that goes on included. */
  public Desk desk() {
    return tried.orElseGet(history::now);
  }

  public boolean canUndo() {
    return history.canUndo();
  }

  public boolean canRedo() {
    return history.canRedo();
  }

  public void undo() {
    if (canUndo()) {
      stop();
      history.undo();
      show();
    }
  }

  public void redo() {
    if (canRedo()) {
      stop();
      history.redo();
      show();
    }
  }

  /** Ends a search with the best plan that it has. */
  public void enough() {
    labour.hurry();
  }

  /** Ends what takes long, if anything does; nothing comes of it. */
  public void stop() {
    tried = Optional.empty();
    labour.stop();
  }

  /** Opens a score, or a plan where it was left. */
  public void open(Path file) {
    open(file, true);
  }

  /** Opens what was on the desk when the program ended unforeseen. */
  public void recover() {
    remembered.unfinished().ifPresent(file -> open(file, false));
  }

  private void open(Path file, boolean remember) {
    watcher.began(Watcher.Work.OPENING);
    labour.start(
        stop -> read(file),
        desk -> {
          history = new History(desk);
          tried = Optional.empty();
          if (remember) {
            quietly(() -> remembered.opened(file));
          }
          watcher.rests();
          watcher.changed(desk, false);
        },
        this::refused);
  }

  private Desk read(Path file) throws Refusal {
    if (!OpenPlan.isPlan(file)) {
      return Desk.of(passages(file));
    }
    OpenPlan.OnDesk opened = OpenPlan.onDesk(file, limits);
    return Desk.of(passages(opened.line().score().file())).with(opened.line(), opened.judged());
  }

  private CheckScore.Checked passages(Path score) throws Refusal {
    SplitLine.Request asked = SplitLine.Request.usual(LineRequest.whole(score));
    return CheckScore.passages(
        score, asked.line().tremolo(), Optional.empty(), asked.assurance(), List.of(), limits);
  }

  /** Chooses a passage, lets players be proposed, and plans. */
  public void choose(CheckScore.Report passage) {
    choose(LineChoice.of(passage.line().source()));
  }

  /** The same for any line. */
  public void choose(LineChoice choice) {
    desk()
        .score()
        .ifPresent(
            score ->
                attempt(
                    () -> {
                      go(lineOf(score.score(), choice), Optional.empty());
                      plan();
                    }));
  }

  private OpenLine lineOf(OpenScore score, LineChoice choice) throws Refusal {
    LineRequest line = LineRequest.whole(score.file()).with(choice);
    SplitLine.Request usual = SplitLine.Request.usual(line);
    return OpenLine.in(score, ProposePlayers.into(usual, score, limits), limits);
  }

  /** Adds a player; its instrument is taken from the score or the name, unless it is said. */
  public void add(String name, Optional<String> instrument) {
    askPlayers(
        players -> {
          List<PlayerWish> more = new ArrayList<>(players);
          more.removeIf(wish -> wish.name().equalsIgnoreCase(name));
          more.add(new PlayerWish(name, instrument));
          return more;
        });
  }

  public void remove(String name) {
    askPlayers(players -> players.stream().filter(p -> !p.name().equals(name)).toList());
  }

  private void askPlayers(UnaryOperator<List<PlayerWish>> change) {
    changeLine(line -> line.playedBy(change.apply(line.asked().players())));
  }

  /** Says what a player does with a technique, by the player's own measure. */
  public void measured(String name, String technique, OpenLine.Measured figures) {
    changeLine(line -> line.measuring(name, technique, figures));
  }

  /**
   * Moves a player up or down the list; of equals the first listed are preferred.
   *
   * @param places down; up if negative
   */
  public void move(String name, int places) {
    askPlayers(
        players -> {
          List<PlayerWish> moved = new ArrayList<>(players);
          for (int i = 0; i < players.size(); i++) {
            if (players.get(i).name().equals(name)) {
              PlayerWish wish = moved.remove(i);
              moved.add(Math.max(0, Math.min(moved.size(), i + places)), wish);
            }
          }
          return moved;
        });
  }

  /** Whether a player leaves out for the line what the score gives. */
  public void free(String name, boolean free) {
    changeLine(line -> line.freeing(name, free));
  }

  /** Where a player sits; nowhere if empty. */
  public void sit(String name, Optional<Seat> seat) {
    changeLine(line -> line.seating(name, seat));
  }

  /** Relays the line otherwise. */
  public void hocket(Hocket hocket) {
    changeLine(
        line -> {
          Relaying now = line.asked().relaying();
          return line.asking(
              line.asked().with(new Relaying(hocket, now.together(), now.eachTone(), now.locks())));
        });
  }

  public void favour(Favour favour) {
    changeLine(line -> line.asking(line.asked().with(favour)));
  }

  /**
   * Another tempo at the line's start; the plan is judged again at once.
   *
   * @param done false while it is still being moved
   */
  public void tempo(TempoMark mark, boolean done) {
    Desk base = history.now();
    base.line()
        .ifPresent(
            line ->
                attempt(
                    () -> {
                      TempoWish wish = new TempoWish(Optional.of(mark.unit()), mark.perMinute());
                      SplitLine.Request asked = line.asked();
                      OpenLine other = line.asking(asked.with(asked.line().with(wish)));
                      Optional<Plan> plan = base.bare().flatMap(other::adopted);
                      if (done) {
                        go(other, plan.map(JudgedPlan::of));
                      } else {
                        attemptDesk(base.with(other, plan.map(JudgedPlan::atOnce)));
                      }
                    }));
  }

  /** Changes the plan by hand. */
  public void edit(PlanEdit edit) {
    tried = Optional.empty();
    Desk base = history.now();
    base.bare()
        .flatMap(plan -> plan.with(edit))
        .ifPresentOrElse(
            plan -> go(base.with(JudgedPlan.of(plan))), () -> watcher.changed(base, false));
  }

  /** Tries an edit while it is being dragged; {@link #edit} keeps it, {@link #letGo} doesn't. */
  public void drag(PlanEdit edit) {
    Desk base = history.now();
    base.bare()
        .flatMap(plan -> plan.with(edit))
        .ifPresent(plan -> attemptDesk(base.with(JudgedPlan.atOnce(plan))));
  }

  /** Gives up a drag. */
  public void letGo() {
    if (tried.isPresent()) {
      tried = Optional.empty();
      watcher.changed(history.now(), false);
    }
  }

  private void attemptDesk(Desk desk) {
    tried = Optional.of(desk);
    watcher.changed(desk, true);
  }

  /** Keeps a handoff as it is, or no longer if it was kept. */
  public void lockHandoff(int handoff) {
    desk()
        .bare()
        .filter(plan -> handoff < plan.handoffs().size())
        .map(plan -> plan.handoffs().get(handoff))
        .ifPresent(
            kept ->
                toggle(
                    List.of(
                        new Lock.At(
                            kept.enters().relay(), kept.enters().first(), kept.leaves().last()))));
  }

  /** Keeps a segment as it is, or no longer if it was kept. */
  public void lockSegment(int segment) {
    desk()
        .bare()
        .filter(plan -> segment < plan.segments().size())
        .ifPresent(plan -> toggle(List.of(lock(plan.segments().get(segment)))));
  }

  /** Keeps all that a player plays as it is, or no longer. */
  public void lockPlayer(String name, boolean keep) {
    desk()
        .bare()
        .ifPresent(
            plan -> {
              List<Lock> own =
                  plan.segments().stream()
                      .filter(segment -> plan.player(segment).name().equals(name))
                      .map(Session::lock)
                      .toList();
              List<Lock> locks = new ArrayList<>(desk().locks());
              locks.removeAll(own);
              if (keep) {
                locks.addAll(own);
              }
              relock(locks);
            });
  }

  private static Lock lock(Segment segment) {
    return segment.pattern() == Pattern.ALL
        ? new Lock.Exactly(
            segment.relay(),
            segment.player(),
            OptionalInt.of(segment.skill()),
            segment.first(),
            segment.last())
        : new Lock.In(segment.relay(), segment.player(), segment.first(), segment.last());
  }

  private void toggle(List<Lock> some) {
    List<Lock> locks = new ArrayList<>(desk().locks());
    if (!locks.removeAll(some)) {
      locks.addAll(some);
    }
    relock(locks);
  }

  private void relock(List<Lock> locks) {
    changeLine(line -> line.locking(locks));
  }

  /** Deals a turn out between its player and the next one who is not in it, or gives it back. */
  public void hocket(int segment) {
    desk()
        .bare()
        .filter(plan -> segment < plan.segments().size())
        .ifPresent(plan -> edit(HandEdits.hocket(plan, segment)));
  }

  /** Divides a segment; the second part goes to the player of the fewest strokes so far. */
  public void split(int segment, int stroke) {
    desk()
        .bare()
        .filter(plan -> segment < plan.segments().size())
        .flatMap(plan -> HandEdits.split(plan, segment, stroke))
        .ifPresent(this::edit);
  }

  /** Gives a segment to another player, with the technique that is preferred. */
  public void give(int segment, int player) {
    edit(new PlanEdit.Give(segment, player, 0));
  }

  /** Searches for the best plan for what is asked. */
  public void plan() {
    tried = Optional.empty();
    Desk base = history.now();
    base.line()
        .filter(line -> !line.brief().players().isEmpty())
        .ifPresent(
            line -> {
              watcher.began(Watcher.Work.PLANNING);
              labour.start(
                  stop ->
                      line.plan(stop, progress -> labour.tell(() -> watcher.progress(progress))),
                  outcome -> planned(base, outcome),
                  this::refused);
            });
  }

  private void planned(Desk base, SplitLine.Outcome outcome) {
    watcher.rests();
    Desk desk = base.with(outcome.result(), outcome.plan());
    if (base.plan().isEmpty() || outcome.plan().isEmpty()) {
      history.complete(desk);
      show();
    } else {
      go(desk);
    }
  }

  /** Looks for plans that are the best for something else. */
  public void compare() {
    desk()
        .line()
        .ifPresent(
            line -> {
              watcher.began(Watcher.Work.COMPARING);
              labour.start(
                  stop ->
                      SideBySide.split(
                          line.asked().within(COMPARING_SECONDS),
                          limits,
                          MOST_ALTERNATIVES,
                          p -> {}),
                  plans -> {
                    watcher.rests();
                    watcher.compared(plans);
                  },
                  this::refused);
            });
  }

  /** Takes a plan that was found beside the present one. */
  public void take(JudgedPlan other) {
    history
        .now()
        .line()
        .flatMap(line -> line.adopted(other.plan()))
        .ifPresent(plan -> go(history.now().with(JudgedPlan.of(plan))));
  }

  /** What writing would change: a sentence for each part. */
  public List<String> changes(SourceTreatment treatment) throws Refusal {
    Desk desk = desk();
    return desk.line().isEmpty() || desk.plan().isEmpty()
        ? List.of()
        : WriteScore.changes(
            desk.line().get().score(), desk.plan().get().plan(), treatment, limits);
  }

  /** The bars that writing would change, before and after; none without a plan. */
  public List<ChangedPart> changedBars(SourceTreatment treatment) throws Refusal {
    Desk desk = desk();
    return desk.line().isEmpty() || desk.plan().isEmpty()
        ? List.of()
        : ChangedPart.all(
            desk.line().get().score(),
            desk.plan().get().plan(),
            treatment,
            desk.line().get().asked().line().tremolo(),
            limits);
  }

  /** Looks for those bars beside the window. */
  public void lookAtBars(SourceTreatment treatment, Consumer<List<ChangedPart>> found) {
    labour.start(stop -> changedBars(treatment), found, this::refused);
  }

  /** Something that can be refused. */
  public interface Step {
    void run() throws Refusal;
  }

  /** Does something that takes long beside the window. */
  public void beside(Step step, Runnable done) {
    watcher.began(Watcher.Work.WRITING);
    labour.start(
        stop -> {
          step.run();
          return done;
        },
        then -> {
          watcher.rests();
          then.run();
        },
        this::refused);
  }

  public LimitsInForce limits() {
    return limits;
  }

  /**
   * Writes the plan into a copy of the score.
   *
   * @throws Refusal if there is no plan, the file is the score itself, or can't be written
   */
  public WriteScore.Saved write(Path file, SourceTreatment treatment) throws Refusal {
    Desk desk = desk();
    OpenLine line = desk.line().orElseThrow(() -> Refusal.wrongUse("choose a line first"));
    JudgedPlan plan = desk.plan().orElseThrow(() -> Refusal.wrongUse("there is no plan yet"));
    WriteScore.Target target =
        WriteScore.target(line.score().file(), file, false, true).orElseThrow();
    WriteScore.Saved saved = WriteScore.save(line.score(), plan.plan(), treatment, limits, target);
    remembered.finished();
    return saved;
  }

  /**
   * Keeps the plan in a file.
   *
   * @throws Refusal if there is no line yet, or the file can't be written
   */
  public void savePlan(Path file) throws Refusal {
    OpenLine line = desk().line().orElseThrow(() -> Refusal.wrongUse("choose a line first"));
    Reports.savePlan(line.outcome(desk().plan()), file, true);
    remembered.opened(file);
    remembered.finished();
  }

  /** The window was closed as it should be: nothing is left to recover. */
  public void close() {
    stop();
    remembered.finished();
  }

  private interface LineChange {
    OpenLine of(OpenLine line) throws Refusal;
  }

  private void changeLine(LineChange change) {
    stop();
    Desk base = history.now();
    base.line()
        .ifPresent(
            line ->
                attempt(
                    () -> {
                      OpenLine other = change.of(line);
                      go(other, base.bare().flatMap(other::adopted).map(JudgedPlan::of));
                    }));
  }

  private void go(OpenLine line, Optional<JudgedPlan> plan) {
    go(history.now().with(line, plan));
  }

  private void go(Desk desk) {
    tried = Optional.empty();
    history.go(desk);
    show();
  }

  private void show() {
    Desk desk = history.now();
    watcher.changed(desk, false);
    desk.line().ifPresent(line -> quietly(() -> remembered.keep(line, desk.plan())));
  }

  private void attempt(Step step) {
    try {
      step.run();
    } catch (Refusal e) {
      watcher.refused(String.valueOf(e.getMessage()));
    }
  }

  /** What is remembered matters less than what is done: a full disk stops nobody. */
  private void quietly(Step step) {
    attempt(step);
  }

  private void refused(String message) {
    watcher.rests();
    watcher.refused(message);
  }

  /** A handoff of the plan as it was before a drag. */
  public Optional<Handoff> handoff(int number) {
    return history
        .now()
        .bare()
        .map(Plan::handoffs)
        .filter(all -> number < all.size())
        .map(all -> all.get(number));
  }

  /** Whether a segment of the plan on the desk has a stroke at a place. */
  public boolean covers(int segment, BarBeat place) {
    return desk()
        .bare()
        .map(
            plan -> {
              Segment one = plan.segments().get(segment);
              return IntStream.rangeClosed(one.first(), one.last())
                  .anyMatch(stroke -> plan.line(one).placeOf(stroke).at().equals(place));
            })
        .orElse(false);
  }
}
