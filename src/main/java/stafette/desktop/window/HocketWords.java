package stafette.desktop.window;

import java.util.stream.Stream;
import javafx.util.StringConverter;
import stafette.desktop.texts.Texts;
import stafette.plan.Hocket;

/** The units of hockets in words. */
final class HocketWords extends StringConverter<Hocket> {
  private final Texts texts;

  HocketWords(Texts texts) {
    this.texts = texts;
  }

  @Override
  public String toString(Hocket unit) {
    return unit == null ? "" : texts.get("hocket." + unit);
  }

  @Override
  public Hocket fromString(String words) {
    return Stream.of(Hocket.values())
        .filter(unit -> toString(unit).equals(words))
        .findFirst()
        .orElse(Hocket.NO);
  }
}
