package stafette.desktop.state;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import stafette.ask.LineRequest;
import stafette.ask.PlayerWish;
import stafette.ask.SplitRequest;
import stafette.ask.TempoWish;
import stafette.check.JudgedPlan;
import stafette.keep.LimitsInForce;
import stafette.keep.OpenScore;
import stafette.keep.Remembered;
import stafette.keep.Unfinished;
import stafette.limits.Saying;
import stafette.plan.Plan;
import stafette.plan.Seat;
import stafette.score.LineChoice;
import stafette.time.TempoMark;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.work.CheckScore;
import stafette.work.LineAsWritten;
import stafette.work.OpenLine;
import stafette.work.OpenPlan;
import stafette.work.SplitLine;
import stafette.work.who.WhoCouldPlay;

/**
 * Work on one score from opening it to writing it: choose a line, say who plays, plan, change by
 * hand, undo, write. What is refused leaves the desk as it is and is told to the watcher.
 */
public final class Session {
  private final LimitsInForce limits;
  private final Remembered remembered;
  private final BackgroundWork labour;
  private final Autosave keeping;
  private final Writing writing;
  private final RuleChanges rules = new RuleChanges(this);
  private final ByHand byHand = new ByHand(this);
  private final Mending mending = new Mending(this);
  private Watcher watcher = Watcher.NOBODY;
  private History history = new History(Desk.EMPTY);
  private Optional<Desk> tried = Optional.empty();
  private final Set<BackgroundWork> atWork = new HashSet<>();

  /**
   * A session with an empty desk.
   *
   * @param remembered recent files, and what is kept in case the program ends unforeseen
   * @param labour where long work goes on
   */
  public Session(LimitsInForce limits, Remembered remembered, BackgroundWork labour) {
    this.limits = limits;
    this.remembered = remembered;
    this.labour = labour;
    this.keeping = new Autosave(remembered.unfinished(), labour, this::refused);
    this.writing =
        new Writing(this::desk, limits, remembered, this::kept, labour.another(), this::refused);
  }

  /** From now on this watcher is told. */
  public void watchedBy(Watcher other) {
    watcher = other;
  }

  /** What is on the desk, a drag that goes on included. */
  public Desk desk() {
    return tried.orElseGet(history::now);
  }

