package stafette.desktop.relay;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Rectangle;
import stafette.desktop.playing.Balance;
import stafette.desktop.texts.Texts;
import stafette.plan.Player;

/** Who plays in each lane and is heard, beside the canvas. */
final class LaneNames extends Pane {
  private static final double WIDTH = 132;
  private static final double ABOVE = 14;

  private List<LaneBox> boxes = List.of();
  private Optional<MuteSoloGestures> gestures = Optional.empty();
  private Balance balance = Balance.EVERYBODY;

  LaneNames() {
    getStyleClass().add("lane-names");
    setManaged(false);
  }

  static double width(Viewport port) {
    return port.px(WIDTH);
  }

  void told(MuteSoloGestures other) {
    gestures = Optional.of(other);
  }

  /** Boxes stay while they would say the same, so that the keyboard stays where it is. */
  void show(ShownPlan shown) {
    List<String> words = IntStream.range(0, shown.lanes()).mapToObj(i -> words(shown, i)).toList();
    if (!words.equals(boxes.stream().map(LaneBox::getAccessibleText).toList())) {
      boxes =
          IntStream.range(0, shown.lanes())
              .mapToObj(
                  lane ->
                      new LaneBox(
                          player(shown, lane), lane, words.get(lane), shown.texts(), new Passed()))
              .toList();
      getChildren().setAll(boxes);
    }
    hear(balance);
  }

  /** To whoever listens by then. */
  private final class Passed implements MuteSoloGestures {
    @Override
    public void silence(String player) {
      gestures.ifPresent(told -> told.silence(player));
    }

    @Override
    public void alone(String player) {
      gestures.ifPresent(told -> told.alone(player));
    }
  }

  void clear() {
    boxes = List.of();
    getChildren().clear();
  }

  private static Player player(ShownPlan shown, int lane) {
    return shown.plan().brief().players().get(lane);
  }

  private static String words(ShownPlan shown, int lane) {
    Texts texts = shown.texts();
    long given = shown.barsGiven(lane);
    String name = player(shown, lane).name();
    String instrument = texts.say(player(shown, lane).instrument());
    return given == 0
        ? texts.get("relay.lane", name, instrument)
        : texts.get("relay.lane.given", name, instrument, given);
  }

  void hear(Balance other) {
    balance = other;
    Balance here = balance.among(boxes.stream().map(LaneBox::player).toList());
    boxes.forEach(box -> box.show(here));
  }

  void place(LaneScale lanes) {
    Viewport port = lanes.port();
    double width = width(port);
    setClip(new Rectangle(0, port.ruler(), width, port.height() - port.ruler()));
    double above = Math.min(port.px(ABOVE), lanes.middle(0) - lanes.top(0));
    for (int lane = 0; lane < boxes.size(); lane++) {
      double top = lanes.middle(lane) - above;
      double room = lanes.top(lane + 1) - top;
      boxes.get(lane).fit(room);
      boxes.get(lane).resizeRelocate(port.px(10), top, width - port.px(16), room);
    }
  }
}
