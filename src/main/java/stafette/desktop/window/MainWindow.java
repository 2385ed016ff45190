package stafette.desktop.window;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.TransferMode;
import javafx.scene.text.Font;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import stafette.desktop.hearing.HearingPresenter;
import stafette.desktop.playing.Playing;
import stafette.desktop.state.BackgroundWork;
import stafette.desktop.state.Desk;
import stafette.desktop.state.LineInWords;
import stafette.desktop.state.Session;
import stafette.desktop.texts.Texts;
import stafette.desktop.welcome.WelcomeView;
import stafette.keep.LimitsInForce;
import stafette.keep.Remembered;
import stafette.keep.Samples;
import stafette.keep.Unfinished;

/** The program's window: a session, its panels and its tools, joined. */
public final class MainWindow {
  /** Where files go that are made of samples. */
  private static final Path HOME = Path.of(System.getProperty("user.home", "."));

  private static final double WIDTH_EM = 105;
  private static final double HEIGHT_EM = 63;
  private static final double LEAST_WIDTH = 900;
  private static final double LEAST_HEIGHT = 560;

  private final Stage stage;
  private final Texts texts;
  private final Remembered remembered;
  private final Threads threads = new Threads();
  private final LineInWords words = new OnFrame();
  private final Session session;
  private final Panels panels;
  private final Frame frame;
  private final Tools tools;
  private final HearingPresenter listener;
  private final ToolsPresenter doer;
  private final Leaving leaving;
  private final Recovery recovery;
  private final SessionPresenter teller;

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
    session = new Session(limits, remembered, threads.forDesk());
    leaving = new Leaving(session, asking, words, texts);
    panels =
        Panels.of(session, texts, words::say, leaving::before, this::askedWhy, new WindowDoors());
    panels.welcome().show(remembered.recent());
    frame = new Frame(panels, texts);
    Scene scene = new Scene(frame, WIDTH_EM * em(), HEIGHT_EM * em());
    listener =
        new HearingPresenter(
            panels.relay().view(), texts, limits, threads.forHearing(), Playing::open, words);
    panels.relay().heardBy(listener);
    frame.hearing(listener.strip());
    doer = new ToolsPresenter(session, remembered, asking, leaving, listener, texts, scene, words);
    recovery =
        new Recovery(
            session, remembered.unfinished(), asking, leaving, frame.offer(), words, texts);
    tools = new Tools(texts, doer);
    frame.tools(tools.nodes());
    teller = new SessionPresenter(panels, frame, tools, texts, this::settled);
    session.watchedBy(teller);
    put(scene);
    frame.whenWrittenIsSeen(panels.written()::look);
    settled();
    frame.say(texts.get("window.begin"));
  }

  private void put(Scene scene) {
    stage.setTitle(texts.get("window.title"));
    stage.setScene(scene);
    Style.of(remembered.isDark()).applyTo(scene);
    keys(scene);
    drops(scene);
    stage.setOnCloseRequest(this::closing);
    stage.setOnHidden(event -> close());
  }

  /**
   * As large as it should be, or as the screen allows, and wholly on it. Some window managers
   * forget what they are asked before a window is seen.
   */
  private void fit() {
    Rectangle2D room = Screen.getPrimary().getVisualBounds();
    double width = Math.min(WIDTH_EM * em(), room.getWidth());
    double height = Math.min(HEIGHT_EM * em(), room.getHeight());
    stage.setWidth(width);
    stage.setHeight(height);
    stage.setX(room.getMinX() + (room.getWidth() - width) / 2);
    stage.setY(room.getMinY() + (room.getHeight() - height) / 3);
    stage.setMinWidth(Math.min(LEAST_WIDTH, room.getWidth()));
    stage.setMinHeight(Math.min(LEAST_HEIGHT, room.getHeight()));
    Platform.runLater(frame::divide);
  }

  private static double em() {
    return Font.getDefault().getSize();
  }

  /** The ways in that are offered at the beginning. */
  private final class WindowDoors implements WelcomeView.WelcomeDoors {
    @Override
    public void open() {
      doer.open();
    }

    @Override
    public void open(Path file) {
      doer.open(file);
      panels.welcome().show(remembered.recent());
    }

    @Override
    public void sample(String title) {
      words.attempt(texts, () -> MainWindow.this.open(Samples.put(title, remembered.samples())));
    }
  }

  private void askedWhy() {
    frame.bring("verdict");
  }

  /** What the frame says for the tools. */
  private final class OnFrame implements LineInWords {
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
    public Path proposed(String ending) {
      Path beside = tools.proposed(ending);
      return beside.startsWith(remembered.samples()) ? HOME.resolve(beside.getFileName()) : beside;
    }
  }

  /** Shows it, and offers what was left behind when a program ended unforeseen. */
  public void show() {
    stage.show();
    Platform.runLater(this::fit);
    threads.aside(this::lookForLeft);
  }

  /** Says that something went wrong that should not, on whatever thread it did. */
  public void failed(Throwable why) {
    Platform.runLater(() -> frame.warn(texts.say(BackgroundWork.fault(why))));
  }

  private void lookForLeft() {
    List<Unfinished.Left> left = remembered.unfinished().left();
    Platform.runLater(() -> recovery.offer(left));
  }

  /** Opens a score or a plan, unless work by hand would be lost and the user would rather not. */
  public void open(Path file) {
    leaving.before(() -> session.open(file));
  }

  private void closing(WindowEvent event) {
    if (!leaving.isAllowed()) {
      event.consume();
    }
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
      panels.written().look();
    }
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
          if (event.getDragboard().getFiles().size() == 1) {
            event.acceptTransferModes(TransferMode.COPY);
          }
        });
    scene.setOnDragDropped(this::dropped);
  }

  /** Answers the other program first: it waits, and the user may be asked something. */
  private void dropped(DragEvent event) {
    List<File> files = event.getDragboard().getFiles();
    event.setDropCompleted(!files.isEmpty());
    Platform.runLater(() -> drop(files));
  }

  /** Opens what was dropped. */
  void drop(List<File> files) {
    files.stream().findFirst().map(File::toPath).ifPresent(this::open);
  }

  /** A stage that is shown again under another window is hidden again too. */
  private void close() {
    if (!threads.areClosed()) {
      session.close();
      listener.close();
      threads.close();
    }
  }
}
