package stafette.desktop.players;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import stafette.desktop.texts.Texts;
import stafette.desktop.texts.Typed;
import stafette.plan.Seat;

/** All that is settled about one player. */
final class PlayerForm extends VBox {
  private final PlayerEntry entry;
  private final String id;
  private final Texts texts;
  private final PlayerGestures gestures;

  /**
   * A form.
   *
   * @param id what the names of its controls begin with
   * @param place among the players, from 0
   * @param count how many there are
   */
  PlayerForm(
      PlayerEntry entry,
      String id,
      int place,
      int count,
      List<String> instruments,
      Texts texts,
      PlayerGestures gestures) {
    super(8);
    this.entry = entry;
    this.id = id;
    this.texts = texts;
    this.gestures = gestures;
    getChildren().add(instrument(instruments));
    if (entry.segments() > 0 || entry.locked()) {
      getChildren().add(lock());
    }
    if (entry.hasOther()) {
      getChildren().add(other());
    }
    if (!entry.skills().isEmpty()) {
      getChildren().add(new LimitsGrid(entry, id, texts, gestures));
    }
    for (int i = 0; i < entry.extras().size(); i++) {
      getChildren().add(extra(i + 1, entry.extras().get(i)));
    }
    getChildren().addAll(seat(), places(place, count));
  }

  private HBox instrument(List<String> all) {
    ComboBox<String> choice = new ComboBox<>();
    choice.getItems().setAll(all);
    entry.instrument().ifPresent(choice::setValue);
    choice.setConverter(new Named(texts));
    choice.setId(id + "-instrument");
    choice.setPromptText(texts.get("players.which"));
    choice.setAccessibleText(texts.get("players.instrument", entry.name()));
    choice.setOnAction(event -> gestures.plays(entry.name(), choice.getValue()));
    return new HBox(6, choice);
  }

  private CheckBox lock() {
    return box(
        id + "-lock",
        texts.get("players.lock"),
        entry.locked(),
        kept -> gestures.lock(entry.name(), kept));
  }

  private CheckBox other() {
    return box(
        id + "-other",
        texts.get("players.other"),
        entry.countsOther(),
        counts -> gestures.countOther(entry.name(), counts));
  }

  private CheckBox extra(int number, PlayerEntry.Extra extra) {
    return box(
        id + "-extra-" + number,
        texts.get("players.extra", texts.name(extra.technique())),
        extra.allowed(),
        allowed -> gestures.allow(entry.name(), extra.technique(), allowed));
  }

  private interface Settled {
    void to(boolean value);
  }

  private static CheckBox box(String id, String words, boolean now, Settled settled) {
    CheckBox box = new CheckBox(words);
    box.setId(id);
    box.setSelected(now);
    box.setWrapText(true);
    box.setOnAction(event -> settled.to(box.isSelected()));
    return box;
  }

  private Label quiet(String key) {
    Label label = new Label(texts.get(key));
    label.getStyleClass().add("quiet");
    return label;
  }

  private VBox seat() {
    TextField across = metres(entry.seat().map(Seat::acrossMetres), "players.across");
    TextField back = metres(entry.seat().map(Seat::backMetres), "players.back");
    across.setId(id + "-across");
    back.setId(id + "-back");
    Typed.whenSettled(across, () -> sit(across, back));
    Typed.whenSettled(back, () -> sit(across, back));
    return new VBox(4, quiet("players.seat"), new HBox(6, across, back));
  }

  private TextField metres(Optional<Double> value, String key) {
    TextField field = new TextField(value.map(v -> Typed.text(v, texts.locale())).orElse(""));
    field.setPrefColumnCount(8);
    field.setPromptText(texts.get(key));
    field.setAccessibleText(texts.get("players.seat.of", entry.name(), texts.get(key)));
    return field;
  }

  private void sit(TextField across, TextField back) {
    Optional<Double> x = Typed.figure(across);
    Optional<Double> y = Typed.figure(back);
    if (x.isPresent() && y.isPresent()) {
      gestures.sit(entry.name(), Optional.of(new Seat(x.get(), y.get())));
    } else if (across.getText().isBlank() && back.getText().isBlank()) {
      gestures.sit(entry.name(), Optional.empty());
    }
  }

  private HBox places(int place, int count) {
    Button up = button("up", "players.up");
    up.setDisable(place == 0);
    up.setOnAction(event -> gestures.move(entry.name(), -1));
    Button down = button("down", "players.down");
    down.setDisable(place == count - 1);
    down.setOnAction(event -> gestures.move(entry.name(), 1));
    Button remove = button("remove", "players.remove");
    remove.setOnAction(event -> gestures.remove(entry.name()));
    return new HBox(6, up, down, remove);
  }

  private Button button(String what, String key) {
    Button button = new Button(texts.get(key));
    button.setId(id + "-" + what);
    button.setAccessibleText(texts.get("players.button", entry.name(), texts.get(key)));
    return button;
  }
}
