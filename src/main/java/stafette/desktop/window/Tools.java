package stafette.desktop.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.control.Tooltip;
import stafette.desktop.texts.Texts;
import stafette.desktop.welcome.RecentNames;

/** What stands above the panels: opening, planning, undoing, comparing, writing. */
final class Tools {
  private final Texts texts;
  private final Actions actions;
  private final MenuButton open;
  private final Button plan;
  private final Button stop;
  private final Button undo;
  private final Button redo;
  private final Button compare;
  private final Button write;
  private final MenuButton more;
  private final ProgressIndicator turning = new ProgressIndicator();
  private Optional<Path> score = Optional.empty();

  /** What the tools do. */
  interface Actions {
    void open();

    void open(Path file);

    List<Path> recent();

    void plan();

    void stop();

    void undo();

    void redo();

    void compare();

    void write();

    void savePlan();

    void export(Export what);

    boolean isDark();

    void dark(boolean now);
  }

  /** What else can be made of a plan. */
  enum Export {
    TIMELINE("-timeline.pdf"),
    SHEET("-sheet.pdf"),
    SOUND(".wav");

    private final String ending;

    Export(String ending) {
      this.ending = ending;
    }

    String ending() {
      return ending;
    }
  }

  Tools(Texts texts, Actions actions) {
    this.texts = texts;
    this.actions = actions;
    open = new MenuButton(texts.get("tools.open"));
    open.setId("tool-open");
    open.setOnShowing(event -> fillRecent());
    plan = button("tools.plan", actions::plan);
    stop = button("tools.stop", actions::stop);
    undo = button("tools.undo", actions::undo);
    redo = button("tools.redo", actions::redo);
    compare = button("tools.compare", actions::compare);
    write = button("tools.write", actions::write);
    more = more();
    turning.setMaxSize(18, 18);
    turning.setId("turning");
    fillRecent();
    busy(false);
  }

  private Button button(String key, Runnable action) {
    Button button = new Button(texts.get(key));
    button.setId(id(key));
    button.setTooltip(new Tooltip(texts.get(key + ".long")));
    button.setAccessibleText(texts.get(key + ".long"));
    button.setOnAction(event -> action.run());
    return button;
  }

  private MenuButton more() {
    MenuButton menu = new MenuButton(texts.get("tools.more"));
    menu.setId("tool-more");
    menu.getItems().add(item("tools.save", actions::savePlan));
    for (Export export : Export.values()) {
      menu.getItems().add(item("tools.export." + export, () -> actions.export(export)));
    }
    CheckMenuItem dark = new CheckMenuItem(texts.get("tools.dark"));
    dark.setId("tool-dark");
    dark.setSelected(actions.isDark());
    dark.setOnAction(event -> actions.dark(dark.isSelected()));
    menu.getItems().add(dark);
    return menu;
  }

  private static String id(String key) {
    return key.replaceFirst("tools\\.(export\\.)?", "tool-");
  }

  private MenuItem item(String key, Runnable action) {
    MenuItem item = new MenuItem(texts.get(key));
    item.setId(id(key));
    item.setOnAction(event -> action.run());
    return item;
  }

  private void fillRecent() {
    List<MenuItem> items = new ArrayList<>();
    items.add(item("tools.open.other", actions::open));
    List<Path> files = actions.recent();
    List<String> names = RecentNames.of(files);
    for (int i = 0; i < files.size(); i++) {
      Path file = files.get(i);
      MenuItem recent = new MenuItem(names.get(i));
      recent.setMnemonicParsing(false);
      recent.setOnAction(event -> actions.open(file));
      items.add(recent);
    }
    open.getItems().setAll(items);
  }

  List<Node> nodes() {
    return List.of(open, plan, stop, undo, redo, compare, write, more, turning);
  }

  /** Something that takes long goes on, or doesn't. */
  void busy(boolean now) {
    turning.setVisible(now);
    stop.setDisable(!now);
  }

  /** Which score is open. */
  void named(Path file) {
    score = Optional.of(file);
  }

  /** A name for a file made from the score that is open, beside it. */
  Path proposed(String ending) {
    Path beside = score.orElse(Path.of("score"));
    String name = beside.getFileName().toString().replaceFirst("\\.(musicxml|xml|mxl)$", "");
    return beside.resolveSibling(name + ending);
  }

  /** Which tools make sense now. */
  void allow(Allowed now) {
    plan.setDisable(!now.line());
    compare.setDisable(!now.plan());
    write.setDisable(!now.plan());
    undo.setDisable(!now.undo());
    redo.setDisable(!now.redo());
  }

  /** What there is. */
  record Allowed(boolean line, boolean plan, boolean undo, boolean redo) {}
}
