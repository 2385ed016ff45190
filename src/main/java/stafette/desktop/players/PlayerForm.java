package stafette.desktop.players;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import stafette.desktop.texts.Texts;
import stafette.plan.Seat;
import stafette.plan.Skill;

/** All that is settled about one player. */
final class PlayerForm extends VBox {
  private final Entry entry;
  private final Texts texts;
  private final PlayerGestures gestures;

  PlayerForm(Entry entry, List<String> instruments, Texts texts, PlayerGestures gestures) {
    super(8);
    this.entry = entry;
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
      getChildren().add(limits());
    }
    getChildren().addAll(seat(), remove());
  }

  private HBox instrument(List<String> all) {
    ComboBox<String> choice = new ComboBox<>();
    choice.getItems().setAll(all);
    entry.instrument().ifPresent(choice::setValue);
    choice.setId("player-instrument");
    choice.setPromptText(texts.get("players.which"));
    choice.setAccessibleText(texts.get("players.instrument", entry.name()));
    choice.setOnAction(event -> gestures.plays(entry.name(), choice.getValue()));
    return new HBox(6, choice);
  }

  private CheckBox lock() {
    return box(
        "player-lock",
        texts.get("players.lock"),
        entry.locked(),
        kept -> gestures.lock(entry.name(), kept));
  }

  private CheckBox other() {
    return box(
        "player-other",
        texts.get("players.other"),
        entry.countsOther(),
        counts -> gestures.countOther(entry.name(), counts));
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

  private GridPane limits() {
    GridPane grid = new GridPane();
    grid.setHgap(6);
    grid.setVgap(4);
    grid.addRow(
        0,
        quiet(texts.get("players.limits")),
        quiet(texts.get("players.peak")),
        quiet(texts.get("players.sustained")));
    int row = 1;
    for (Skill skill : entry.skills()) {
      String technique = skill.technique().name();
      TextField peak = figure(skill.capability().peakPerSecond(), "players.peak", technique);
      TextField sustained =
          figure(skill.capability().sustainedPerSecond(), "players.sustained", technique);
      peak.setId("player-peak-" + row);
      sustained.setId("player-sustained-" + row);
      peak.setOnAction(event -> measure(technique, peak, sustained));
      sustained.setOnAction(event -> measure(technique, peak, sustained));
      grid.addRow(row++, new Label(technique), peak, sustained);
    }
    return grid;
  }

  private void measure(String technique, TextField peak, TextField sustained) {
    Optional<Double> most = Typed.figure(peak.getText());
    Optional<Double> lasting = Typed.figure(sustained.getText());
    if (most.isPresent() && lasting.isPresent()) {
      gestures.measured(entry.name(), technique, most.get(), lasting.get());
    }
  }

  private TextField figure(double value, String key, String technique) {
    TextField field = new TextField(Typed.text(value, texts.locale()));
    field.setPrefColumnCount(4);
    field.setAccessibleText(technique + ", " + texts.get(key));
    return field;
  }

  private static Label quiet(String words) {
    Label label = new Label(words);
    label.getStyleClass().add("quiet");
    return label;
  }

  private VBox seat() {
    TextField across = metres(entry.seat().map(Seat::acrossMetres), "players.across");
    TextField back = metres(entry.seat().map(Seat::backMetres), "players.back");
    across.setId("player-across");
    back.setId("player-back");
    across.setOnAction(event -> sit(across, back));
    back.setOnAction(event -> sit(across, back));
    return new VBox(4, quiet(texts.get("players.seat")), new HBox(6, across, back));
  }

  private TextField metres(Optional<Double> value, String key) {
    TextField field = new TextField(value.map(v -> Typed.text(v, texts.locale())).orElse(""));
    field.setPrefColumnCount(7);
    field.setPromptText(texts.get(key));
    field.setAccessibleText(texts.get(key));
    return field;
  }

  private void sit(TextField across, TextField back) {
    Optional<Double> x = Typed.figure(across.getText());
    Optional<Double> y = Typed.figure(back.getText());
    if (x.isPresent() && y.isPresent()) {
      gestures.sit(entry.name(), Optional.of(new Seat(x.get(), y.get())));
    } else if (across.getText().isBlank() && back.getText().isBlank()) {
      gestures.sit(entry.name(), Optional.empty());
    }
  }

  private Button remove() {
    Button remove = new Button(texts.get("players.remove"));
    remove.setId("player-remove");
    remove.setAccessibleText(texts.get("players.remove.whom", entry.name()));
    remove.setOnAction(event -> gestures.remove(entry.name()));
    return remove;
  }
}
