package stafette.desktop.relay;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.geometry.Side;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Rectangle;

/**
 * Signs over the notes where something does not work, one for those that stand too near to one
 * another; each opens what can be done about it.
 */
final class FaultSigns extends Pane {
  private static final double WIDE = 16;
  private static final double HIGH = 21;

  private final Handholds stage;
  private List<List<RelayFault>> shown = List.of();

  FaultSigns(Handholds stage) {
    this.stage = stage;
    setPickOnBounds(false);
    Rectangle clip = new Rectangle();
    clip.widthProperty().bind(widthProperty());
    clip.heightProperty().bind(heightProperty());
    setClip(clip);
  }

  void clear() {
    shown = List.of();
    getChildren().clear();
  }

  /** Signs stay while the same stands at them, so that the keyboard stays where it is. */
  void place() {
    List<List<RelayFault>> now = together();
    if (!now.equals(shown)) {
      shown = now;
      getChildren().setAll(now.stream().map(this::sign).toList());
    }
    for (int i = 0; i < now.size(); i++) {
      place(getChildren().get(i), now.get(i).get(0));
    }
  }

  private List<List<RelayFault>> together() {
    double apart = stage.view().time().port().px(WIDE);
    List<List<RelayFault>> groups = new ArrayList<>();
    for (RelayFault fault : stage.view().shown().faults()) {
      groups.stream()
          .filter(group -> group.get(0).lane() == fault.lane())
          .filter(group -> Math.abs(x(group.get(0)) - x(fault)) < apart)
          .findFirst()
          .orElseGet(
              () -> {
                List<RelayFault> alone = new ArrayList<>();
                groups.add(alone);
                return alone;
              })
          .add(fault);
    }
    return groups;
  }

  private double x(RelayFault fault) {
    return stage.view().time().x(fault.at());
  }

  private Button sign(List<RelayFault> faults) {
    Button sign = new Button(faults.size() == 1 ? "!" : Integer.toString(faults.size()));
    sign.setId("fault-" + (faults.get(0).number() + 1));
    sign.getStyleClass().setAll("fault");
    sign.setManaged(false);
    String words =
        faults.stream()
            .map(fault -> stage.texts().say(fault.words()))
            .collect(Collectors.joining("\n"));
    sign.setAccessibleText(words);
    Tooltip tip = new Tooltip(words);
    tip.setWrapText(true);
    tip.setMaxWidth(stage.view().time().port().px(RelayMenus.WIDEST));
    sign.setTooltip(tip);
    sign.setOnAction(event -> open(sign, faults));
    return sign;
  }

  private void open(Button sign, List<RelayFault> faults) {
    ContextMenu menu = RelayMenus.ofFaults(faults, stage);
    menu.show(sign, Side.BOTTOM, 0, 0);
  }

  private void place(Node sign, RelayFault fault) {
    Viewport port = stage.view().time().port();
    double x = x(fault);
    double foot = stage.view().lanes().middle(fault.lane()) - stage.view().lanes().half();
    double wide = port.px(WIDE);
    double high = port.px(HIGH);
    sign.setVisible(x >= 0 && x <= port.width() && foot > port.ruler());
    sign.resizeRelocate(x - wide / 2, foot - high, wide, high);
  }
}
