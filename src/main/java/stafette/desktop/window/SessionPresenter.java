package stafette.desktop.window;

import java.nio.file.Path;
import java.util.List;
import stafette.check.Finding;
import stafette.check.JudgedPlan;
import stafette.desktop.state.Desk;
import stafette.desktop.state.Watcher;
import stafette.desktop.texts.Texts;
import stafette.plan.Favour;
import stafette.split.Splitter;
import stafette.words.Sentence;
import stafette.work.OpenPlan;
import stafette.work.PlanInWords;
import stafette.work.SideBySide;

/** Shows in the panels what becomes of a session. */
final class SessionPresenter implements Watcher {
  private final Panels panels;
  private final Frame frame;
  private final Tools tools;
  private final Texts texts;
  private final Runnable settled;

  /**
   * @param settled run whenever the desk has changed and nothing is dragged
   */
  SessionPresenter(Panels panels, Frame frame, Tools tools, Texts texts, Runnable settled) {
    this.panels = panels;
    this.frame = frame;
    this.tools = tools;
    this.texts = texts;
    this.settled = settled;
  }

  @Override
  public void changed(Desk desk, boolean dragging) {
    if (panels.show(desk, dragging)) {
      frame.bring("verdict");
    }
    if (dragging) {
      desk.plan().ifPresent(this::watch);
    } else {
      desk.score().map(checked -> checked.score().file()).ifPresent(this::named);
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
  private void watch(JudgedPlan judged) {
    judged.verdict().findings().stream()
        .findFirst()
        .ifPresentOrElse(
            finding -> frame.warn(texts.say(finding.message())),
            () -> frame.say(texts.get("verdict.holds", texts.say(PlanInWords.turns(judged)))));
  }

  private void named(Path file) {
    tools.named(file);
    frame.title(texts.get("window.title.file", String.valueOf(file.getFileName())));
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
      case EARLIER -> frame.warn(texts.get("window.earlier"));
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
    panels.verdict().compare(plans);
    frame.bring("verdict");
    frame.say(texts.get("window.compared", plans.columns().size()));
  }

  @Override
  public void refused(Sentence why) {
    frame.warn(texts.say(why));
  }
}
