package stafette.desktop.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import javafx.geometry.Insets;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stafette.check.JudgedPlan;
import stafette.check.TempoWindow;
import stafette.check.Traits;
import stafette.desktop.texts.Texts;
import stafette.limits.Way;
import stafette.plan.Favour;
import stafette.plan.Plan;
import stafette.plan.Segment;
import stafette.score.Place;
import stafette.words.Sentence;
import stafette.work.SideBySide;

/**
 * Plans side by side: a column for each, under each heading what is compared, below it in words.
 */
final class AlternativesTable extends VBox {
  private final Texts texts;
  private final GridPane grid = new GridPane();
  private final List<AlternativeColumn> columns;
  private final List<Button> takes = new ArrayList<>();
  private int row;

  /**
   * The table of the plan that others were sought for and of these.
   *
   * @param take told which one is taken, from 0, the one compared with first
   */
  AlternativesTable(SideBySide plans, Texts texts, IntConsumer take) {
    super(8);
    this.columns = columns(plans);
    this.texts = texts;
    grid.setHgap(8);
    grid.setVgap(0);
    for (int i = 0; i < columns.size(); i++) {
      ColumnConstraints even = new ColumnConstraints();
      even.setPercentWidth(100.0 / columns.size());
      grid.getColumnConstraints().add(even);
    }
    fill(take);
    getChildren().add(grid);
    plans.columns().forEach(this::describe);
  }

  private record AlternativeColumn(Favour favour, Traits traits, JudgedPlan plan) {}

  private void describe(SideBySide.Column column) {
    Label words =
        new Label(
            texts.get(
                "alternatives.differs",
                favour(column.favour()),
                texts.say(Sentence.list("; ", column.differs()))));
    words.setWrapText(true);
    words.getStyleClass().add("quiet");
    getChildren().add(words);
  }

  private String favour(Favour favour) {
    return texts.get("favour." + favour.name());
  }

  private static List<AlternativeColumn> columns(SideBySide plans) {
    Stream<AlternativeColumn> main =
        plans.traits().stream()
            .flatMap(
                traits ->
                    plans.main().plan().stream()
                        .map(
                            plan ->
                                new AlternativeColumn(
                                    plans.main().brief().rules().favour(), traits, plan)));
    Stream<AlternativeColumn> others =
        plans.columns().stream()
            .map(column -> new AlternativeColumn(column.favour(), column.traits(), column.plan()));
    return Stream.concat(main, others).toList();
  }

  private void fill(IntConsumer take) {
    row("alternatives.favours", column -> favour(column.favour()));
    for (int i = 0; i < columns.size(); i++) {
      addTake(i, take);
    }
    row++;
    row("alternatives.handoffs", column -> Integer.toString(column.traits().handoffs()));
    row("alternatives.strain", column -> texts.percent(column.traits().highestStrain()));
    row("alternatives.tightest", this::tightest);
    row("alternatives.slowest", column -> window(column, TempoWindow::slowestText));
    row("alternatives.fastest", column -> window(column, TempoWindow::fastestText));
    row("alternatives.cost", column -> Integer.toString(column.traits().cost()));
  }

  private String tightest(AlternativeColumn column) {
    Place place = column.traits().tightest();
    return texts.get("alternatives.spot", place.part(), texts.say(place.at().inShort()));
  }

  private String window(AlternativeColumn column, Function<TempoWindow, Sentence> end) {
    return column
        .plan()
        .window()
        .map(end)
        .map(texts::say)
        .orElseGet(() -> texts.say(Sentence.of("at no tempo")));
  }

  private void row(String key, Function<AlternativeColumn, String> cell) {
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

  private void addTake(int number, IntConsumer take) {
    Button button = new Button(texts.get("alternatives.take"));
    button.setId("take-" + number);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(event -> take.accept(number));
    takes.add(button);
    grid.add(button, number, row);
  }

  /** Marks the plan that is on the desk; there is nothing to take of it. */
  void mark(Plan onDesk) {
    for (int i = 0; i < columns.size(); i++) {
      boolean shown = turns(columns.get(i).plan().plan()).equals(turns(onDesk));
      Button button = takes.get(i);
      String favours = favour(columns.get(i).favour());
      button.setDisable(shown);
      button.setText(texts.get(shown ? "alternatives.shown" : "alternatives.take"));
      button.setAccessibleText(
          texts.get(shown ? "alternatives.shown.long" : "alternatives.taken", favours));
    }
  }

  /** Who plays what, however players and techniques are numbered. */
  private static List<TableTurn> turns(Plan plan) {
    return plan.segments().stream()
        .map(
            s ->
                new TableTurn(
                    new Segment(s.relay(), 0, 0, s.first(), s.last(), s.pattern()),
                    plan.player(s).name(),
                    plan.way(s)))
        .toList();
  }

  private record TableTurn(Segment segment, String player, Way way) {}

  /** Whether this was found for the notes of a plan, at its tempo. */
  boolean isFor(Plan plan) {
    return columns.stream()
        .allMatch(column -> column.plan().plan().brief().hasNotesOf(plan.brief()));
  }
}
