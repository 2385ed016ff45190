package stafette.desktop.players;

import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import stafette.desktop.texts.Texts;

/** Shows instruments by their names in the user's language; nothing is typed. */
final class Named extends StringConverter<String> {
  private final Texts texts;

  Named(Texts texts) {
    this.texts = texts;
  }

  @Override
  public String toString(@Nullable String instrument) {
    return instrument == null ? "" : texts.name(instrument);
  }

  @Override
  public String fromString(String shown) {
    return shown;
  }
}
