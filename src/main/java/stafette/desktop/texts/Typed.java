package stafette.desktop.texts;

import java.text.NumberFormat;
import java.util.Locale;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.TextField;

/** Figures as people type them, with a comma or a point. */
public final class Typed {
  private static final PseudoClass NONE = PseudoClass.getPseudoClass("none");

  private Typed() {}

  /** Empty if it is none. */
  public static Optional<Double> figure(String text) {
    String plain = text.strip().replace(',', '.').replace('\u2212', '-');
    return plain.matches("-?[0-9]{1,4}(\\.[0-9]{1,4})?")
        ? Optional.of(Double.parseDouble(plain))
        : Optional.empty();
  }

  /** The figure in a field; what is none is marked. */
  public static Optional<Double> figure(TextField field) {
    Optional<Double> figure = figure(field.getText());
    field.pseudoClassStateChanged(NONE, figure.isEmpty() && !field.getText().isBlank());
    return figure;
  }

  /** Runs when a changed field is left, or closed with the enter key. */
  public static void whenSettled(TextField field, Runnable settled) {
    String[] before = {field.getText()};
    whenLeft(
        field,
        () -> {
          if (!field.getText().equals(before[0])) {
            before[0] = field.getText();
            settled.run();
          }
        });
  }

  /** Runs whenever a field is left, or closed with the enter key. */
  public static void whenLeft(TextField field, Runnable left) {
    field.setOnAction(event -> left.run());
    field
        .focusedProperty()
        .addListener(
            (observed, had, has) -> {
              if (!has) {
                left.run();
              }
            });
  }

  /** With two decimals at most. */
  public static String text(double value, Locale locale) {
    NumberFormat format = NumberFormat.getNumberInstance(locale);
    format.setGroupingUsed(false);
    format.setMaximumFractionDigits(2);
    return format.format(value);
  }
}
