package stafette.desktop.window;

import java.nio.file.Path;
import javafx.concurrent.Task;
import javafx.scene.Scene;
import javafx.stage.Stage;
import stafette.desktop.passages.PassagesView;
import stafette.desktop.players.PlayersView;
import stafette.desktop.relay.RelayView;
import stafette.desktop.tempo.TempoRule;
import stafette.desktop.texts.Texts;
import stafette.desktop.verdict.VerdictView;
import stafette.plan.Plan;
import stafette.work.JudgedPlan;

/** The program's window. Files are read beside it, so that nothing stands still meanwhile. */
public final class MainWindow {
  private final Stage stage;
  private final Texts texts;
  private final Untouched untouched = new Untouched();
  private final RelayView relay;
  private final PassagesView passages;
  private final TempoRule tempo;
  private final PlayersView players;
  private final VerdictView verdict;
  private final Frame frame;

  public MainWindow(Stage stage, Texts texts) {
    this.stage = stage;
    this.texts = texts;
    relay = new RelayView(texts, untouched);
    passages = new PassagesView(texts, untouched);
    tempo = new TempoRule(texts, untouched);
    players = new PlayersView(texts, untouched);
    verdict = new VerdictView(texts, untouched);
    frame = new Frame(new Frame.Panels(passages, relay, tempo, players, verdict), texts);
    stage.setTitle(texts.get("window.title"));
    stage.setScene(new Scene(frame));
    Style.LIGHT.applyTo(stage.getScene());
  }

  public void show() {
    stage.show();
  }

  /** Opens a score or a plan. */
  public void open(Path file) {
    frame.say(texts.get("window.opening", file));
    Task<Opened> reading =
        new Task<>() {
          @Override
          protected Opened call() throws Exception {
            return Opened.read(file);
          }
        };
    reading.setOnSucceeded(event -> show(file, reading.getValue()));
    reading.setOnFailed(event -> frame.say(String.valueOf(reading.getException().getMessage())));
    Thread reader = new Thread(reading, "open");
    reader.setDaemon(true);
    reader.start();
  }

  private void show(Path file, Opened opened) {
    stage.setTitle(texts.get("window.title.file", file.getFileName()));
    passages.show(opened.passages(), opened.score().parts());
    opened.plan().ifPresentOrElse(this::show, relay::clear);
    frame.say(texts.get("window.opened", file, opened.passages().size()));
  }

  private void show(JudgedPlan judged) {
    Plan plan = judged.plan();
    relay.show(plan, judged.verdict());
    verdict.show(plan, judged.verdict(), false);
    tempo.show(plan.line().tempo().at(plan.line().stroke(0).onset()), judged.window());
  }
}
