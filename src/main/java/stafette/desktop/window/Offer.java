package stafette.desktop.window;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import stafette.desktop.texts.Texts;

/** Offers something above the panels; it stays until it is taken or put off. */
final class Offer extends HBox {
  private final Texts texts;

  Offer(Texts texts) {
    super(10);
    this.texts = texts;
    setId("offer");
    getStyleClass().add("bar");
    putOff();
  }

  /**
   * What can be done about it.
   *
   * @param name for its id
   */
  record Action(String name, String label, Runnable does) {}

  void show(String words, List<Action> acts) {
    Label label = new Label(words);
    label.setId("offer-words");
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    HBox.setHgrow(label, Priority.SOMETIMES);
    getChildren().setAll(label);
    acts.forEach(act -> getChildren().add(button(act.name, act.label, act.does)));
    Button later = button("later", "\u00d7", this::putOff);
    later.setAccessibleText(texts.get("offer.later"));
    getChildren().add(later);
    seen(true);
  }

  private Button button(String name, String label, Runnable does) {
    Button button = new Button(label);
    button.setId("offer-" + name);
    button.setOnAction(event -> does.run());
    button.setMinWidth(Region.USE_PREF_SIZE);
    return button;
  }

  void putOff() {
    seen(false);
  }

  private void seen(boolean now) {
    setVisible(now);
    setManaged(now);
  }
}
