package stafette.desktop.players;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import stafette.desktop.texts.Texts;

/** Asks what somebody plays whose name doesn't tell. Seen only while it asks. */
final class InstrumentQuestion extends VBox {
  private final Texts texts;
  private final Label question = new Label();
  private final ComboBox<String> choice = new ComboBox<>();
  private String player = "";

  /**
   * @param answered told the player and the instrument
   */
  InstrumentQuestion(Texts texts, BiConsumer<String, String> answered) {
    super(4);
    this.texts = texts;
    question.setWrapText(true);
    question.getStyleClass().add("beyond");
    question.setLabelFor(choice);
    choice.setId("player-asked");
    choice.setMaxWidth(Double.MAX_VALUE);
    choice.setConverter(new Named(texts));
    choice.setPromptText(texts.get("players.which"));
    choice.setOnAction(
        event ->
            Optional.ofNullable(choice.getValue())
                .ifPresent(
                    instrument -> {
                      end();
                      answered.accept(player, instrument);
                    }));
    getChildren().addAll(question, choice);
    end();
  }

  /** Asks about a player; what was asked before is no longer asked. */
  void ask(String name, List<String> instruments) {
    player = name;
    question.setText(texts.get("players.ask", name));
    choice.setAccessibleText(question.getText());
    choice.getItems().setAll(instruments);
    setVisible(true);
    setManaged(true);
    choice.requestFocus();
  }

  private void end() {
    choice.getSelectionModel().clearSelection();
    setVisible(false);
    setManaged(false);
  }
}
