package stafette.desktop.players;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Accordion;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stafette.desktop.texts.Texts;

/** The players: one line for each, that opens into what is settled about it. */
public final class PlayersView extends VBox {
  private final Texts texts;
  private final PlayerGestures gestures;
  private final ComboBox<String> name = new ComboBox<>();
  private final Button add = new Button();
  private final InstrumentQuestion asked;
  private final Accordion list = new Accordion();
  private List<String> instruments = List.of();
  private List<PlayerEntry> shown = List.of();

  public PlayersView(Texts texts, PlayerGestures gestures) {
    this.texts = texts;
    this.gestures = gestures;
    setId("players");
    getStyleClass().add("panel");
    Label title = new Label(texts.get("players.add.label"));
    title.setLabelFor(name);
    name.setId("player-name");
    name.setEditable(true);
    name.setMaxWidth(Double.MAX_VALUE);
    name.setPromptText(texts.get("players.add.prompt"));
    name.setAccessibleText(texts.get("players.add.label"));
    HBox.setHgrow(name, Priority.ALWAYS);
    name.addEventFilter(KeyEvent.KEY_PRESSED, this::enter);
    asked = new InstrumentQuestion(texts, gestures::plays);
    add.setText(texts.get("players.add"));
    add.setId("player-add");
    add.setMinWidth(Region.USE_PREF_SIZE);
    add.setOnAction(event -> add());
    ScrollPane scroll = new ScrollPane(list);
    list.setMinWidth(0);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("flat-scroll");
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(title, new HBox(6, name, add), asked, scroll);
  }

  /** While the list is open, the key chooses from it. */
  private void enter(KeyEvent event) {
    if (event.getCode() == KeyCode.ENTER && !name.isShowing()) {
      event.consume();
      add();
    }
  }

  /** A name, or a name, an equals sign and what it plays; asks where neither tells. */
  private void add() {
    String typed = name.getEditor().getText().strip();
    String player = typed.replaceFirst("=.*", "").strip();
    if (player.isEmpty()) {
      return;
    }
    name.getEditor().clear();
    if (!player.equals(typed)) {
      gestures.plays(player, instrument(typed.substring(typed.indexOf('=') + 1).strip()));
    } else if (gestures.isTold(player)) {
      gestures.add(player);
    } else {
      asked.ask(player, instruments);
    }
  }

  /** By its name in the user's language or in the tables. */
  private String instrument(String typed) {
    return instruments.stream()
        .filter(known -> texts.name(known).equalsIgnoreCase(typed))
        .findFirst()
        .orElse(typed);
  }

  /**
   * What can be chosen from.
   *
   * @param parts the score's own
   * @param all names of instruments
   */
  public void offer(List<String> parts, List<String> all) {
    name.getItems().setAll(parts);
    instruments = List.copyOf(all);
  }

  /**
   * Shows the players, first the one preferred. Whoever is open stays open; a player whose
   * instrument is not known opens by itself the first time.
   */
  public void show(List<PlayerEntry> entries) {
    add.setDisable(entries.isEmpty());
    name.setDisable(entries.isEmpty());
    if (entries.equals(shown)) {
      return;
    }
    String open = opened(entries);
    Optional<Held> held = held();
    shown = List.copyOf(entries);
    List<TitledPane> panes = new ArrayList<>();
    for (int i = 0; i < shown.size(); i++) {
      panes.add(pane(i));
    }
    list.getPanes().setAll(panes);
    for (int i = 0; i < shown.size(); i++) {
      if (shown.get(i).name().equals(open)) {
        list.setExpandedPane(panes.get(i));
      }
    }
    held.ifPresent(this::giveBack);
  }

  private String opened(List<PlayerEntry> entries) {
    Optional<String> asked =
        entries.stream()
            .filter(entry -> entry.instrument().isEmpty())
            .map(PlayerEntry::name)
            .filter(entry -> shown.stream().noneMatch(before -> before.name().equals(entry)))
            .findFirst();
    TitledPane pane = list.getExpandedPane();
    return asked.orElse(pane == null ? "" : shown.get(list.getPanes().indexOf(pane)).name());
  }

  /**
   * The control here that has the keyboard.
   *
   * @param what the end of its id
   */
  private record Held(String player, String what) {}

  private Optional<Held> held() {
    Scene scene = getScene();
    Node owner = scene == null ? null : scene.getFocusOwner();
    String id = owner == null || owner.getId() == null ? "" : owner.getId();
    for (int i = 0; i < shown.size(); i++) {
      if (id.startsWith(id(i) + "-")) {
        return Optional.of(new Held(shown.get(i).name(), id.substring(id(i).length())));
      }
    }
    return Optional.empty();
  }

  /** Gives the keyboard to the same control of the same player, wherever it is now. */
  private void giveBack(Held held) {
    list.applyCss();
    list.layout();
    for (int i = 0; i < shown.size(); i++) {
      Node control = list.lookup("#" + id(i) + held.what());
      if (shown.get(i).name().equals(held.player()) && control != null) {
        control.requestFocus();
      }
    }
  }

  private static String id(int place) {
    return "player-" + (place + 1);
  }

  private TitledPane pane(int place) {
    PlayerEntry entry = shown.get(place);
    String id = id(place);
    TitledPane pane = new TitledPane();
    pane.setContent(new PlayerForm(entry, id, place, shown.size(), instruments, texts, gestures));
    pane.setGraphic(heading(entry));
    pane.setAccessibleText(entry.name() + ", " + about(entry));
    pane.setId(id);
    pane.setMinWidth(0);
    pane.setAnimated(false);
    pane.getStyleClass().add("player");
    if (entry.instrument().isEmpty()) {
      pane.getStyleClass().add("asked");
    }
    return pane;
  }

  private VBox heading(PlayerEntry entry) {
    Label player = new Label(entry.name());
    player.getStyleClass().add("panel-title");
    Label about = new Label(about(entry));
    about.getStyleClass().add("quiet");
    return new VBox(player, about);
  }

  private String about(PlayerEntry entry) {
    String instrument =
        entry.instrument().map(texts::name).orElseGet(() -> texts.get("players.unknown"));
    String words = texts.get("players.about", instrument, entry.segments());
    return entry.locked() ? texts.get("players.locked", words) : words;
  }
}
