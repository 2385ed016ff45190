package stafette.desktop.players;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Accordion;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import stafette.desktop.texts.Texts;

/** The players: one line for each, that opens into what is settled about it. */
public final class PlayersView extends VBox {
  private final Texts texts;
  private final PlayerGestures gestures;
  private final ComboBox<String> name = new ComboBox<>();
  private final Accordion list = new Accordion();
  private List<String> instruments = List.of();
  private List<Entry> shown = List.of();

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
    name.getEditor().setOnAction(event -> add());
    Button add = new Button(texts.get("players.add"));
    add.setId("player-add");
    add.setOnAction(event -> add());
    ScrollPane scroll = new ScrollPane(list);
    scroll.setFitToWidth(true);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(title, new HBox(6, name, add), scroll);
  }

  private void add() {
    String typed = name.getEditor().getText().strip();
    if (!typed.isEmpty()) {
      name.getEditor().clear();
      gestures.add(typed);
    }
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

  /** Shows the players, first the one preferred; whichever is open stays open. */
  public void show(List<Entry> entries) {
    if (entries.equals(shown)) {
      return;
    }
    shown = List.copyOf(entries);
    String open = list.getExpandedPane() == null ? "" : list.getExpandedPane().getId();
    List<TitledPane> panes = new ArrayList<>();
    for (Entry entry : entries) {
      TitledPane pane =
          new TitledPane(title(entry), new PlayerForm(entry, instruments, texts, gestures));
      pane.setId("player-" + (panes.size() + 1));
      panes.add(pane);
    }
    list.getPanes().setAll(panes);
    panes.stream().filter(pane -> pane.getId().equals(open)).forEach(list::setExpandedPane);
  }

  private String title(Entry entry) {
    String instrument = entry.instrument().orElseGet(() -> texts.get("players.unknown"));
    String words = texts.get("players.title", entry.name(), instrument, entry.segments());
    return entry.locked() ? texts.get("players.locked", words) : words;
  }
}
