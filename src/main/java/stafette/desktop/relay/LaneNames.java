package stafette.desktop.relay;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;
import stafette.plan.Player;

/** Who plays in each lane, beside the canvas: name and instrument. */
final class LaneNames extends Pane {
  private static final double WIDTH = 132;

  LaneNames() {
    getStyleClass().add("lane-names");
    setManaged(false);
  }

  static double width(Viewport port) {
    return port.px(WIDTH);
  }

  void show(List<Player> players) {
    getChildren().setAll(players.stream().map(LaneNames::box).toList());
  }

  private static VBox box(Player player) {
    Label name = new Label(player.name());
    name.getStyleClass().add("lane-name");
    Label instrument = new Label(player.instrument().name());
    instrument.getStyleClass().add("lane-instrument");
    VBox box = new VBox(name, instrument);
    box.setAccessibleText(player.name() + ", " + player.instrument().name());
    return box;
  }

  void place(LaneScale lanes) {
    Viewport port = lanes.port();
    double width = width(port);
    setClip(new Rectangle(0, port.ruler(), width, port.height() - port.ruler()));
    for (int lane = 0; lane < getChildren().size(); lane++) {
      getChildren()
          .get(lane)
          .resizeRelocate(
              port.px(10),
              lanes.middle(lane) - port.px(12),
              width - port.px(16),
              Math.min(port.px(40), lanes.laneHeight() - port.px(4)));
    }
  }
}