  /** What is on the desk, but for a drag that goes on. */
  Desk settled() {
    return history.now();
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

  /** Ends a search with the best plan that it has, and whatever file can be left unwritten. */
  public void enough() {
    atWork.forEach(BackgroundWork::hurry);
  }

  /** Ends what takes long, if anything does; nothing comes of it. */
  public void stop() {
    tried = Optional.empty();
    labour.stop();
    rests(labour);
  }

  /** Opens a score, or a plan where it was left. */
  public void open(Path file) {
    work(
        Watcher.WatchedWork.OPENING,
        going -> Opening.of(file, limits),
        opened -> {
          put(opened);
          attempt(() -> remembered.opened(file));
        });
  }

  /**
   * Opens what was on the desk when a program ended unforeseen.
   *
   * @param score where its score is now; where it was if empty
   * @param refused told in words why it can't be opened
   */
  public void recover(
      Unfinished.Left left,
      Optional<Path> score,
      Consumer<OpenPlan.ScoreNow> done,
      Consumer<Sentence> refused) {
    work(
        Watcher.WatchedWork.OPENING,
        going -> Opening.recovered(remembered.unfinished(), left, score, limits),
        opened -> {
          if (opened.score() != OpenPlan.ScoreNow.UNFIT) {
            keeping.replaces(left);
          }
          put(opened);
          done.accept(opened.score());
        },
        refused);
  }

  private void put(Opening opened) {
    history = new History(opened.desk());
    tried = Optional.empty();
    show();
    watcher.opened(opened.score());
  }

  /** Begins something that takes long, and tells the watcher when it begins and when it is over. */
  <T> void work(Watcher.WatchedWork what, BackgroundWork.WorkPiece<T> piece, Consumer<T> done) {
    work(what, piece, done, this::refused);
  }

  private <T> void work(
      Watcher.WatchedWork what,
      BackgroundWork.WorkPiece<T> piece,
      Consumer<T> done,
      Consumer<Sentence> refused) {
    work(what, labour, piece, done, refused);
  }

  private <T> void work(
      Watcher.WatchedWork what,
      BackgroundWork where,
      BackgroundWork.WorkPiece<T> piece,
      Consumer<T> done,
      Consumer<Sentence> refused) {
    atWork.add(where);
    watcher.goesOn(true);
    watcher.began(what);
    where.start(
        piece,
        result -> {
          rests(where);
          done.accept(result);
        },
        why -> {
          rests(where);
          refused.accept(why);
        });
  }

  private void rests(BackgroundWork where) {
    atWork.remove(where);
    watcher.goesOn(!atWork.isEmpty());
  }

  /** Chooses a passage: puts it on the desk at once, then lets players be proposed, and plans. */
  public void choose(CheckScore.PassageVerdicts passage) {
    choose(LineChoice.of(passage.line().source()));
  }

  /** Chooses any line, likewise. */
  public void choose(LineChoice choice) {
    desk().score().ifPresent(checked -> attempt(() -> choose(checked.score(), choice)));
  }

  private void choose(OpenScore score, LineChoice choice) throws Refusal {
    SplitRequest plain = SplitRequest.usual(LineRequest.whole(score.file()).with(choice));
    SplitRequest usual =
        desk().line().map(before -> plain.underRulesOf(before.asked())).orElse(plain);
    OpenLine written = LineAsWritten.in(score, usual, limits);
    go(desk().choosing(written));
    work(
        Watcher.WatchedWork.PROPOSING,
        going ->
            new ProposedLine(
                proposed(written, WhoCouldPlay.in(usual, score, limits).into(usual)),
                going.isOver()),
        proposal -> {
          history.complete(history.now().choosing(proposal.line));
          show();
          if (!proposal.isEnough) {
            plan();
          }
        });
  }

  /**
   * A line with those who could play it.
   *
   * @param isEnough whether no plan is wanted for them any more
   */
  private record ProposedLine(OpenLine line, boolean isEnough) {}

  /** Where nobody comes into question, whoever has it in the score stays. */
  private static OpenLine proposed(OpenLine written, SplitRequest request) throws Refusal {
    return request.players().isEmpty() ? written : written.asking(request);
  }

  /**
   * Adds a player, or those of a divided section; its instrument is taken from the score or the
   * name, unless it is said.
   */
  public void add(String name, Optional<String> instrument) {
    changeLine(line -> line.playedBy(PlayerList.with(line.asked().players(), name, instrument)));
  }

  public void remove(String name) {
    askPlayers(players -> PlayerList.without(players, name));
  }

  private void askPlayers(UnaryOperator<List<PlayerWish>> change) {
    changeLine(line -> line.playedBy(change.apply(line.asked().players())));
  }

  /** Says what a player does with a technique, by the player's own measure. */
  public void measured(String name, String technique, OpenLine.Measured figures) {
    changeLine(line -> line.measuring(name, technique, figures));
  }

  /** Says in words what a player manages with a technique; nothing any more if empty. */
  public void says(String name, String technique, Optional<Saying> saying) {
    changeLine(line -> line.saying(name, technique, saying));
  }

  /**
   * Moves a player up or down the list; of equals the first listed are preferred.
   *
   * @param places down; up if negative
   */
  public void move(String name, int places) {
    askPlayers(players -> PlayerList.moved(players, name, places));
  }

  /** Whether a player leaves out for the line what the score gives. */
  public void free(String name, boolean free) {
    changeLine(line -> line.freeing(name, free));
  }

  /** Where a player sits; nowhere if empty. */
  public void sit(String name, Optional<Seat> seat) {
    changeLine(line -> line.seating(name, seat));
  }

  /** Puts the line under other rules. */
  public RuleChanges rules() {
    return rules;
  }

  /**
   * Another tempo at the line's start; the plan is judged again at once.
   *
   * @param done false while it is still being moved
   */
  public void tempo(TempoMark mark, boolean done) {
    TempoWish wish = new TempoWish(Optional.of(mark.unit()), mark.perMinute());
    LineChange change = line -> line.asking(line.asked().with(line.asked().line().with(wish)));
    if (done) {
      changeLine(change);
    } else {
      Desk base = history.now();
      base.line()
          .ifPresent(
              line -> attempt(() -> attemptDesk(base.under(change.of(line), JudgedPlan::atOnce))));
    }
  }

  /** Changes the plan by hand, and keeps parts of it as they are. */
  public ByHand byHand() {
    return byHand;
  }

  /** Mends what does not work in the plan. */
  public Mending mending() {
    return mending;
  }

  /** Gives up a drag. */
  public void letGo() {
    if (tried.isPresent()) {
      tried = Optional.empty();
      watcher.changed(history.now(), false);
    }
  }

  /** Shows a desk that {@link #go} may keep, until {@link #letGo}. */
  void attemptDesk(Desk desk) {
    tried = Optional.of(desk);
    watcher.changed(desk, true);
  }

  /** Searches for the best plan for what is asked. */
  public void plan() {
    tried = Optional.empty();
    Desk base = history.now();
    base.line()
        .ifPresent(
            line ->
                work(
                    Watcher.WatchedWork.PLANNING,
                    going ->
                        line.plan(
                            going::isOver,
                            progress -> going.tell(() -> watcher.progress(progress))),
                    outcome -> planned(base, outcome)));
  }

  private void planned(Desk base, SplitLine.SplitOutcome outcome) {
    Desk desk = base.with(outcome);
    if (base.plan().isEmpty() || outcome.plan().isEmpty()) {
      history.complete(desk);
      show();
    } else {
      go(desk);
    }
  }

  /** Looks for plans that are the best for something else than the one on the desk. */
  public void compare() {
    Desk base = history.now();
    base.line().ifPresent(line -> base.plan().ifPresent(plan -> compare(line, plan, base.found())));
  }

  private void compare(OpenLine line, JudgedPlan plan, Optional<SplitLine.SplitOutcome> found) {
    work(
        Watcher.WatchedWork.COMPARING,
        going ->
            line.beside(
                plan,
                found,
                going::isOver,
                (favour, left) -> going.tell(() -> watcher.comparing(favour, left))),
        watcher::compared);
  }

  /** Takes a plan that was found beside another one, with its proof if it is for the same brief. */
  public void take(SplitLine.SplitOutcome other) {
    Desk base = history.now();
    Optional<Plan> plan =
        base.line().flatMap(line -> other.plan().flatMap(judged -> line.adopted(judged.plan())));
    if (plan.isEmpty()) {
      refused(
          Sentence.of(
              "this plan is for other players or other notes than those on the desk; look for"
                  + " other plans again"));
    } else if (plan.get().brief().equals(other.brief())) {
      go(base.with(other));
    } else {
      go(base.with(JudgedPlan.of(plan.get())));
    }
  }

  /** Puts the plan into files. */
  public Writing writing() {
    return writing;
  }

  /** Something that can be refused. */
  public interface SessionStep {
    void run() throws Refusal;
  }

  /**
   * Does something that takes long beside the window.
   *
   * @param done gets the result, unless the desk has changed meanwhile
   */
  public <T> void beside(BackgroundWork.WorkPiece<T> piece, Consumer<T> done) {
    work(Watcher.WatchedWork.WRITING, piece, done);
  }

  /**
   * Writes a file beside the window, whatever becomes of the desk meanwhile.
   *
   * @param done gets the result
   */
  public <T> void toFile(BackgroundWork.WorkPiece<T> piece, Consumer<T> done) {
    work(Watcher.WatchedWork.WRITING, labour.onFiles(), piece, done, this::refused);
  }

  public LimitsInForce limits() {
    return limits;
  }

  /** The window was closed as it should be: nothing is left to recover. */
  public void close() {
    stop();
    keeping.keep(Optional.empty());
    keeping.settle();
    remembered.close();
  }

  /** Where what is on the desk is kept, but for a drag that goes on. */
  public SavedState kept() {
    return history.now().kept();
  }

  private void kept(SavedState now) {
    history.complete(history.now().with(now));
    if (now.file().isPresent() && now.safe()) {
      keeping.keep(Optional.empty());
    }
  }

  interface LineChange {
    OpenLine of(OpenLine line) throws Refusal;
  }

  void changeLine(LineChange change) {
    attempt(() -> otherwise(change));
  }

  /** Something else about the line, in one step; none if the line stays the very same. */
  void otherwise(LineChange change) throws Refusal {
    Desk base = history.now();
    if (base.line().isPresent()) {
      adopt(base, change.of(base.line().get()));
    }
  }

  /** Something else about the line that takes long to find: beside the window. */
  void otherwiseBeside(LineChange change) {
    Desk base = history.now();
    base.line()
        .ifPresent(
            line ->
                work(
                    Watcher.WatchedWork.OPENING,
                    going -> change.of(line),
                    other -> adopt(base, other)));
  }

  private void adopt(Desk base, OpenLine other) {
    if (base.line().stream().noneMatch(line -> line == other)) {
      go(base.under(other, JudgedPlan::of));
    }
  }

  /** One step on; what still goes on was asked for another desk. */
  void go(Desk desk) {
    stop();
    history.go(desk);
    show();
  }

  private void show() {
    Desk desk = history.now();
    watcher.changed(desk, false);
    keeping.keep(desk.outcome());
  }

  private void attempt(SessionStep step) {
    try {
      step.run();
    } catch (Refusal e) {
      refused(e.inWords());
    }
  }

  void refused(Sentence why) {
    watcher.refused(why);
  }
}
