package stafette.desktop.players;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import stafette.desktop.texts.Texts;
import stafette.desktop.texts.Typed;
import stafette.limits.Capability;
import stafette.limits.Skill;

/** A player's limits, a row for each technique; another figure is one that was measured. */
final class LimitsGrid extends GridPane {
  private final PlayerEntry entry;
  private final String id;
  private final Texts texts;
  private final PlayerGestures gestures;

  LimitsGrid(PlayerEntry entry, String id, Texts texts, PlayerGestures gestures) {
    this.entry = entry;
    this.id = id;
    this.texts = texts;
    this.gestures = gestures;
    setHgap(6);
    setVgap(4);
    for (int i = 0; i < 3; i++) {
      ColumnConstraints third = new ColumnConstraints();
      third.setPercentWidth(100 / 3.0);
      getColumnConstraints().add(third);
    }
    addRow(0, quiet("players.peak"), quiet("players.sustained"), quiet("players.stamina"));
    for (int i = 0; i < entry.skills().size(); i++) {
      addTechnique(i, entry.skills().get(i));
    }
  }

  private void addTechnique(int number, Skill skill) {
    String technique = skill.technique().name();
    Capability capability = skill.capability();
    TextField peak = figure(capability.peakPerSecond(), "peak", technique, number);
    TextField sustained = figure(capability.sustainedPerSecond(), "sustained", technique, number);
    TextField stamina = figure(capability.staminaStrokes(), "stamina", technique, number);
    for (TextField field : List.of(peak, sustained, stamina)) {
      Typed.whenSettled(field, () -> measure(technique, peak, sustained, stamina));
    }
    add(new Label(texts.name(technique)), 0, 1 + 3 * number, 3, 1);
    addRow(2 + 3 * number, peak, sustained, stamina);
    if (!skill.technique().isSlurred()) {
      String saying = id + "-says-" + (number + 1);
      add(new SayingField(entry, skill, saying, texts, gestures), 0, 3 + 3 * number, 3, 1);
    }
  }

  private void measure(String technique, TextField peak, TextField sustained, TextField stamina) {
    Optional<Double> most = Typed.figure(peak);
    Optional<Double> lasting = Typed.figure(sustained);
    Optional<Double> strokes = Typed.figure(stamina);
    if (most.isPresent() && lasting.isPresent() && strokes.isPresent()) {
      gestures.measured(entry.name(), technique, most.get(), lasting.get(), strokes.get());
    }
  }

  private TextField figure(double value, String what, String technique, int number) {
    TextField field = new TextField(Typed.text(value, texts.locale()));
    field.setId(id + "-" + what + "-" + (number + 1));
    field.setPrefColumnCount(5);
    field.setAccessibleText(
        texts.get(
            "players.limit", entry.name(), texts.name(technique), texts.get("players." + what)));
    return field;
  }

  private Label quiet(String key) {
    Label label = new Label(texts.get(key));
    label.getStyleClass().add("quiet");
    label.setWrapText(true);
    return label;
  }
}
