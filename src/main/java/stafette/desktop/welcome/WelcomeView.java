package stafette.desktop.welcome;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import stafette.desktop.texts.Texts;

/** Says what the program is for, and offers a score: one's own, one opened before, or a sample. */
public final class WelcomeView extends VBox {
  private static final int MOST_RECENT = 5;

  private final Texts texts;
  private final WelcomeDoors doors;
  private final VBox recent = new VBox(2);

  /** The ways in. */
  public interface WelcomeDoors {
    /** Asks for a file and opens it. */
    void open();

    void open(Path file);

    /** Opens a sample of that title. */
    void sample(String title);
  }

  /**
   * @param samples their titles
   */
  public WelcomeView(Texts texts, WelcomeDoors doors, List<String> samples) {
    this.texts = texts;
    this.doors = doors;
    setId("welcome");
    getStyleClass().add("welcome");
    Label title = new Label(texts.get("welcome.title"));
    title.getStyleClass().add("welcome-title");
    Button open = new Button(texts.get("welcome.open"));
    open.setId("welcome-open");
    open.getStyleClass().add("welcome-open");
    open.setOnAction(event -> doors.open());
    VBox tries = new VBox(2, heading("welcome.samples"));
    for (String sample : samples) {
      tries.getChildren().add(sample(sample));
    }
    getChildren()
        .addAll(
            wrapped(title),
            wrapped(new Label(texts.get("welcome.job"))),
            open,
            quiet("welcome.drop"),
            tries,
            recent,
            quiet("verdict.caution"));
  }

  private Hyperlink sample(String title) {
    Hyperlink link = link(texts.get("welcome.sample", title));
    link.setId("sample-" + title.toLowerCase(Locale.ROOT).replace(' ', '-'));
    link.setOnAction(event -> doors.sample(title));
    return link;
  }

  /** Shows the files that were opened last. */
  public void show(List<Path> files) {
    recent.getChildren().clear();
    if (!files.isEmpty()) {
      recent.getChildren().add(heading("welcome.recent"));
    }
    List<String> names = RecentNames.of(files);
    for (int i = 0; i < Math.min(MOST_RECENT, files.size()); i++) {
      Path file = files.get(i);
      Hyperlink link = link(names.get(i));
      link.setTooltip(new Tooltip(file.toString()));
      link.setOnAction(event -> doors.open(file));
      recent.getChildren().add(link);
    }
  }

  private static Hyperlink link(String words) {
    Hyperlink link = new Hyperlink(words);
    link.getStyleClass().add("link");
    return link;
  }

  private Label heading(String key) {
    Label heading = new Label(texts.get(key));
    heading.getStyleClass().add("panel-title");
    return heading;
  }

  private Label quiet(String key) {
    Label label = wrapped(new Label(texts.get(key)));
    label.getStyleClass().add("quiet");
    return label;
  }

  private static Label wrapped(Label label) {
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }
}
