package stafette.desktop.written;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import stafette.desktop.texts.Texts;
import stafette.time.Bar;
import stafette.work.ChangedPart;

/** The bars that would be written, part by part, before and after. */
public final class WrittenView extends VBox {
  private static final double SCROLL_BAR = 22;

  private final Texts texts;
  private final BarJumps jumps;
  private final ComboBox<String> choice = new ComboBox<>();
  private final Label summary = new Label();
  private final ListView<SystemPicture> systems = new ListView<>();
  private List<ChangedPart> parts = List.of();

  /** Where the user goes from here. */
  public interface BarJumps {
    /** A row of music is opened; its first bar is to be shown elsewhere. */
    void to(Bar bar);
  }

  public WrittenView(Texts texts, BarJumps jumps) {
    super(6);
    this.texts = texts;
    this.jumps = jumps;
    setId("written");
    getStyleClass().add("panel");
    Label title = new Label(texts.get("written.part"));
    title.getStyleClass().add("panel-title");
    title.setLabelFor(choice);
    choice.setId("written-part");
    choice.setAccessibleText(texts.get("written.part"));
    choice.getSelectionModel().selectedIndexProperty().addListener(observed -> fill());
    summary.setId("written-summary");
    summary.getStyleClass().add("quiet");
    summary.setWrapText(true);
    HBox head = new HBox(8, title, choice);
    head.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(head, summary, list());
    show(List.of());
  }

  private ListView<SystemPicture> list() {
    systems.setId("written-bars");
    systems.setAccessibleText(texts.get("written.title"));
    systems.setPlaceholder(new Label(texts.get("written.none")));
    systems.getStyleClass().add("written-bars");
    systems.setCellFactory(view -> new SystemCell());
    systems.widthProperty().addListener(observed -> fill());
    systems.setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ENTER) {
            jump();
          }
        });
    systems.setOnMouseClicked(
        event -> {
          if (event.getClickCount() == 2) {
            jump();
          }
        });
    VBox.setVgrow(systems, Priority.ALWAYS);
    return systems;
  }

  private void jump() {
    SystemPicture chosen = systems.getSelectionModel().getSelectedItem();
    if (chosen != null) {
      jumps.to(chosen.row().bars().get(0));
    }
  }

  /** Shows what would change; the part that is open stays open. */
  public void show(List<ChangedPart> changed) {
    String open = choice.getValue();
    parts = List.copyOf(changed);
    List<String> names = parts.stream().map(ChangedPart::name).toList();
    choice.getItems().setAll(names);
    choice.getSelectionModel().select(Math.max(0, names.indexOf(open)));
    choice.setDisable(names.isEmpty());
    fill();
  }

  private void fill() {
    int chosen = choice.getSelectionModel().getSelectedIndex();
    if (chosen < 0 || chosen >= parts.size()) {
      summary.setText("");
      systems.getItems().clear();
      return;
    }
    ChangedPart part = parts.get(chosen);
    summary.setText(
        texts.get(
            part.isNew() ? "written.new" : "written.changes",
            part.name(),
            part.bars().size(),
            part.strokesBefore(),
            part.strokesAfter()));
    systems.getItems().setAll(SystemPicture.all(part, systems.getWidth() - SCROLL_BAR, headings()));
  }

  private SystemPicture.Headings headings() {
    return new SystemPicture.Headings(texts.get("written.before"), texts.get("written.after"));
  }

  /** One row of music. */
  private final class SystemCell extends ListCell<SystemPicture> {
    private final SystemPane pane = new SystemPane();

    SystemCell() {
      setPrefWidth(0);
    }

    @Override
    protected void updateItem(@Nullable SystemPicture picture, boolean empty) {
      super.updateItem(picture, empty);
      setText(null);
      if (empty || picture == null) {
        setGraphic(null);
        setAccessibleText("");
      } else {
        pane.show(picture);
        setGraphic(pane);
        List<Bar> bars = picture.row().bars();
        setAccessibleText(
            texts.get(
                "written.row",
                bars.get(0).number(),
                bars.get(bars.size() - 1).number(),
                picture.strokesBefore(),
                picture.strokesAfter()));
      }
    }
  }
}
