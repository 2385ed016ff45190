package stafette.desktop.state;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import stafette.ask.PlayerWish;
import stafette.keep.LimitsInForce;
import stafette.keep.Remembered;
import stafette.plan.Favour;
import stafette.plan.Plan;
import stafette.score.BarChoice;
import stafette.score.LineChoice;
import stafette.score.ToneChoice;
import stafette.split.Splitter;
import stafette.words.Refusal;
import stafette.words.Sentence;
import stafette.work.OpenLine;
import stafette.work.SideBySide;

/** A session on a sample, with what it told. Long work waits until it is let go on. */
final class Opened implements Watcher {
  private static final LimitsInForce LIMITS = loaded();

  private final Deque<Runnable> later = new ArrayDeque<>();
  private final List<String> refused = new ArrayList<>();
  private final List<Favour> searched = new ArrayList<>();
  private boolean busy;
  private Optional<SideBySide> plans = Optional.empty();
  private final Session session;
  private Consumer<Favour> atSearch = favour -> {};

  private Opened(Path folder, LimitsInForce limits) {
    Executor aside = later::add;
    session =
        new Session(
            limits, new Remembered(folder), new BackgroundWork(aside, Runnable::run, aside));
    session.watchedBy(this);
  }

  private static LimitsInForce loaded() {
    try {
      return LimitsInForce.load(Optional.empty());
    } catch (Refusal e) {
      throw new AssertionError(e);
    }
  }

  /** An empty desk. */
  static Opened nothing() {
    return at(Path.of(""));
  }

  private static Opened at(Path folder) {
    return new Opened(folder, LIMITS);
  }

  /** The fast passage of the first sample, split among three. */
  static Opened lanternRun(Path folder) throws Refusal {
    return on(
            folder,
            "lantern-run.musicxml",
            bars("Piano", 1, "5-16", Optional.empty()),
            "Flute 1, Flute 2, Clarinet 1")
        .planned();
  }

  /** A line of a sample with its players, not planned yet. */
  static Opened on(Path folder, String sample, LineChoice line, String players) throws Refusal {
    Opened opened = at(folder);
    opened.session.open(Path.of("samples", sample));
    opened.goOn();
    opened.session.choose(line);
    opened.session.stop();
    opened.goOn();
    List<PlayerWish> wanted = PlayerWish.parse(players);
    wanted.forEach(wish -> opened.session.add(wish.name(), wish.instrument()));
    opened.line().asked().players().stream()
        .filter(wish -> !wanted.contains(wish))
        .toList()
        .forEach(wish -> opened.session.remove(wish.name()));
    return opened;
  }

  static LineChoice bars(String part, int staff, String bars, Optional<ToneChoice> tone) {
    return new LineChoice(
        part, Optional.of(new BarChoice(bars)), OptionalInt.of(staff), Optional.empty(), tone);
  }

  /** The same with the best plan. */
  Opened planned() {
    session.plan();
    goOn();
    return this;
  }

  /** Does all that waits. */
  void goOn() {
    while (!later.isEmpty()) {
      later.remove().run();
    }
  }

  Session session() {
    return session;
  }

  OpenLine line() {
    return session.desk().line().orElseThrow();
  }

  Plan plan() {
    return session.desk().plan().orElseThrow().plan();
  }

  boolean holds() {
    return session.desk().plan().orElseThrow().verdict().holds();
  }

  List<String> refused() {
    return refused;
  }

  /** Whether anything that takes long goes on. */
  boolean isBusy() {
    return busy;
  }

  /** Does something when the search for a plan of that kind begins. */
  void atSearchFor(Favour wanted, Runnable what) {
    atSearch =
        favour -> {
          if (favour == wanted) {
            what.run();
          }
        };
  }

  /** What searches for other plans favoured. */
  List<Favour> searched() {
    return searched;
  }

  Optional<SideBySide> plans() {
    return plans;
  }

  @Override
  public void changed(Desk desk, boolean dragging) {}

  @Override
  public void began(WatchedWork work) {}

  @Override
  public void progress(Splitter.Progress progress) {}

  @Override
  public void comparing(Favour favour, int left) {
    searched.add(favour);
    atSearch.accept(favour);
  }

  @Override
  public void goesOn(boolean anything) {
    busy = anything;
  }

  @Override
  public void compared(SideBySide found) {
    plans = Optional.of(found);
  }

  @Override
  public void refused(Sentence why) {
    refused.add(why.toString());
  }
}
