package stafette.desktop.rules;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import stafette.ask.Relaying;
import stafette.desktop.texts.Texts;
import stafette.desktop.texts.Typed;
import stafette.limits.Assurance;
import stafette.plan.Favour;
import stafette.plan.Hocket;
import stafette.plan.Joins;
import stafette.plan.OverlapRule;
import stafette.plan.SourceTreatment;
import stafette.score.Slurring;
import stafette.score.Tremolo;

/** The rules, one below the other. */
public final class RulesView extends VBox {
  private final Texts texts;
  private final Label none;
  private final ScrollPane scroll;
  private final ChoiceRule<Favour> favour;
  private final FigureRule<OverlapRule> overlap;
  private final FigureRule<Double> ready;
  private final FigureRule<Assurance> assurance;
  private final ChoiceRule<Hocket> hocket;
  private final ChoiceRule<Integer> together;
  private final ChoiceRule<Tones> tones;
  private final ChoiceRule<Slurring> slurring;
  private final ChoiceRule<Tremolo> tremolo;
  private final ChoiceRule<SourceTreatment> source;
  private final ChoiceRule<Joins> joins;
  private final ChoiceRule<Boolean> balance;
  private final ChoiceRule<Boolean> pedals;

  public RulesView(Texts texts, RuleGestures asked) {
    this.texts = texts;
    setId("rules");
    getStyleClass().add("panel");
    favour = new ChoiceRule<>("rules.favour", texts, f -> texts.get("favour." + f), asked::favour);
    overlap =
        new FigureRule<>(
            "rules.overlap",
            texts,
            List.of(texts.get("rules.overlap.from"), texts.get("rules.overlap.to"), ""),
            typed -> TypedValue.overlap(typed.get(0), typed.get(1), texts),
            asked::overlap);
    overlap.prompt(1, texts.get("rules.overlap.beat"));
    ready = figure("rules.ready", texts, TypedValue::ready, asked::ready);
    assurance = figure("rules.assurance", texts, TypedValue::assurance, asked::assurance);
    hocket = new ChoiceRule<>("rules.hocket", texts, h -> texts.get("hocket." + h), asked::hocket);
    together =
        new ChoiceRule<>(
            "rules.together", texts, n -> texts.get("rules.together.n", n), asked::together);
    tones =
        new ChoiceRule<>(
            "rules.tones", texts, t -> t.words(texts), t -> asked.tones(t.choice(), t.each()));
    slurring =
        new ChoiceRule<>("rules.slurring", texts, s -> texts.get("slurring." + s), asked::slurring);
    tremolo =
        new ChoiceRule<>("rules.tremolo", texts, t -> texts.get("tremolo." + t), asked::tremolo);
    source = new ChoiceRule<>("rules.source", texts, s -> texts.get("source." + s), asked::source);
    joins = new ChoiceRule<>("rules.joins", texts, j -> texts.get("joins." + j), asked::joins);
    balance =
        new ChoiceRule<>("rules.balance", texts, b -> texts.get("balance." + b), asked::balanced);
    pedals = new ChoiceRule<>("rules.pedals", texts, p -> texts.get("pedals." + p), asked::pedals);
    none = quiet(texts.get("rules.none"));
    scroll = scrolled();
    getChildren().setAll(none, scroll);
    show(Optional.empty());
  }

  /** A rule of one figure and its unit. */
  private static <T> FigureRule<T> figure(
      String key,
      Texts texts,
      BiFunction<String, Texts, TypedValue<T>> read,
      Function<T, Optional<String>> settled) {
    List<String> around = List.of("", texts.get(key + ".unit"));
    return new FigureRule<>(key, texts, around, typed -> read.apply(typed.get(0), texts), settled);
  }

  private static Label quiet(String words) {
    Label label = new Label(words);
    label.setWrapText(true);
    label.getStyleClass().add("quiet");
    return label;
  }

  private ScrollPane scrolled() {
    VBox all =
        new VBox(
            14, favour, assurance, overlap, ready, hocket, together, tones, slurring, tremolo,
            source, joins, balance, pedals);
    all.setMinWidth(0);
    all.getStyleClass().add("rules");
    ScrollPane pane = new ScrollPane(all);
    pane.setFitToWidth(true);
    pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    pane.getStyleClass().add("flat-scroll");
    VBox.setVgrow(pane, Priority.ALWAYS);
    return pane;
  }

  /** Shows the rules in force; asks for a line where there is none. */
  public void show(Optional<RulesNow> rules) {
    none.setVisible(rules.isEmpty());
    none.setManaged(rules.isEmpty());
    scroll.setVisible(rules.isPresent());
    rules.ifPresent(this::fill);
  }

  private void fill(RulesNow now) {
    favour.show(Arrays.asList(Favour.values()), now.favour());
    overlap.show(
        List.of(
            Integer.toString(now.overlap().min()),
            now.overlap().max().stream().mapToObj(Integer::toString).findFirst().orElse("")));
    ready.show(List.of(Typed.text(now.readySeconds(), texts.locale())));
    assurance.show(List.of(Typed.text(now.assurance().percent(), texts.locale())));
    hocket.show(Arrays.asList(Hocket.values()), now.hocket());
    together.show(
        IntStream.rangeClosed(1, Relaying.MOST_TOGETHER).boxed().toList(), now.together());
    tones.show(Tones.among(now.fullest()), now.tones());
    slurring.show(Arrays.asList(Slurring.values()), now.slurring());
    tremolo.show(Arrays.asList(Tremolo.values()), now.tremolo());
    source.show(Arrays.asList(SourceTreatment.values()), now.writing().source());
    joins.show(Arrays.asList(Joins.values()), now.writing().joins());
    balance.show(List.of(false, true), now.writing().balanced());
    pedals.show(List.of(true, false), now.writing().pedals());
  }
}
