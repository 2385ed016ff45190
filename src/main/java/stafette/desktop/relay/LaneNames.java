package stafette.desktop.relay;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Rectangle;
import stafette.desktop.playing.Balance;
import stafette.desktop.texts.Texts;
import stafette.plan.Player;

/** Who plays in each lane and is heard, beside the canvas. */
final class LaneNames extends Pane {
  static final double WIDTH = 132;

  private static final double ABOVE = 14;

  private final Texts texts;
  private List<LaneBox> boxes = List.of();
  private LaneGestures gestures = new Deaf();
  private Balance balance = Balance.EVERYBODY;

  /** Nobody listens yet. */
  private static final class Deaf implements LaneGestures {
    @Override
    public void silence(String player) {}

    @Override
    public void alone(String player) {}
  }

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

  void told(LaneGestures other) {
    gestures = other;
  }

  /** Boxes stay while the players do, so that the keyboard stays where it is. */
  void show(List<Player> players) {
    if (!players.equals(boxes.stream().map(LaneBox::player).toList())) {
      boxes =
          IntStream.range(0, players.size())
              .mapToObj(lane -> new LaneBox(players.get(lane), lane, texts, new Passed()))
              .toList();
      getChildren().setAll(boxes);
    }
    hear(balance);
  }

  /** To whoever listens by then. */
  private final class Passed implements LaneGestures {
    @Override
    public void silence(String player) {
      gestures.silence(player);
    }

    @Override
    public void alone(String player) {
      gestures.alone(player);
    }
  }

  void hear(Balance other) {
    balance = other;
    Balance here = balance.among(boxes.stream().map(box -> box.player().name()).toList());
    boxes.forEach(box -> box.show(here));
  }

  void place(LaneScale lanes) {
    for (int lane = 0; lane < boxes.size(); lane++) {
      LaneBox box = boxes.get(lane);
      double most = lanes.laneHeight() - (lanes.middle(lane) - lanes.top(lane)) + ABOVE - 2;
      box.resizeRelocate(
          10, lanes.middle(lane) - ABOVE, WIDTH - 16, Math.min(box.prefHeight(-1), most));
    }
  }
}
