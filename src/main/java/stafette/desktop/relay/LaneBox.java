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

  private final String player;
  private final Label name = new Label();
  private final Label instrument = new Label();
  private final ToggleButton silenced;
  private final ToggleButton alone;
  private final HBox toggles;

  /**
   * A box for one lane.
   *
   * @param words all that is known of the player here
   */
  LaneBox(Player who, int lane, String words, Texts texts, MuteSoloGestures gestures) {
    player = who.name();
    getStyleClass().add("lane-box");
    name.setText(player);
    name.getStyleClass().add("lane-name");
    instrument.setText(texts.say(who.instrument()));
    instrument.getStyleClass().add("lane-instrument");
    silenced = toggle("lane-silenced", texts.get("lane.silence", player), lane);
    silenced.setOnAction(event -> gestures.silence(player));
    alone = toggle("lane-alone", texts.get("lane.alone", player), lane);
    alone.setOnAction(event -> gestures.alone(player));
    toggles = new HBox(silenced, alone);
    toggles.getStyleClass().add("lane-toggles");
    getChildren().setAll(name, instrument, toggles);
    setAccessibleText(words);
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

  /** The player's name. */
  String player() {
    return player;
  }

  /** Shows whether the player is silenced, alone, heard. */
  void show(Balance balance) {
    silenced.setSelected(balance.silenced().contains(player));
    alone.setSelected(balance.alone().contains(player));
    pseudoClassStateChanged(UNHEARD, !balance.hears(player));
  }

  /** Leaves the instrument out where there is no room for it. */
  void fit(double height) {
    double all = name.prefHeight(-1) + instrument.prefHeight(-1) + toggles.prefHeight(-1);
    boolean room = all <= height;
    if (instrument.isManaged() != room) {
      instrument.setManaged(room);
      instrument.setVisible(room);
    }
  }
}
