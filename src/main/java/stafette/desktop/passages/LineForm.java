package stafette.desktop.passages;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import stafette.desktop.texts.Texts;
import stafette.score.Part;
import stafette.score.Reading;
import stafette.score.ToneChoice;
import stafette.score.Voice;

/** A line named by part, staff, voice and bars; offers the staves and voices that a part has. */
public final class LineForm extends GridPane {
  private static final List<ToneChoice> TONES =
      List.of(
          new ToneChoice.All(),
          new ToneChoice.FromTop(1),
          new ToneChoice.FromTop(2),
          new ToneChoice.FromTop(3),
          new ToneChoice.Bottom());

  private final Texts texts;
  private final ComboBox<String> part = new ComboBox<>();
  private final ComboBox<String> staff = new ComboBox<>();
  private final ComboBox<String> voice = new ComboBox<>();
  private final ComboBox<String> reading = new ComboBox<>();
  private final TextField bars = new TextField();
  private final ComboBox<String> tone = new ComboBox<>();
  private List<Part> parts = List.of();

  /**
   * What is wished for.
   *
   * @param part the id of the part
   * @param staves any if empty; several share the line
   * @param voices any if empty; several share the line
   * @param bars as printed: "12-20"; all if empty
   * @param tone of chords
   * @param reading of broken octaves and chords
   */
  public record Wish(
      String part,
      List<Integer> staves,
      List<String> voices,
      Optional<String> bars,
      ToneChoice tone,
      Reading reading) {}

  LineForm(Texts texts, Consumer<Wish> wished) {
    this.texts = texts;
    setHgap(8);
    setVgap(6);
    row(0, "line.part", part, "line-part");
    row(1, "line.staff", staff, "line-staff");
    row(2, "line.voice", voice, "line-voice");
    row(3, "line.bars", bars, "line-bars");
    row(4, "line.tone", tone, "line-tone");
    row(5, "line.reading", reading, "line-reading");
    bars.setPromptText("12-20");
    tone.getItems().setAll(TONES.stream().map(texts::tone).toList());
    tone.getSelectionModel().selectFirst();
    for (Reading each : Reading.values()) {
      reading.getItems().add(texts.get("reading." + each));
    }
    reading.getSelectionModel().selectFirst();
    for (ComboBox<String> box : List.of(part, staff, voice, tone, reading)) {
      box.setMaxWidth(Double.MAX_VALUE);
      GridPane.setHgrow(box, Priority.ALWAYS);
    }
    part.getSelectionModel().selectedIndexProperty().addListener(observed -> offer());
    Button show = new Button(texts.get("line.show"));
    show.setId("line-show");
    show.setOnAction(event -> wish().ifPresent(wished));
    bars.setOnAction(event -> show.fire());
    add(show, 1, 6);
  }

  private void row(int row, String key, Node field, String id) {
    Label label = new Label(texts.get(key));
    label.setLabelFor(field);
    label.setMinWidth(Region.USE_PREF_SIZE);
    field.setId(id);
    field.setAccessibleText(texts.get(key));
    addRow(row, label, field);
  }

  void show(List<Part> all) {
    parts = List.copyOf(all);
    part.getItems().setAll(parts.stream().map(Part::name).toList());
    part.getSelectionModel().selectFirst();
    offer();
  }

  private Optional<Part> chosen() {
    int chosen = part.getSelectionModel().getSelectedIndex();
    return chosen < 0 || chosen >= parts.size() ? Optional.empty() : Optional.of(parts.get(chosen));
  }

  private void offer() {
    List<Voice> voices = chosen().map(Part::voices).orElse(List.of());
    List<String> staves =
        voices.stream().map(one -> Integer.toString(one.staff())).distinct().toList();
    offer(staff, staves);
    if (staves.size() == 2) {
      staff.getItems().add(texts.get("line.both"));
    }
    List<String> names = voices.stream().map(Voice::name).distinct().toList();
    offer(voice, names);
    if (staves.size() == 1 && names.size() == 2) {
      voice.getItems().add(texts.get("line.both.voices"));
    }
  }

  /** Any, which comes first, or one of them. */
  private void offer(ComboBox<String> box, List<String> names) {
    box.getItems().setAll(texts.get("line.any"));
    box.getItems().addAll(names);
    box.getSelectionModel().selectFirst();
  }

  private Optional<Wish> wish() {
    return chosen()
        .map(
            one ->
                new Wish(
                    one.id(),
                    picked(staff, one, each -> each.staff()),
                    picked(voice, one, Voice::name),
                    Optional.of(bars.getText().strip()).filter(typed -> !typed.isEmpty()),
                    TONES.get(tone.getSelectionModel().getSelectedIndex()),
                    Reading.values()[reading.getSelectionModel().getSelectedIndex()]));
  }

  /** None for any; all of them for what stands after the single ones. */
  private static <T> List<T> picked(ComboBox<String> box, Part part, Function<Voice, T> of) {
    List<T> all = part.voices().stream().map(of).distinct().toList();
    int index = box.getSelectionModel().getSelectedIndex();
    if (index <= 0) {
      return List.of();
    }
    return index <= all.size() ? List.of(all.get(index - 1)) : all;
  }
}
