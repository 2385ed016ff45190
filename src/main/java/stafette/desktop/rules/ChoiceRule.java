package stafette.desktop.rules;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;
import stafette.desktop.texts.Texts;

/** A rule with some possibilities. What is refused goes back to what it was. */
final class ChoiceRule<T> extends RuleBox {
  private final ComboBox<T> choice = new ComboBox<>();
  private final Function<T, Optional<String>> chosen;
  private Optional<T> present = Optional.empty();

  /**
   * @param words how each possibility is called
   * @param chosen takes another one, or says why not
   */
  ChoiceRule(
      String key, Texts texts, Function<T, String> words, Function<T, Optional<String>> chosen) {
    super(key, texts);
    this.chosen = chosen;
    name(choice, id(), texts.get(key));
    choice.setMaxWidth(Double.MAX_VALUE);
    choice.setConverter(new ChoiceWords<>(choice, words));
    choice.setOnAction(event -> Optional.ofNullable(choice.getValue()).ifPresent(this::choose));
    fill(choice, choice);
  }

  /** Possibilities in words; the words lead back to the one of that name. */
  private static final class ChoiceWords<T> extends StringConverter<T> {
    private final ComboBox<T> box;
    private final Function<T, String> words;

    ChoiceWords(ComboBox<T> box, Function<T, String> words) {
      this.box = box;
      this.words = words;
    }

    @Override
    public String toString(T value) {
      return value == null ? "" : words.apply(value);
    }

    @Override
    public T fromString(String text) {
      return box.getItems().stream()
          .filter(item -> words.apply(item).equals(text))
          .findFirst()
          .orElse(box.getValue());
    }
  }

  private void choose(T value) {
    if (!present.equals(Optional.of(value))) {
      Optional<String> refused = chosen.apply(value);
      say(refused);
      if (refused.isPresent()) {
        present.ifPresent(choice::setValue);
      }
    }
  }

  /** Shows what holds, without asking for it. */
  void show(List<T> possible, T value) {
    present = Optional.of(value);
    if (!choice.getItems().equals(possible)) {
      choice.getItems().setAll(possible);
    }
    choice.setValue(value);
    say(Optional.empty());
  }
}
