package stafette.desktop.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import stafette.desktop.texts.Texts;
import stafette.desktop.texts.Typed;

/** A rule in figures, which count when their field is left. */
final class FigureRule<T> extends RuleBox {
  private static final PseudoClass NONE = PseudoClass.getPseudoClass("none");

  private final List<TextField> fields = new ArrayList<>();
  private final Function<List<String>, TypedValue<T>> read;
  private final Function<T, Optional<String>> settled;
  private List<String> present = List.of();

  /**
   * @param around the words before, between and after the fields, which are one fewer
   * @param read what is typed in them
   * @param settled takes another value, or says why not
   */
  FigureRule(
      String key,
      Texts texts,
      List<String> around,
      Function<List<String>, TypedValue<T>> read,
      Function<T, Optional<String>> settled) {
    super(key, texts);
    this.read = read;
    this.settled = settled;
    List<Node> row = new ArrayList<>();
    for (int i = 0; i < around.size(); i++) {
      if (!around.get(i).isEmpty()) {
        Label words = new Label(around.get(i));
        words.setMinWidth(Region.USE_PREF_SIZE);
        row.add(words);
      }
      if (i < around.size() - 1) {
        row.add(field(i, texts.get(key) + " " + around.get(i)));
      }
    }
    HBox line = new HBox(6);
    line.setAlignment(Pos.CENTER_LEFT);
    line.getChildren().setAll(row);
    fill(line, fields.get(0));
  }

  private TextField field(int number, String words) {
    TextField field = new TextField();
    field.setPrefColumnCount(4);
    name(field, id() + (number == 0 ? "" : "-" + (number + 1)), words.strip());
    Typed.whenLeft(field, this::settle);
    fields.add(field);
    return field;
  }

  /** What stands in an empty field. */
  void prompt(int number, String words) {
    fields.get(number).setPromptText(words);
    fields.get(number).setPrefColumnCount(words.length() - 1);
  }

  private void settle() {
    List<String> typed = fields.stream().map(TextField::getText).toList();
    if (typed.equals(present)) {
      mark(Optional.empty());
      return;
    }
    TypedValue<T> reading = read.apply(typed);
    if (reading.value().isPresent()) {
      present = typed;
      mark(settled.apply(reading.value().get()));
    } else {
      mark(Optional.of(reading.problem()));
    }
  }

  private void mark(Optional<String> refused) {
    say(refused);
    fields.forEach(field -> field.pseudoClassStateChanged(NONE, refused.isPresent()));
  }

  /** Shows what holds, without asking for it. */
  void show(List<String> figures) {
    present = List.copyOf(figures);
    for (int i = 0; i < fields.size(); i++) {
      fields.get(i).setText(figures.get(i));
    }
    mark(Optional.empty());
  }
}
