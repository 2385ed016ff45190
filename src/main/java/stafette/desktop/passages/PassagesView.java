package stafette.desktop.passages;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TitledPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import stafette.desktop.texts.Texts;
import stafette.score.LineSource;
import stafette.score.Part;
import stafette.work.CheckScore;

/** The fast passages of a score, worst first; choosing one says so. */
public final class PassagesView extends VBox {
  private final Texts texts;
  private final ListView<CheckScore.PassageVerdicts> list = new ListView<>();
  private final Label notJudged = new Label();
  private final LineForm form;
  private boolean marking;

  /** What the user chooses here. */
  public interface Chosen {
    void passage(CheckScore.PassageVerdicts passage);

    void line(LineForm.Wish line);
  }

  public PassagesView(Texts texts, Chosen chosen) {
    this.texts = texts;
    setId("passages");
    getStyleClass().add("panel");
    Label title = new Label(texts.get("passages.title"));
    title.getStyleClass().add("panel-title");
    title.setLabelFor(list);
    title.setWrapText(true);
    title.setMinHeight(Region.USE_PREF_SIZE);
    list.setId("passages-list");
    list.getStyleClass().add("plain-list");
    list.setAccessibleText(texts.get("passages.title"));
    list.setPlaceholder(new Label());
    list.setCellFactory(view -> new PassageCell());
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (observed, before, now) -> {
              if (!marking) {
                choose(now, chosen::passage);
              }
            });
    notJudged.setId("passages-not-judged");
    notJudged.getStyleClass().add("quiet");
    notJudged.setWrapText(true);
    notJudged.setMinHeight(Region.USE_PREF_SIZE);
    tellNotJudged(List.of());
    form = new LineForm(texts, chosen::line);
    TitledPane other = new TitledPane(texts.get("passages.other"), form);
    other.setId("passages-other");
    other.setExpanded(false);
    VBox.setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(title, list, notJudged, other);
  }

  private Label none() {
    Label none = new Label(texts.get("passages.none"));
    none.setWrapText(true);
    return none;
  }

  private static void choose(
      CheckScore.@Nullable PassageVerdicts now, Consumer<CheckScore.PassageVerdicts> chosen) {
    if (now != null) {
      chosen.accept(now);
    }
  }

  /** Shows what a check found. */
  public void show(List<CheckScore.PassageVerdicts> reports, List<Part> parts) {
    list.getItems().setAll(reports);
    list.setPlaceholder(none());
    tellNotJudged(reports);
    form.show(parts);
  }

  /** Once and together, not at each passage. */
  private void tellNotJudged(List<CheckScore.PassageVerdicts> reports) {
    String parts =
        reports.stream()
            .filter(report -> report.answers().isEmpty())
            .map(report -> report.line().source().partName())
            .distinct()
            .collect(Collectors.joining(", "));
    notJudged.setText(texts.get("passages.unjudged", parts));
    notJudged.setVisible(!parts.isEmpty());
    notJudged.setManaged(!parts.isEmpty());
  }

  /** No passage is chosen any more, so that any can be. */
  public void unchoose() {
    list.getSelectionModel().clearSelection();
  }

  /** Marks the passage that is on the desk; none if the line is another. */
  public void mark(Optional<LineSource> line) {
    marking = true;
    list.getItems().stream()
        .filter(report -> line.filter(report.line().source()::equals).isPresent())
        .findFirst()
        .ifPresentOrElse(list.getSelectionModel()::select, this::unchoose);
    marking = false;
  }

  /** One passage: where, how fast, how near the limit in words and in ink. */
  private final class PassageCell extends ListCell<CheckScore.PassageVerdicts> {
    private final Label place = new Label();
    private final Label pace = new Label();
    private final Label ease = new Label();
    private final StrainInk ink = new StrainInk();
    private final VBox box;

    PassageCell() {
      Region gap = new Region();
      HBox.setHgrow(gap, Priority.ALWAYS);
      HBox first = new HBox(6, place, gap, ink);
      first.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
      pace.getStyleClass().add("quiet");
      place.getStyleClass().add("panel-title");
      pace.setWrapText(true);
      ease.setWrapText(true);
      place.setWrapText(true);
      box = new VBox(2, first, pace, ease);
      setPrefWidth(0);
    }

    @Override
    protected void updateItem(CheckScore.@Nullable PassageVerdicts report, boolean empty) {
      super.updateItem(report, empty);
      setText(null);
      if (empty || report == null) {
        setGraphic(null);
        setTooltip(null);
        setAccessibleText("");
      } else {
        PassageItem item = PassageItem.of(report);
        String asked =
            item.best().flatMap(PassageItem.BestVerdict::asked).map(texts::say).orElse("");
        fill(item);
        setGraphic(box);
        setTooltip(asked.isEmpty() ? null : new Tooltip(asked));
        setAccessibleText(
            Stream.of(place.getText(), pace.getText(), ease.getText(), asked)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", ")));
      }
    }

    private void fill(PassageItem item) {
      place.setText(texts.get("passages.place", item.part(), item.firstBar(), item.lastBar()));
      pace.setText(texts.get("passages.pace", item.strokes(), item.rate()));
      boolean beyond = item.best().filter(best -> !best.ease().plays()).isPresent();
      ease.getStyleClass().removeAll("quiet", "beyond");
      ease.getStyleClass().add(beyond ? "beyond" : "quiet");
      ease.setText(
          item.best()
              .map(
                  best ->
                      texts.get(
                          "passages.ease",
                          texts.get("ease." + best.ease().name()),
                          texts.say(best.share())))
              .orElse(""));
      ease.setManaged(item.best().isPresent());
      ink.setVisible(item.best().isPresent());
      item.best().ifPresent(best -> ink.show(best.strain()));
    }
  }
}
