package stafette.desktop.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stafette.check.Finding;
import stafette.check.JudgedPlan;
import stafette.check.Verdict;
import stafette.check.alone.VerdictWords;
import stafette.check.join.JoinAdvice;
import stafette.desktop.texts.Texts;
import stafette.plan.Plan;
import stafette.words.Sentence;
import stafette.work.PlanInWords;
import stafette.work.SideBySide;

/** The verdict in words; each finding jumps to its place, each alternative can be taken. */
public final class VerdictView extends VBox {
  private final Texts texts;
  private final Jumps jumps;
  private final Label head = new Label();
  private final Label proof = new Label();
  private final Label odds = new Label();
  private final VBox findings = new VBox(2);
  private final VBox remedies = new VBox(6);
  private final VBox joins = new VBox(4);
  private final VBox cost = new VBox(4);
  private final VBox others = new VBox(4);
  private Optional<Plan> shown = Optional.empty();
  private Optional<AlternativesTable> table = Optional.empty();

  /** Where the user goes from here. */
  public interface Jumps {
    void to(Finding finding);

    /** A plan is taken of those side by side; numbered as shown, from 0. */
    void take(int plan);

    /** What would help is to be done; numbered as shown, from 0. */
    void help(int remedy);
  }

  /**
   * What would make a plan possible.
   *
   * @param can whether it can be done from here
   */
  public record Help(Sentence words, boolean can) {}

  public VerdictView(Texts texts, Jumps jumps) {
    this.texts = texts;
    this.jumps = jumps;
    setId("verdict");
    getStyleClass().add("panel");
    head.setId("verdict-head");
    head.setWrapText(true);
    head.setMinHeight(Region.USE_PREF_SIZE);
    quiet(proof, "verdict-proof");
    quiet(odds, "verdict-odds");
    findings.setId("findings");
    remedies.setId("remedies");
    joins.setId("joins");
    joins.managedProperty().bind(Bindings.isNotEmpty(joins.getChildren()));
    cost.setId("cost");
    others.setId("alternatives");
    Label caution = new Label(texts.get("verdict.caution"));
    quiet(caution, "verdict-caution");
    VBox all = new VBox(10, findings, remedies, others, joins, cost);
    ScrollPane scroll = new ScrollPane(all);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("flat-scroll");
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(head, proof, odds, scroll, caution);
    clear();
  }

  private static void quiet(Label label, String id) {
    label.setId(id);
    label.getStyleClass().add("quiet");
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.managedProperty().bind(label.textProperty().isNotEmpty());
  }

  /**
   * Shows a verdict; the explanation of the cost is left as it was while something is dragged. What
   * was {@link #proven} of the plan before is no longer said.
   */
  public void show(JudgedPlan judged, boolean dragging) {
    Plan plan = judged.plan();
    Verdict verdict = judged.verdict();
    boolean holds = verdict.holds();
    shown = Optional.of(plan);
    proof.setText("");
    head.getStyleClass().setAll("label", holds ? "panel-title" : "beyond");
    head.setText(
        holds
            ? texts.get("verdict.holds", texts.say(PlanInWords.turns(judged)))
            : texts.get("verdict.fails", verdict.findings().size()));
    odds.setText(holds ? beside(judged) : "");
    findings.getChildren().clear();
    remedies.getChildren().clear();
    verdict.findings().forEach(this::add);
    if (!dragging) {
      if (!table.map(plans -> plans.isFor(plan)).orElse(true)) {
        forgetOthers();
      }
      mark();
      seeTo(JoinAdvice.of(plan));
      explain(CostRow.of(plan, verdict.cost(), texts));
    }
  }

  private String beside(JudgedPlan judged) {
    List<String> lines = new ArrayList<>();
    lines.add(
        texts.get(
            "verdict.share", texts.say(VerdictWords.ofPlan(judged.plan(), judged.verdict()))));
    if (judged.window().isPresent()) {
      lines.add(texts.get("verdict.reserve", texts.say(PlanInWords.reserve(judged))));
      PlanInWords.cautions(judged, judged.plan().brief().rules().margin())
          .forEach(caution -> lines.add(texts.say(caution)));
      PlanInWords.notUsed(judged)
          .forEach(who -> lines.add(texts.get("verdict.notUsed", texts.say(who))));
    }
    return String.join("\n", lines);
  }

