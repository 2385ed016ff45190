package stafette.desktop.playing;

import java.util.Optional;
import javafx.scene.control.SpinnerValueFactory;
import javafx.util.StringConverter;
import stafette.desktop.texts.Texts;

/** A place to hear from, moved by beats or typed; on the line's clock, in microseconds. */
public final class PlaceValue extends SpinnerValueFactory<Long> {
  private Optional<Places> places = Optional.empty();

  public PlaceValue(Texts texts) {
    setValue(0L);
    setConverter(
        new StringConverter<>() {
          @Override
          public String toString(Long micros) {
            return places.map(all -> texts.say(all.name(micros))).orElse("");
          }

          @Override
          public Long fromString(String typed) {
            long now = getValue();
            return isShown(typed)
                ? now
                : places.map(all -> all.find(typed).orElse(now)).orElse(now);
          }

          private boolean isShown(String typed) {
            return typed.equals(toString(getValue()));
          }
        });
  }

  /** Takes other places; tells whether anything is different. */
  public boolean show(Places all, long micros) {
    boolean same = places.filter(before -> before == all).isPresent() && getValue() == micros;
    places = Optional.of(all);
    setValue(micros);
    return !same;
  }

  @Override
  public void decrement(int steps) {
    for (int i = 0; i < steps; i++) {
      places.ifPresent(all -> setValue(all.previous(getValue())));
    }
  }

  @Override
  public void increment(int steps) {
    for (int i = 0; i < steps; i++) {
      places.ifPresent(all -> setValue(all.next(getValue())));
    }
  }
}
