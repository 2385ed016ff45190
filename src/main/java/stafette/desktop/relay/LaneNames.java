package stafette.desktop.relay;

import java.util.stream.IntStream;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;
import stafette.desktop.texts.Texts;
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

  void show(ShownPlan shown) {
    getChildren()
        .setAll(IntStream.range(0, shown.lanes()).mapToObj(lane -> box(shown, lane)).toList());
  }

  void clear() {
    getChildren().clear();
  }

  private static VBox box(ShownPlan shown, int lane) {
    Player player = shown.plan().brief().players().get(lane);
    Label name = new Label(player.name());
    name.getStyleClass().add("lane-name");
    Label instrument = new Label(shown.texts().say(player.instrument()));
    instrument.getStyleClass().add("lane-instrument");
    VBox box = new VBox(name, instrument);
    box.setAccessibleText(words(shown, lane, player));
    return box;
  }

  private static String words(ShownPlan shown, int lane, Player player) {
    Texts texts = shown.texts();
    long given = shown.barsGiven(lane);
    String instrument = texts.say(player.instrument());
    return given == 0
        ? texts.get("relay.lane", player.name(), instrument)
        : texts.get("relay.lane.given", player.name(), instrument, given);
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
