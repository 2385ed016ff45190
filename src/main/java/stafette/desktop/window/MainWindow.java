package stafette.desktop.window;

import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.TransferMode;
import javafx.stage.Screen;
import javafx.stage.Stage;
import stafette.desktop.playing.Playing;
import stafette.desktop.state.Desk;
import stafette.desktop.state.Labour;
import stafette.desktop.state.Session;
import stafette.desktop.texts.Texts;
import stafette.desktop.welcome.WelcomeView;
import stafette.work.LimitsInForce;
import stafette.work.Refusal;
import stafette.work.Remembered;
import stafette.work.Samples;

/** The program's window: a session, its panels and its tools, joined. */
public final class MainWindow {
  private static final double WIDTH = 1360;
  private static final double HEIGHT = 820;
  private static final double LEAST_WIDTH = 900;
  private static final double LEAST_HEIGHT = 560;

  private final Stage stage;
  private final Texts texts;
  private final Remembered remembered;
  private final ExecutorService aside = thread("aside");
  private final ExecutorService hearing = thread("hearing");
  private final Session session;
  private final Panels panels;
  private final Frame frame;
  private final Tools tools;
  private final Listener listener;
  private final Doer doer;
  private final Teller teller;

  /**
   * A window with an empty desk.
   *
   * @param remembered what is kept from one time to the next
   */
  public MainWindow(
      Stage stage, Texts texts, LimitsInForce limits, Remembered remembered, Asking asking) {
    this.stage = stage;
    this.texts = texts;
    this.remembered = remembered;
    session = new Session(limits, remembered, new Labour(aside, Platform::runLater));
    Gestures gestures = new Gestures(session, this::reveal);
    Ruling ruling = new Ruling(session, texts, words -> frame().say(words));
    panels = Panels.of(texts, gestures, ruling, new Doors());
    panels.welcome().show(remembered.recent());
    frame = new Frame(panels, texts);
    Scene scene = new Scene(frame, WIDTH, HEIGHT);
    OnFrame words = new OnFrame();
    Labour preparing = new Labour(hearing, Platform::runLater);
    listener = new Listener(panels.relay(), texts, limits, preparing, Playing::open, words);
    gestures.heardBy(listener);
    frame.hearing(listener.strip());
    doer = new Doer(session, remembered, asking, listener, texts, scene, words);
    tools = new Tools(texts, doer);
    frame.tools(tools.nodes());
    teller = new Teller(panels, gestures, frame, tools, texts, limits, this::settled);
    session.watchedBy(teller);
    stage.setTitle(texts.get("window.title"));
    stage.setScene(scene);
    Style.LIGHT.applyTo(scene);
    keys(scene);
    drops(scene);
    stage.setOnHidden(event -> close());
    frame.whenWrittenIsSeen(this::lookAtBars);
    settled();
    frame.say(texts.get("window.begin"));
  }

  private Frame frame() {
    return frame;
  }

  private static ExecutorService thread(String name) {
    return Executors.newSingleThreadExecutor(
        work -> {
          Thread thread = new Thread(work, name);
          thread.setDaemon(true);
          return thread;
        });
  }

  /**
   * As large as it should be, or as the screen allows. Some window managers forget what they are
   * asked before a window is seen.
   */
  private void fit() {
    Rectangle2D room = Screen.getPrimary().getVisualBounds();
    stage.setWidth(Math.min(WIDTH, room.getWidth()));
    stage.setHeight(Math.min(HEIGHT, room.getHeight()));
    stage.setMinWidth(Math.min(LEAST_WIDTH, room.getWidth()));
    stage.setMinHeight(Math.min(LEAST_HEIGHT, room.getHeight()));
  }

  /** The ways in that are offered at the beginning. */
  private final class Doors implements WelcomeView.Doors {
    @Override
    public void open() {
      doer.open();
    }

    @Override
    public void open(Path file) {
      session.open(file);
    }

    @Override
    public void sample(String title) {
      try {
        session.open(Samples.put(title, remembered.samples()));
      } catch (Refusal e) {
        frame.warn(texts.say(e));
      }
    }
  }

  /** What the frame says for the tools. */
  private final class OnFrame implements Doer.Words {
    @Override
    public void say(String words) {
      frame.say(words);
    }

    @Override
    public void warn(String words) {
      frame.warn(words);
    }

    @Override
    public void rest() {
      teller.tell(session.desk());
    }

    @Override
    public String proposed(String ending) {
      return tools.proposed(ending);
    }
  }

  public void show() {
    stage.show();
    Platform.runLater(this::fit);
    if (remembered.unfinished().isPresent()) {
      frame.offer(texts.get("window.unfinished"), texts.get("window.recover"), session::recover);
    }
  }

  /** Opens a score or a plan. */
  public void open(Path file) {
    session.open(file);
  }

  private void reveal(int segment) {
    panels.relay().focusSegment(segment);
  }

  private void settled() {
    Desk desk = session.desk();
    listener.show(desk);
    tools.allow(
        new Tools.Allowed(
            desk.line().isPresent(),
            desk.plan().isPresent(),
            session.canUndo(),
            session.canRedo()));
    if (frame.isWrittenSeen()) {
      lookAtBars();
    }
  }

  private void lookAtBars() {
    session.writing().lookAtBars(session.desk().source(), panels.written()::show);
  }

  private void keys(Scene scene) {
    key(scene, new KeyCodeCombination(KeyCode.O, KeyCombination.SHORTCUT_DOWN), doer::open);
    key(scene, new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN), doer::write);
    key(scene, new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN), doer::undo);
    key(
        scene,
        new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN),
        doer::redo);
    key(scene, new KeyCodeCombination(KeyCode.ENTER, KeyCombination.SHORTCUT_DOWN), doer::plan);
    key(scene, new KeyCodeCombination(KeyCode.SPACE, KeyCombination.SHORTCUT_DOWN), doer::hear);
  }

  private static void key(Scene scene, KeyCombination keys, Runnable action) {
    scene.getAccelerators().put(keys, action);
  }

  private void drops(Scene scene) {
    scene.setOnDragOver(
        event -> {
          if (event.getDragboard().hasFiles()) {
            event.acceptTransferModes(TransferMode.COPY);
          }
        });
    scene.setOnDragDropped(this::dropped);
  }

  private void dropped(DragEvent event) {
    event.getDragboard().getFiles().stream().findFirst().ifPresent(file -> open(file.toPath()));
    event.setDropCompleted(true);
  }

  private void close() {
    session.close();
    listener.close();
    aside.shutdownNow();
    hearing.shutdownNow();
  }
}
