package stafette.desktop.players;

import java.text.NumberFormat;
import java.util.Locale;
import java.util.Optional;

/** Figures as people type them, with a comma or a point. */
final class Typed {
  private Typed() {}

  static Optional<Double> figure(String text) {
    String plain = text.strip().replace(',', '.').replace('\u2212', '-');
    return plain.matches("-?[0-9]{1,4}(\\.[0-9]{1,4})?")
        ? Optional.of(Double.parseDouble(plain))
        : Optional.empty();
  }

  static String text(double value, Locale locale) {
    NumberFormat format = NumberFormat.getNumberInstance(locale);
    format.setGroupingUsed(false);
    format.setMaximumFractionDigits(2);
    return format.format(value);
  }
}
