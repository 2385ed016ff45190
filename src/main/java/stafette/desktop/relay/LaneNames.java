package stafette.desktop.relay;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;
import stafette.desktop.texts.Texts;
import stafette.plan.Player;

/** Who plays in each lane, beside the canvas: name and instrument. */
final class LaneNames extends Pane {
  static final double WIDTH = 132;

  private final Texts texts;

  LaneNames(Texts texts) {
    this.texts = texts;
    getStyleClass().add("lane-names");
    setPrefWidth(WIDTH);
    setMinWidth(WIDTH);
    setMaxWidth(WIDTH);
    Rectangle clip = new Rectangle(0, LaneScale.RULER, WIDTH, 0);
    clip.heightProperty().bind(heightProperty().subtract(LaneScale.RULER));
    setClip(clip);
  }

  void show(List<Player> players) {
    getChildren().setAll(players.stream().map(this::box).toList());
  }

  private VBox box(Player player) {
    Label name = new Label(player.name());
    name.getStyleClass().add("lane-name");
    Label instrument = new Label(texts.say(player.instrument()));
    instrument.getStyleClass().add("lane-instrument");
    VBox box = new VBox(name, instrument);
    box.setAccessibleText(player.name() + ", " + instrument.getText());
    return box;
  }

  void place(LaneScale lanes) {
    for (int lane = 0; lane < getChildren().size(); lane++) {
      VBox box = (VBox) getChildren().get(lane);
      box.resizeRelocate(
          10, lanes.middle(lane) - 12, WIDTH - 16, Math.min(40, lanes.laneHeight() - 4));
    }
  }
}
