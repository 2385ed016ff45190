package stafette.desktop.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stafette.check.Finding;
import stafette.check.JudgedPlan;
import stafette.check.Verdict;
import stafette.desktop.players.PlayerEntry;
import stafette.desktop.rules.RulesNow;
import stafette.desktop.state.Desk;
import stafette.desktop.state.Helping;
import stafette.desktop.state.Watcher;
import stafette.desktop.texts.Texts;
import stafette.desktop.verdict.VerdictView;
import stafette.keep.LimitsInForce;
import stafette.plan.Favour;
import stafette.plan.Lock;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.score.Part;
import stafette.split.Splitter;
import stafette.words.Sentence;
import stafette.work.OpenLine;
import stafette.work.OpenPlan;
import stafette.work.SideBySide;

/** Shows in the panels what becomes of a session. */
final class SessionPresenter implements Watcher {
  private final Panels panels;
  private final Gestures gestures;
  private final Frame frame;
  private final Tools tools;
  private final Texts texts;
  private final LimitsInForce limits;
  private final Runnable settled;
  private Object shownScore = Desk.EMPTY.score();

  /**
   * @param settled run whenever the desk has changed and nothing is dragged
   */
  SessionPresenter(
      Panels panels,
      Gestures gestures,
      Frame frame,
      Tools tools,
      Texts texts,
      LimitsInForce limits,
      Runnable settled) {
    this.panels = panels;
    this.gestures = gestures;
    this.frame = frame;
    this.tools = tools;
    this.texts = texts;
    this.limits = limits;
    this.settled = settled;
  }

  @Override
  public void changed(Desk desk, boolean dragging) {
    if (!dragging) {
      panels.welcome().setVisible(desk.score().isEmpty());
      showPassages(desk);
      panels.passages().mark(desk.line().map(line -> line.line().source()));
      showPlayers(desk);
      panels.rules().show(desk.line().map(line -> RulesNow.of(line, desk.source())));
    }
    desk.plan().ifPresentOrElse(judged -> showPlan(desk, judged, dragging), () -> showNoPlan(desk));
    if (dragging) {
      desk.plan().ifPresent(judged -> watch(judged.verdict()));
    } else {
      tell(desk);
      settled.run();
    }
  }

  /** How the desk stands, in a line. */
  void tell(Desk desk) {
    List<Finding> findings =
        desk.plan().map(judged -> judged.verdict().findings()).orElse(List.of());
    if (findings.isEmpty()) {
      frame.say(state(desk));
    } else {
      Sentence first = findings.get(0).message();
      frame.warn(texts.get("window.fails", findings.size(), texts.say(first)));
    }
  }

  /** The verdict in a line, while something is dragged. */
  private void watch(Verdict verdict) {
    verdict.findings().stream()
        .findFirst()
        .ifPresentOrElse(
            finding -> frame.warn(texts.say(finding.message())),
            () -> frame.say(texts.get("verdict.holds", verdict.cost().total())));
  }

  private void showPassages(Desk desk) {
    if (shownScore != desk.score()) {
      shownScore = desk.score();
      panels
          .passages()
          .show(
              desk.passages(),
              desk.score().map(checked -> checked.score().score().parts()).orElse(List.of()));
      desk.score().ifPresent(checked -> named(checked.score().file()));
    }
  }

  private void named(Path file) {
    tools.named(file);
    frame.title(texts.get("window.title.file", String.valueOf(file.getFileName())));
  }

  private void showPlan(Desk desk, JudgedPlan judged, boolean dragging) {
    panels.relay().show(judged.plan(), judged.verdict());
    panels.verdict().show(judged.plan(), judged.verdict(), dragging);
    if (!dragging) {
      desk.result().ifPresent(panels.verdict()::proven);
    }
    desk.line().ifPresent(line -> panels.tempo().show(line.tempo(), judged.window()));
  }

