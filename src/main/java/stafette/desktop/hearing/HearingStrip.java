package stafette.desktop.hearing;

import java.util.Optional;
import java.util.OptionalInt;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.Spinner;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import stafette.desktop.playing.HearingWish;
import stafette.desktop.playing.PlaceValue;
import stafette.desktop.playing.Places;
import stafette.desktop.texts.Texts;

/** Everything about hearing in one strip: whether, from where, how fast, what. */
public final class HearingStrip extends FlowPane {
  private static final int STEP_PERCENT = 5;

  private final Texts texts;
  private final HearingAsked asked;
  private final Button hear;
  private final Button pause;
  private final PlaceValue places;
  private final Spinner<Long> place;
  private final Slider speed =
      new Slider(HearingWish.SLOWEST_PERCENT, HearingWish.FASTEST_PERCENT, 100);
  private final Label percent = new Label();
  private final ToggleButton again;
  private final ToggleButton behind;
  private final ToggleButton byOne;
  private final Label notice = new Label();
  private boolean showing;

  /** What goes on. */
  public enum Going {
    SILENT,
    /** Something is worked out before it can be heard. */
    PREPARING,
    PLAYING,
    PAUSED
  }

  /** What somebody asks for. */
  public interface HearingAsked {
    /** To hear, or if something is heard or prepared, silence. */
    void hear();

    /** To stand still, or to go on from there. */
    void pause();

    /** Another place to hear from. */
    void from(long lineMicros);

    /**
     * Another speed.
     *
     * @param settled false while it is still being moved
     */
    void speed(int percent, boolean settled);

    void again(boolean now);

    void behind(boolean now);

    void byOne(boolean now);
  }

  /**
   * What there is to show.
   *
   * @param places where it can be heard from; empty if there is nothing to hear
   * @param handoff the one that would be heard again and again
   * @param heard whether there is anything to hear with
   */
  public record ShownHearing(
      Optional<Places> places, HearingWish wish, OptionalInt handoff, Going going, boolean heard) {}

  public HearingStrip(Texts texts, HearingAsked asked) {
    this.texts = texts;
    this.asked = asked;
    hear = button("hear-now", asked::hear);
    pause = button("hear-pause", asked::pause);
    places = new PlaceValue(texts);
    place = new Spinner<>(places);
    again = toggle("hear-again");
    behind = toggle("hear-behind");
    byOne = toggle("hear-by-one");
    notice.setId("hear-notice");
    notice.getStyleClass().add("quiet");
    setId("hearing");
    getStyleClass().addAll("bar", "hearing");
    lookLikePlace();
    lookLikeSpeed();
    behind.setText(texts.get("hearing.behind"));
    byOne.setText(texts.get("hearing.alone"));
    say(behind, texts.get("hearing.behind.long"));
    say(byOne, texts.get("hearing.alone.long"));
    again.setOnAction(event -> asked.again(again.isSelected()));
    behind.setOnAction(event -> asked.behind(behind.isSelected()));
    byOne.setOnAction(event -> asked.byOne(byOne.isSelected()));
    Label from = new Label(texts.get("hearing.from"));
    from.setLabelFor(place);
    getChildren()
        .setAll(hear, pause, row(from, place), row(speed, percent), again, behind, byOne, notice);
    show(
        new ShownHearing(
            Optional.empty(), HearingWish.PLAIN, OptionalInt.empty(), Going.SILENT, true));
  }

  private static HBox row(Node first, Node second) {
    HBox row = new HBox(first, second);
    row.getStyleClass().add("hearing-row");
    return row;
  }

  private static Button button(String id, Runnable action) {
    Button button = new Button();
    button.setId(id);
    button.setOnAction(event -> action.run());
    return button;
  }

  private static ToggleButton toggle(String id) {
    ToggleButton button = new ToggleButton();
    button.setId(id);
    return button;
  }

  private void lookLikePlace() {
    place.setId("hear-from");
    place.setEditable(true);
    place.getEditor().setPrefColumnCount(14);
    place.setAccessibleText(texts.get("hearing.from.long"));
    place.getEditor().setAccessibleText(texts.get("hearing.from.long"));
    place.setTooltip(new Tooltip(texts.get("hearing.from.long")));
    place.valueProperty().addListener(this::placed);
    place.focusedProperty().addListener(observed -> writePlace());
  }

  private void placed(ObservableValue<?> observed, Long before, Long now) {
    if (!showing) {
      asked.from(now);
    }
  }

  private void lookLikeSpeed() {
    speed.setId("hear-speed");
    percent.setId("hear-percent");
    speed.setBlockIncrement(STEP_PERCENT);
    speed.setMajorTickUnit(STEP_PERCENT);
    speed.setMinorTickCount(0);
    speed.setSnapToTicks(true);
    speed.valueProperty().addListener(observed -> sped());
    speed.valueChangingProperty().addListener(observed -> sped());
  }

  private void sped() {
    if (!showing) {
      asked.speed(
          STEP_PERCENT * (int) Math.round(speed.getValue() / STEP_PERCENT),
          !speed.isValueChanging());
    }
  }

  /** Shows what is asked for and what goes on. */
  public void show(ShownHearing now) {
    showing = true;
    boolean none = now.places().isEmpty();
    boolean going = now.going() == Going.PLAYING || now.going() == Going.PREPARING;
    label(hear, going ? "hearing.silence" : "hearing.hear");
    label(pause, now.going() == Going.PAUSED ? "hearing.resume" : "hearing.pause");
    hear.setDisable(none);
    pause.setDisable(now.going() == Going.SILENT || now.going() == Going.PREPARING);
    place.setDisable(none);
    now.places().ifPresent(all -> showPlace(all, now.wish().fromMicros()));
    showSpeed(now.wish().percent());
    showAgain(now);
    behind.setSelected(now.wish().behind());
    behind.setDisable(none);
    byOne.setSelected(now.wish().byOne());
    byOne.setDisable(none);
    notice.setText(notice(now));
    showing = false;
  }

  private void label(Button button, String key) {
    button.setText(texts.get(key));
    say(button, texts.get(key + ".long"));
  }

  private static void say(ButtonBase button, String words) {
    button.setAccessibleText(words);
    button.setTooltip(new Tooltip(words));
  }

  private void showPlace(Places all, long micros) {
    if (places.show(all, micros)) {
      writePlace();
    }
  }

  /** What was typed and meant no place gives way to where it is. */
  private void writePlace() {
    place.getEditor().setText(places.getConverter().toString(places.getValue()));
  }

  private void showSpeed(int now) {
    if (!speed.isValueChanging()) {
      speed.setValue(now);
    }
    percent.setText(texts.get("percent", now));
    speed.setAccessibleText(texts.get("hearing.speed", now));
    speed.setTooltip(new Tooltip(texts.get("hearing.speed", now)));
  }

  private void showAgain(ShownHearing now) {
    boolean none = now.handoff().isEmpty();
    int number = now.handoff().orElse(0) + 1;
    again.setText(none ? texts.get("hearing.again.none") : texts.get("hearing.again", number));
    say(again, none ? again.getText() : texts.get("hearing.again.long", number));
    again.setSelected(now.wish().again() && !none);
    again.setDisable(none);
  }

  private String notice(ShownHearing now) {
    if (now.going() == Going.PREPARING) {
      return texts.get("hearing.waiting");
    }
    return now.heard() ? "" : texts.get("hearing.soundless");
  }
}
