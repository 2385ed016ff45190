package stafette.desktop.window;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import stafette.desktop.texts.Texts;

/**
 * Where the panels stand: passages left, the relay over the tempo rule in the middle, players and
 * verdict right, what is going on at the foot.
 */
public final class Frame extends BorderPane {
  private final HBox tools = new HBox();
  private final Label status = new Label();
  private final TabPane side = new TabPane();

  /** The panels, each made elsewhere. */
  public record Panels(Node passages, Node relay, Node tempo, Node players, Node verdict) {}

  public Frame(Panels panels, Texts texts) {
    tools.getStyleClass().add("bar");
    tools.setId("tools");
    status.setId("status");
    HBox foot = new HBox(status);
    foot.getStyleClass().add("status");
    side.getTabs()
        .setAll(
            tab("players", texts.get("window.players"), panels.players()),
            tab("verdict", texts.get("window.verdict"), panels.verdict()));
    VBox middle = new VBox(panels.relay(), panels.tempo());
    VBox.setVgrow(panels.relay(), Priority.ALWAYS);
    SplitPane across = new SplitPane(panels.passages(), middle, side);
    across.setDividerPositions(0.19, 0.77);
    SplitPane.setResizableWithParent(panels.passages(), false);
    SplitPane.setResizableWithParent(side, false);
    setTop(tools);
    setCenter(across);
    setBottom(foot);
    setPrefSize(1360, 820);
  }

  private static Tab tab(String id, String title, Node content) {
    Tab tab = new Tab(title, content);
    tab.setId("tab-" + id);
    tab.setClosable(false);
    return tab;
  }

  /** Sets what stands above the panels. */
  public void tools(Node... nodes) {
    tools.getChildren().setAll(nodes);
  }

  /** Says what is going on, in a line. */
  public void say(String words) {
    status.setText(words);
  }

  /** Brings a panel of the right side to the front: "players" or "verdict". */
  public void bring(String panel) {
    side.getTabs().stream()
        .filter(tab -> tab.getId().equals("tab-" + panel))
        .forEach(side.getSelectionModel()::select);
  }
}
