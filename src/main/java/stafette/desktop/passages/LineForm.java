package stafette.desktop.passages;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import stafette.desktop.texts.Texts;
import stafette.score.Part;

/** A line named by part, staff, voice and bars. */
public final class LineForm extends GridPane {
  private final ComboBox<String> part = new ComboBox<>();
  private final TextField staff = new TextField();
  private final TextField voice = new TextField();
  private final TextField bars = new TextField();
  private List<Part> parts = List.of();

  /**
   * What is wished for.
   *
   * @param part the id of the part
   * @param bars as printed: "12-20"; all if empty
   */
  public record Wish(
      String part, OptionalInt staff, Optional<String> voice, Optional<String> bars) {}

  LineForm(Texts texts, Consumer<Wish> wished) {
    setHgap(8);
    setVgap(6);
    row(0, texts.get("line.part"), part, "line-part");
    row(1, texts.get("line.staff"), staff, "line-staff");
    row(2, texts.get("line.voice"), voice, "line-voice");
    row(3, texts.get("line.bars"), bars, "line-bars");
    bars.setPromptText("12-20");
    part.setMaxWidth(Double.MAX_VALUE);
    Button show = new Button(texts.get("line.show"));
    show.setId("line-show");
    show.setOnAction(event -> wish().ifPresent(wished));
    add(show, 1, 4);
  }

  private void row(int row, String words, javafx.scene.Node field, String id) {
    Label label = new Label(words);
    label.setLabelFor(field);
    field.setId(id);
    field.setAccessibleText(words);
    addRow(row, label, field);
  }

  void show(List<Part> all) {
    parts = List.copyOf(all);
    part.getItems().setAll(parts.stream().map(Part::name).toList());
    part.getSelectionModel().selectFirst();
  }

  private Optional<Wish> wish() {
    int chosen = part.getSelectionModel().getSelectedIndex();
    return chosen < 0
        ? Optional.empty()
        : Optional.of(new Wish(parts.get(chosen).id(), number(), text(voice), text(bars)));
  }

  private OptionalInt number() {
    return text(staff).filter(typed -> typed.matches("[1-9][0-9]?")).stream()
        .mapToInt(Integer::parseInt)
        .findFirst();
  }

  private static Optional<String> text(TextField field) {
    return Optional.of(field.getText().strip()).filter(typed -> !typed.isEmpty());
  }
}