  private void add(Finding finding) {
    Hyperlink link = new Hyperlink(texts.say(finding.message()));
    link.setId("finding-" + (findings.getChildren().size() + 1));
    link.getStyleClass().add("link");
    link.setWrapText(true);
    link.setOnAction(event -> jumps.to(finding));
    findings.getChildren().add(link);
  }

  /** Says why it is the shown plan. */
  public void proven(Sentence why) {
    proof.setText(texts.get("verdict.why", texts.say(why)));
  }

  /** Says that the shown plan is only the nearest to what was asked, and what would help. */
  public void nearest(Sentence words, List<Help> helps) {
    proof.setText(texts.get("verdict.nearest", texts.say(words)));
    show(helps);
  }

  private void seeTo(List<JoinAdvice> advice) {
    joins.getChildren().clear();
    if (!advice.isEmpty()) {
      joins.getChildren().add(title("verdict.joins"));
    }
    for (JoinAdvice each : advice) {
      String words = texts.say(each.what());
      joins.getChildren().add(wrapped(texts.get("verdict.join", words, each.places())));
    }
  }

  private void explain(List<CostRow> rows) {
    GridPane grid = new GridPane();
    grid.setHgap(10);
    grid.setVgap(3);
    for (int i = 0; i < rows.size(); i++) {
      Label points = new Label(Integer.toString(rows.get(i).points()));
      points.setMinWidth(Region.USE_PREF_SIZE);
      GridPane.setHalignment(points, HPos.RIGHT);
      GridPane.setValignment(points, VPos.TOP);
      Label what = wrapped(rows.get(i).what());
      Label why = wrapped(rows.get(i).why());
      why.getStyleClass().add("quiet");
      VBox words = rows.get(i).why().isEmpty() ? new VBox(what) : new VBox(what, why);
      grid.addRow(i, points, words);
    }
    cost.getChildren().setAll(title("verdict.cost"), grid);
  }

  private static Label wrapped(String words) {
    Label label = new Label(words);
    label.setWrapText(true);
    return label;
  }

  private Label title(String key) {
    Label title = new Label(texts.get(key));
    title.getStyleClass().add("panel-title");
    return title;
  }

  /** Shows other plans beside the one that they were sought for. */
  public void compare(SideBySide plans) {
    AlternativesTable made = new AlternativesTable(plans, texts, jumps::take);
    table = Optional.of(made);
    mark();
    others.getChildren().setAll(title("verdict.others"), made);
  }

  private void mark() {
    table.ifPresent(plans -> shown.ifPresent(plans::mark));
  }

  private void forgetOthers() {
    others.getChildren().clear();
    table = Optional.empty();
  }

  /** Shows that there is no plan. */
  public void clear() {
    head.getStyleClass().setAll("label", "quiet");
    head.setText(texts.get("verdict.none"));
    proof.setText("");
    odds.setText("");
    findings.getChildren().clear();
    joins.getChildren().clear();
    cost.getChildren().clear();
    forgetOthers();
    shown = Optional.empty();
    remedies.getChildren().clear();
  }

  /** Says that a search was ended before it found anything. */
  public void giveUp() {
    clear();
    head.setText(texts.get("verdict.unfound"));
  }

  /** Says why there is no plan, and what would help. */
  public void refuse(List<Sentence> reasons, List<Help> helps) {
    clear();
    head.getStyleClass().setAll("label", "beyond");
    head.setText(texts.get("verdict.refused"));
    for (Sentence reason : reasons) {
      findings.getChildren().add(wrapped(texts.say(reason)));
    }
    show(helps);
  }

  private void show(List<Help> helps) {
    if (!helps.isEmpty()) {
      remedies.getChildren().add(title("verdict.helps"));
    }
    for (int i = 0; i < helps.size(); i++) {
      remedies.getChildren().add(help(i, helps.get(i)));
    }
  }

  private Node help(int number, Help help) {
    String said = texts.say(help.words());
    Label words = wrapped(said);
    words.setId("remedy-" + (number + 1));
    if (!help.can()) {
      return words;
    }
    Button button = new Button(texts.get("verdict.help"));
    button.setId("help-" + (number + 1));
    button.setAccessibleText(texts.get("verdict.help.long", said));
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(event -> jumps.help(number));
    words.setMinWidth(0);
    words.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(words, Priority.ALWAYS);
    return new HBox(8, words, button);
  }
}
