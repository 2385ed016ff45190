package stafette.desktop.window;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.text.Font;
import javafx.stage.Stage;
import stafette.desktop.texts.Texts;

/**
 * Where the panels stand: passages left; in the middle the relay over the tempo rule, or first of
 * all the welcome; players, rules, verdict and the bars as written right; at the foot hearing, and
 * what is going on.
 */
final class Frame extends BorderPane {
  private static final double LEFT_EM = 20;
  private static final double RIGHT_EM = 24;
  private static final double MOST_LEFT = 0.23;
  private static final double MOST_RIGHT = 0.3;

  private final HBox tools = new HBox();
  private final Label status = new Label();
  private final TabPane side = new TabPane();
  private final VBox hearing = new VBox();
  private final Offer offer;
  private final SplitPane across;

  Frame(Panels panels, Texts texts) {
    offer = new Offer(texts);
    tools.getStyleClass().add("bar");
    tools.setId("tools");
    status.setId("status");
    HBox foot = new HBox(status);
    foot.getStyleClass().add("status");
    side.getTabs()
        .setAll(
            tab("players", texts.get("window.players"), panels.players().view()),
            tab("rules", texts.get("window.rules"), panels.rules().view()),
            tab("verdict", texts.get("window.verdict"), panels.verdict().view()),
            tab("written", texts.get("window.bars"), panels.written().view()));
    VBox middle = new VBox(panels.relay().view(), panels.tempo().view());
    VBox.setVgrow(panels.relay().view(), Priority.ALWAYS);
    ScrollPane beginning = new ScrollPane(panels.welcome());
    beginning.setFitToWidth(true);
    beginning.getStyleClass().add("welcome-scroll");
    beginning.visibleProperty().bind(panels.welcome().visibleProperty());
    beginning.managedProperty().bind(beginning.visibleProperty());
    middle.visibleProperty().bind(beginning.visibleProperty().not());
    across = new SplitPane(panels.passages().view(), new StackPane(middle, beginning), side);
    SplitPane.setResizableWithParent(panels.passages().view(), false);
    SplitPane.setResizableWithParent(side, false);
    setTop(new VBox(tools, offer));
    setCenter(across);
    setBottom(new VBox(hearing, foot));
  }

  /** Gives the panels left and right the room that their type needs. */
  void divide() {
    double em = Font.getDefault().getSize() / across.getWidth();
    across.setDividerPositions(
        Math.min(LEFT_EM * em, MOST_LEFT), 1 - Math.min(RIGHT_EM * em, MOST_RIGHT));
  }

  private static Tab tab(String id, String title, Node content) {
    Tab tab = new Tab(title, content);
    tab.setId("tab-" + id);
    tab.setClosable(false);
    return tab;
  }

  /** Sets what stands above the panels. */
  void tools(List<Node> nodes) {
    tools.getChildren().setAll(nodes);
  }

  /** Sets what stands under the panels. */
  void hearing(Node strip) {
    hearing.getChildren().setAll(strip);
  }

  /** Says what is going on, in a line. */
  void say(String words) {
    status.getStyleClass().remove("beyond");
    status.setText(words);
  }

  /** Says what can't be done, so that it is not overlooked. */
  void warn(String words) {
    say(words);
    status.getStyleClass().add("beyond");
  }

  /** Brings a panel of the right side to the front: "players", "rules", "verdict" or "written". */
  void bring(String panel) {
    side.getTabs().stream()
        .filter(tab -> tab.getId().equals("tab-" + panel))
        .forEach(side.getSelectionModel()::select);
  }

  /** Names the window. */
  void title(String words) {
    if (getScene().getWindow() instanceof Stage stage) {
      stage.setTitle(words);
    }
  }

  /** Where something is offered. */
  Offer offer() {
    return offer;
  }

  /** Whether the bars that would be written are in front. */
  boolean isWrittenSeen() {
    return "tab-written".equals(side.getSelectionModel().getSelectedItem().getId());
  }

  void whenWrittenIsSeen(Runnable look) {
    side.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            observed -> {
              if (isWrittenSeen()) {
                look.run();
              }
            });
  }
}
