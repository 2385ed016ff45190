package stafette.desktop.relay;

import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stafette.desktop.playing.Balance;
import stafette.desktop.texts.Texts;
import stafette.plan.Player;

/** Name and instrument of a lane's player, and whether the player is heard. */
final class LaneBox extends VBox {
  private static final PseudoClass UNHEARD = PseudoClass.getPseudoClass("unheard");

  private final Player player;
  private final ToggleButton silenced;
  private final ToggleButton alone;

  LaneBox(Player player, int lane, Texts texts, LaneGestures gestures) {
    this.player = player;
    getStyleClass().add("lane-box");
    Label name = new Label(player.name());
    name.getStyleClass().add("lane-name");
    Label instrument = new Label(texts.say(player.instrument()));
    instrument.getStyleClass().add("lane-instrument");
    silenced = toggle("lane-silenced", texts.get("lane.silence", player.name()), lane);
    silenced.setOnAction(event -> gestures.silence(player.name()));
    alone = toggle("lane-alone", texts.get("lane.alone", player.name()), lane);
    alone.setOnAction(event -> gestures.alone(player.name()));
    HBox toggles = new HBox(silenced, alone);
    toggles.getStyleClass().add("lane-toggles");
    getChildren().setAll(name, instrument, toggles);
    setAccessibleText(player.name() + ", " + instrument.getText());
  }

  private static ToggleButton toggle(String look, String words, int lane) {
    Region sign = new Region();
    sign.getStyleClass().add("sign");
    ToggleButton button = new ToggleButton("", sign);
    button.setId(look + "-" + (lane + 1));
    button.getStyleClass().addAll("lane-toggle", look);
    button.setTooltip(new Tooltip(words));
    button.setAccessibleText(words);
    return button;
  }

  Player player() {
    return player;
  }

  /** Shows whether the player is silenced, alone, heard. */
  void show(Balance balance) {
    silenced.setSelected(balance.silenced().contains(player.name()));
    alone.setSelected(balance.alone().contains(player.name()));
    pseudoClassStateChanged(UNHEARD, !balance.hears(player.name()));
  }
}
