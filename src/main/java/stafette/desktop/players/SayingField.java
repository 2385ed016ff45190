package stafette.desktop.players;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import stafette.desktop.texts.Texts;
import stafette.desktop.texts.Typed;
import stafette.limits.Capability;
import stafette.limits.Saying;
import stafette.limits.Skill;
import stafette.words.Refusal;

/** Where a player says in words what it manages with a technique, and what was made of that. */
final class SayingField extends VBox {
  private final PlayerEntry entry;
  private final Skill skill;
  private final Texts texts;
  private final PlayerGestures gestures;
  private final TextField field = new TextField();
  private final Label answer = new Label();

  SayingField(PlayerEntry entry, Skill skill, String id, Texts texts, PlayerGestures gestures) {
    super(2);
    this.entry = entry;
    this.skill = skill;
    this.texts = texts;
    this.gestures = gestures;
    String technique = skill.technique().name();
    field.setId(id);
    field.setPromptText(texts.get("players.says.prompt"));
    field.setAccessibleText(
        texts.get("players.limit", entry.name(), texts.name(technique), texts.get("players.says")));
    answer.setId(id + "-answer");
    answer.setWrapText(true);
    said().ifPresent(saying -> field.setText(saying.text()));
    answer();
    Typed.whenSettled(field, this::settle);
  }

  private Optional<Saying> said() {
    return Optional.ofNullable(entry.said().get(skill.technique().name()));
  }

  /** Tells what was made of what is said; nothing where nothing is. */
  private void answer() {
    getChildren().setAll(field);
    said().ifPresent(saying -> answer("quiet", made()));
  }

  private String made() {
    Capability capability = skill.capability();
    return texts.get(
        "players.says.made",
        figure(capability.peakPerSecond()),
        figure(capability.sustainedPerSecond()));
  }

  private String figure(double perSecond) {
    return Typed.text(perSecond, texts.locale());
  }

  private void settle() {
    try {
      Optional<Saying> saying =
          field.getText().isBlank() ? Optional.empty() : Optional.of(Saying.parse(field.getText()));
      answer();
      if (!saying.equals(said())) {
        gestures.says(entry.name(), skill.technique().name(), saying);
      }
    } catch (Refusal refusal) {
      answer("beyond", texts.say(refusal));
    }
  }

  private void answer(String style, String words) {
    answer.getStyleClass().setAll("label", style);
    answer.setText(words);
    getChildren().setAll(field, answer);
  }
}
