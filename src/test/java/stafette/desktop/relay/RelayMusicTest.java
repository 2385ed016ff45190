package stafette.desktop.relay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Locale;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import stafette.check.Judge;
import stafette.desktop.PanelWindow;
import stafette.desktop.ShownRelays;
import stafette.desktop.Snapshot;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.Style;
import stafette.picture.ink.Box;
import stafette.picture.ink.Mark;
import stafette.plan.Plan;
import stafette.time.Position;
import stafette.time.Span;

/** Pictures of the relay, with notes within the ribbon where there is room. */
@ExtendWith(ApplicationExtension.class)
class RelayMusicTest {
  private static final Plan WIDE = ShownRelays.wide();

  private Stage stage;
  private RelayView relay;

  @Start
  void start(Stage shown) {
    stage = shown;
    relay = RelayWindow.open(stage, new ArrayList<>(), ShownRelays.plan());
  }

  private Snapshot picture(FxRobot robot, String name) {
    return PanelWindow.picture(robot, stage, name);
  }

  private void zoomTo(FxRobot robot, int quarter, double factor) {
    Position at = Position.ofQuarters(quarter, 1);
    robot.interact(() -> relay.zoom(factor));
    robot.interact(() -> relay.reveal(new Span(at, Position.ofQuarters(quarter + 1, 1))));
  }

  @Test
  void the_picture_has_ink_where_somebody_plays_and_none_where_nobody_does(FxRobot robot) {
    Snapshot seen = picture(robot, "relay-light");
    int middle = (int) RelayWindow.whole(ShownRelays.plan()).lanes().middle(0);
    assertTrue(seen.ink(150, middle - 8, 200, 16) > 0.1);
    assertFalse(seen.ink(420, middle - 8, 180, 16) > 0.08);
    robot.interact(() -> Style.DARK.applyTo(relay.getScene()));
    assertTrue(picture(robot, "relay-dark").ink(150, middle - 8, 200, 16) > 0.1);
  }

  @Test
  void notes_stand_within_the_ribbon_where_there_is_room(FxRobot robot) {
    double plain = robot.lookup("#segment-1").query().getBoundsInParent().getHeight();
    zoomTo(robot, 0, 6);
    Snapshot seen = picture(robot, "relay-notes-start");
    double noted = robot.lookup("#segment-1").query().getBoundsInParent().getHeight();
    assertTrue(noted > 2 * plain, plain + " " + noted);
    zoomTo(robot, 16, 1);
    picture(robot, "relay-notes");
    double middle = robot.lookup("#segment-1").query().getBoundsInParent().getCenterY();
    assertTrue(seen.ink(180, (int) middle - 20, 600, 40) > 0.05);
  }

  @Test
  void wide_music_is_shown_with_its_keys_in_light_and_dark(FxRobot robot) {
    robot.interact(() -> relay.show(WIDE, Judge.judge(WIDE)));
    robot.interact(() -> stage.setHeight(720));
    zoomTo(robot, 0, 8);
    picture(robot, "relay-wide-start");
    zoomTo(robot, 9, 1);
    Snapshot scrolled = picture(robot, "relay-wide-scrolled");
    double middle = robot.lookup("#segment-3").query().getBoundsInParent().getCenterY();
    assertTrue(scrolled.ink(134, (int) middle - 20, 40, 40) > 0.05);
    zoomTo(robot, 22, 1);
    robot.interact(() -> Style.DARK.applyTo(relay.getScene()));
    picture(robot, "relay-wide-dark");
  }

  @Test
  void notes_stay_within_the_ribbon_wherever_it_is_scrolled() {
    ShownPlan shown = ShownPlan.of(WIDE, Judge.judge(WIDE), Texts.in(Locale.ENGLISH));
    View view = View.first(shown, new Viewport(900, 600, 1));
    view = view.with(view.time().zoomed(8, 0));
    assertTrue(view.lanes().shape().isNoted());
    for (int player = 0; player < 3; player++) {
      Box reach =
          shown.pieces().barsOfNotes(player).stream()
              .map(shown.pieces()::reach)
              .reduce(Box::with)
              .orElseThrow();
      for (int quarter = 0; quarter < 32; quarter += 2) {
        TimeScale time = view.time().scrolledTo(quarter);
        for (Mark mark : shown.pieces().notes(player, time.row(shown.bars()), 0)) {
          assertTrue(mark.bounds().top() > reach.top() - 6, player + " " + quarter + " " + mark);
          assertTrue(mark.bounds().bottom() < reach.bottom() + 6, player + " " + quarter);
        }
      }
    }
  }

  @Test
  void the_clef_stays_the_same_all_along_a_players_part() {
    ShownPlan shown = ShownPlan.of(WIDE, Judge.judge(WIDE), Texts.in(Locale.ENGLISH));
    assertEquals(
        shown.pieces().clefAndKey(2, shown.bars().get(0), 0, 0).size(),
        shown.pieces().clefAndKey(2, shown.bars().get(3), 0, 0).size());
  }
}
