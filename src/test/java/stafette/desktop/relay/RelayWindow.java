package stafette.desktop.relay;

import java.util.List;
import java.util.Locale;
import javafx.stage.Stage;
import stafette.check.Judge;
import stafette.desktop.PanelWindow;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.Style;
import stafette.plan.Plan;

/** A relay alone in a window. */
final class RelayWindow {
  static final int WIDTH = 1100;
  static final int HEIGHT = 420;

  private RelayWindow() {}

  /** With type as it usually is. */
  static RelayView open(Stage stage, List<String> told, Plan plan) {
    return open(stage, told, plan, Viewport.USUAL_TYPE);
  }

  static RelayView open(Stage stage, List<String> told, Plan plan, double typePixels) {
    RelayView relay = new RelayView(Texts.in(Locale.ENGLISH), new Told(told), typePixels);
    relay.show(plan, Judge.judge(plan));
    PanelWindow.show(stage, relay, Style.LIGHT, WIDTH, HEIGHT);
    return relay;
  }

  /** All of a plan as such a window shows it at first. */
  static View whole(Plan plan) {
    Viewport port = new Viewport(1, 1, 1);
    double width = WIDTH - LaneNames.width(port) - Scrolls.thickness(port);
    double height = HEIGHT - Scrolls.thickness(port);
    return View.first(
        ShownPlan.of(plan, Judge.judge(plan), Texts.in(Locale.ENGLISH)), port.sized(width, height));
  }
}
