package stafette.desktop.welcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Hyperlink;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import stafette.desktop.PanelWindow;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.Style;

@ExtendWith(ApplicationExtension.class)
class WelcomeViewTest {
  private final List<String> asked = new ArrayList<>();
  private WelcomeView view;
  private Stage stage;

  @Start
  void start(Stage shown) {
    stage = shown;
    view = new WelcomeView(Texts.in(Locale.GERMAN), new Asked(), List.of("Lantern Run"));
    PanelWindow.show(shown, view, Style.LIGHT, 760, 560);
  }

  private final class Asked implements WelcomeView.WelcomeDoors {
    @Override
    public void open() {
      asked.add("another");
    }

    @Override
    public void open(Path file) {
      asked.add(file.toString());
    }

    @Override
    public void sample(String title) {
      asked.add(title);
    }
  }

  @Test
  void a_score_a_sample_and_what_was_open_before_are_offered(FxRobot robot) {
    Path before = Path.of("folder", "night-train.mxl");
    robot.interact(() -> view.show(List.of(before)));
    robot.clickOn("#welcome-open");
    robot.clickOn("#sample-lantern-run");
    robot.clickOn("night-train.mxl");
    assertEquals(List.of("another", "Lantern Run", before.toString()), asked);
    assertTrue(PanelWindow.picture(robot, stage, "welcome").ink(0, 0, 760, 560) > 0.005);
  }

  @Test
  void only_the_latest_few_are_offered(FxRobot robot) {
    List<Path> many = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      many.add(Path.of("score-" + i + ".musicxml"));
    }
    robot.interact(() -> view.show(many));
    assertEquals(
        List.of("score-0.musicxml", "score-4.musicxml"),
        robot.lookup(".hyperlink").queryAllAs(Hyperlink.class).stream()
            .map(Hyperlink::getText)
            .filter(name -> name.matches("score-[0456]\\.musicxml"))
            .toList());
  }
}
