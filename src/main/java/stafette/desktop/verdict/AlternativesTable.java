package stafette.desktop.verdict;

import java.util.List;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import javafx.geometry.Insets;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stafette.check.TempoWindow;
import stafette.check.Traits;
import stafette.desktop.texts.Texts;
import stafette.plan.Favour;
import stafette.score.Place;
import stafette.words.Sentence;
import stafette.work.JudgedPlan;
import stafette.work.SideBySide;

/** Plans side by side: a column for each, under each heading what is compared. */
final class AlternativesTable {
  private final Texts texts;
  private final GridPane grid = new GridPane();
  private final List<Column> columns;
  private int row;

  private AlternativesTable(List<Column> columns, Texts texts) {
    this.columns = columns;
    this.texts = texts;
    grid.setHgap(8);
    grid.setVgap(0);
    for (int i = 0; i < columns.size(); i++) {
      ColumnConstraints even = new ColumnConstraints();
      even.setPercentWidth(100.0 / columns.size());
      grid.getColumnConstraints().add(even);
    }
  }

  private record Column(Favour favour, Traits traits, JudgedPlan plan) {}

  /**
   * The table, with what differs in words below.
   *
   * @param take told which alternative is taken, from 0
   */
  static Node of(SideBySide plans, Texts texts, IntConsumer take) {
    AlternativesTable table = new AlternativesTable(columns(plans), texts);
    table.fill();
    for (int i = 0; i < plans.columns().size(); i++) {
      table.addTake(i, take);
    }
    VBox all = new VBox(8, table.grid);
    for (SideBySide.Column column : plans.columns()) {
      String favours = texts.get("favour." + column.favour().name());
      Label words =
          new Label(
              texts.get(
                  "alternatives.differs",
                  favours,
                  texts.say(Sentence.list("; ", column.differs()))));
      words.setWrapText(true);
      words.getStyleClass().add("quiet");
      all.getChildren().add(words);
    }
    return all;
  }

  private static List<Column> columns(SideBySide plans) {
    Stream<Column> main =
        plans.traits().stream()
            .flatMap(
                traits ->
                    plans.main().plan().stream()
                        .map(
                            plan ->
                                new Column(plans.main().brief().rules().favour(), traits, plan)));
    Stream<Column> others =
        plans.columns().stream()
            .map(column -> new Column(column.favour(), column.traits(), column.plan()));
    return Stream.concat(main, others).toList();
  }

  private void fill() {
    row("alternatives.favours", column -> texts.get("favour." + column.favour().name()));
    row("alternatives.handoffs", column -> Integer.toString(column.traits().handoffs()));
    row("alternatives.strain", column -> texts.percent(column.traits().highestStrain()));
    row("alternatives.tightest", this::tightest);
    row("alternatives.slowest", column -> window(column, TempoWindow::slowestText));
    row("alternatives.fastest", column -> window(column, TempoWindow::fastestText));
    row("alternatives.cost", column -> Integer.toString(column.traits().cost()));
  }

  private String tightest(Column column) {
    Place place = column.traits().tightest();
    return texts.get("alternatives.spot", place.part(), place.at().bar(), place.at().beatText());
  }

  private String window(Column column, Function<TempoWindow, Sentence> end) {
    return column.plan().window().map(end).map(texts::say).orElse("–");
  }

  private void row(String key, Function<Column, String> cell) {
    Label head = new Label(texts.get(key));
    head.getStyleClass().add("quiet");
    grid.add(head, 0, row++, columns.size(), 1);
    GridPane.setMargin(head, new Insets(5, 0, 0, 0));
    for (int i = 0; i < columns.size(); i++) {
      Label label = new Label(cell.apply(columns.get(i)));
      label.setWrapText(true);
      label.setMinWidth(0);
      GridPane.setValignment(label, VPos.TOP);
      grid.add(label, i, row);
    }
    row++;
  }

  private void addTake(int alternative, IntConsumer take) {
    Button button = new Button(texts.get("alternatives.take"));
    button.setId("take-" + (alternative + 1));
    String favours = texts.get("favour." + columns.get(alternative + 1).favour().name());
    button.setAccessibleText(texts.get("alternatives.taken", favours));
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(event -> take.accept(alternative));
    grid.add(button, alternative + 1, row);
  }
}
