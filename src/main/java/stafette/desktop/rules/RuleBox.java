package stafette.desktop.rules;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stafette.desktop.texts.Texts;

/** A rule with its name, a line of help, and room to say what is wrong. */
abstract class RuleBox extends VBox {
  private final Texts texts;
  private final String key;
  private final Label problem = new Label();

  /**
   * A box without its controls yet.
   *
   * @param key of its texts; its last part names the rule
   */
  RuleBox(String key, Texts texts) {
    super(3);
    this.key = key;
    this.texts = texts;
    getStyleClass().add("rule");
    problem.setId(id() + "-problem");
    problem.setWrapText(true);
    problem.setMinHeight(Region.USE_PREF_SIZE);
    problem.getStyleClass().add("beyond");
    say(Optional.empty());
  }

  final String id() {
    return key.replaceFirst("rules\\.", "rule-");
  }

  final Texts texts() {
    return texts;
  }

  /** Puts the controls between name and help; the first one has the name. */
  final void fill(Node row, Node first) {
    Label name = new Label(texts.get(key));
    name.getStyleClass().add("panel-title");
    name.setLabelFor(first);
    name.setWrapText(true);
    Label help = new Label(texts.get(key + ".help"));
    help.getStyleClass().add("quiet");
    help.setWrapText(true);
    help.setMinHeight(Region.USE_PREF_SIZE);
    getChildren().setAll(List.of(name, row, problem, help));
  }

  /** What a screen reader says of a control. */
  final void name(Node control, String id, String words) {
    control.setId(id);
    control.setAccessibleText(words);
    control.setAccessibleHelp(texts.get(key + ".help"));
  }

  /** Says at the field what is wrong, or nothing. */
  final void say(Optional<String> words) {
    problem.setText(words.orElse(""));
    problem.setVisible(words.isPresent());
    problem.setManaged(words.isPresent());
  }
}