  private void showNoPlan(Desk desk) {
    panels.relay().clear(texts.get(emptiness(desk)));
    if (desk.isImpossible()) {
      panels.verdict().refuse(desk.reasons(), helps(desk));
      frame.bring("verdict");
    } else if (desk.found().isPresent()) {
      panels.verdict().giveUp();
      frame.bring("verdict");
    } else {
      panels.verdict().clear();
    }
    desk.line().ifPresentOrElse(line -> panels.tempo().show(line.tempo()), panels.tempo()::clear);
  }

  private static List<VerdictView.Help> helps(Desk desk) {
    return desk.remedies().stream()
        .map(remedy -> new VerdictView.Help(remedy.sentence(), Helping.canTake(remedy, desk)))
        .toList();
  }

  /** Why there is no relay to be seen. */
  private static String emptiness(Desk desk) {
    if (desk.line().isEmpty()) {
      return "relay.choose";
    }
    return desk.isImpossible() ? "relay.none" : "relay.empty";
  }

  private void showPlayers(Desk desk) {
    panels
        .players()
        .offer(
            desk.score()
                .map(checked -> checked.score().score().parts().stream().map(Part::name).toList())
                .orElse(List.of()),
            limits.catalogue().instruments().stream().map(i -> i.name()).toList());
    List<PlayerEntry> entries = new ArrayList<>();
    desk.line()
        .ifPresent(
            line ->
                IntStream.range(0, line.brief().players().size())
                    .forEach(i -> entries.add(entry(desk, line, i))));
    panels.players().show(entries);
  }

  private static PlayerEntry entry(Desk desk, OpenLine line, int number) {
    Player player = line.brief().players().get(number);
    Optional<Plan> plan = desk.plan().map(JudgedPlan::plan);
    boolean locked = desk.locks().stream().anyMatch(lock -> isAbout(lock, number));
    boolean freed = line.isFreed(player.name());
    return new PlayerEntry(
        player.name(),
        Optional.of(player.instrument().name()),
        player.skills(),
        player.instrument().techniques().stream()
            .filter(technique -> !technique.expected())
            .map(
                technique ->
                    new PlayerEntry.Extra(technique.name(), line.isAllowed(player, technique)))
            .toList(),
        locked,
        freed || !player.busy().isEmpty(),
        !freed,
        Optional.ofNullable(line.seats().get(player.name())),
        plan.map(p -> p.segmentsOf(number).size()).orElse(0));
  }

  private static boolean isAbout(Lock lock, int player) {
    return Lock.player(lock).orElse(-1) == player;
  }

  private String state(Desk desk) {
    if (desk.line().isEmpty()) {
      return desk.score().isEmpty()
          ? texts.get("window.begin")
          : texts.get("window.choose", desk.passages().size());
    }
    if (desk.plan().isEmpty()) {
      return texts.get(desk.isImpossible() ? "window.none" : "window.unplanned");
    }
    return texts.get(desk.isOptimal() ? "window.optimal" : "window.byhand");
  }

  @Override
  public void opened(OpenPlan.ScoreNow score) {
    switch (score) {
      case CHANGED -> frame.warn(texts.get("window.changed"));
      case UNFIT -> frame.warn(texts.get("window.unfit"));
      case SAME -> {}
    }
  }

  @Override
  public void began(WatchedWork work) {
    frame.say(texts.get("window.work." + work));
  }

  @Override
  public void progress(Splitter.Progress progress) {
    frame.say(
        progress.cost().isPresent()
            ? texts.get("window.better", progress.cost().getAsInt(), progress.bound())
            : texts.get("window.searching", progress.bound()));
  }

  @Override
  public void comparing(Favour favour, int left) {
    frame.say(texts.get("window.comparing", texts.get("favour." + favour), left));
  }

  @Override
  public void goesOn(boolean anything) {
    tools.busy(anything);
  }

  @Override
  public void compared(SideBySide plans) {
    gestures.offer(
        Stream.concat(
                Stream.of(plans.main()), plans.columns().stream().map(SideBySide.Column::outcome))
            .toList());
    panels.verdict().compare(plans);
    frame.bring("verdict");
    frame.say(texts.get("window.compared", plans.columns().size()));
  }

  @Override
  public void refused(Sentence why) {
    frame.warn(texts.say(why));
  }
}
