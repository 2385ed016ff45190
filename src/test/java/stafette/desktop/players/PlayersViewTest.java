package stafette.desktop.players;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import stafette.Invented;
import stafette.desktop.PanelWindow;
import stafette.desktop.texts.Texts;
import stafette.desktop.window.Style;
import stafette.limits.Saying;
import stafette.plan.Player;
import stafette.plan.Seat;
import stafette.words.Refusal;

/** The players in a window. */
@ExtendWith(ApplicationExtension.class)
class PlayersViewTest {
  private final List<String> done = new ArrayList<>();
  private Stage stage;
  private PlayersView view;

  private final class Heard implements PlayerGestures {
    @Override
    public void add(String name) {
      done.add("add " + name);
    }

    @Override
    public boolean isTold(String name) {
      return !name.equals("Anna");
    }

    @Override
    public void remove(String name) {
      done.add("remove " + name);
    }

    @Override
    public void move(String name, int places) {
      done.add("move " + name + " " + places);
    }

    @Override
    public void plays(String name, String instrument) {
      done.add(name + " plays " + instrument);
    }

    @Override
    public void lock(String name, boolean kept) {
      done.add("lock " + name + " " + kept);
    }

    @Override
    public void countOther(String name, boolean counts) {
      done.add("other " + name + " " + counts);
    }

    @Override
    public void allow(String name, String technique, boolean allowed) {
      done.add("allow " + name + " " + technique + " " + allowed);
    }

    @Override
    public void sit(String name, Optional<Seat> seat) {
      done.add("seat " + name + " " + seat.map(Seat::acrossMetres).orElse(0.0));
    }

    @Override
    public void measured(String name, String technique, double peak, double lasting, double notes) {
      done.add(name + " " + technique + " " + peak + " " + lasting + " " + notes);
    }

    @Override
    public void says(String name, String technique, Optional<Saying> saying) {
      done.add(name + " says " + technique + " " + saying.map(Saying::text).orElse("nothing"));
    }
  }

  @Start
  void start(Stage window) {
    stage = window;
    show(Locale.ENGLISH, Style.LIGHT);
  }

  private void show(Locale locale, Style style) {
    view = new PlayersView(Texts.in(locale), new Heard());
    view.offer(List.of("Oboe 1"), List.of("flute", "oboe"));
    PanelWindow.show(stage, view, style, 290, 620);
    view.show(List.of(entry("Flute 1", true), entry("Flute 2", false)));
  }

  private static PlayerEntry entry(String name, boolean locked) {
    return entry(name, locked, Map.of());
  }

  private static PlayerEntry entry(String name, boolean locked, Map<String, Saying> said) {
    Player player = Invented.player(name, Invented.instrument("flute"), 10.5, 8, 20, 8);
    return new PlayerEntry(
        name,
        Optional.of("flute"),
        player.skills(),
        said,
        List.of(new PlayerEntry.Extra("double tonguing", false)),
        locked,
        true,
        true,
        Optional.of(new Seat(-1.5, 3)),
        2);
  }

  private static PlayerEntry unknown(String name) {
    return new PlayerEntry(
        name,
        Optional.empty(),
        List.of(),
        Map.of(),
        List.of(),
        false,
        false,
        false,
        Optional.empty(),
        0);
  }

  private static void open(FxRobot robot, int player) {
    robot.interact(
        () -> robot.lookup("#player-" + player).queryAs(TitledPane.class).setExpanded(true));
  }

  @Test
  void a_typed_name_is_added_with_the_enter_key(FxRobot robot) {
    robot.clickOn("#player-name").write("Oboe 2").push(KeyCode.ENTER);
    assertEquals(List.of("add Oboe 2"), done);
  }

  @Test
  void a_measured_figure_counts_when_its_field_is_left(FxRobot robot) {
    open(robot, 1);
    TextField peak = robot.lookup("#player-1-peak-1").queryAs(TextField.class);
    robot.interact(peak::requestFocus);
    robot.interact(() -> peak.setText("11,5"));
    robot.push(KeyCode.TAB);
    assertEquals(List.of("Flute 1 tonguing 11.5 8.0 20.0"), done);
  }

  @Test
  void what_is_no_figure_changes_nothing(FxRobot robot) {
    open(robot, 1);
    TextField stamina = robot.lookup("#player-1-stamina-1").queryAs(TextField.class);
    robot.interact(stamina::requestFocus);
    robot.interact(() -> stamina.setText("much"));
    robot.push(KeyCode.ENTER);
    assertEquals(List.of(), done);
    assertTrue(
        stamina.getPseudoClassStates().stream()
            .anyMatch(s -> s.getPseudoClassName().equals("none")));
  }

  private void say(FxRobot robot, String words) {
    TextField says = robot.lookup("#player-1-says-1").queryAs(TextField.class);
    robot.interact(says::requestFocus);
    robot.interact(() -> says.setText(words));
    robot.push(KeyCode.ENTER);
  }

  @Test
  void what_a_player_manages_can_be_said_in_words(FxRobot robot) throws Refusal {
    open(robot, 1);
    say(robot, "sixteenths at 132 for 4 bars");
    assertEquals(List.of("Flute 1 says tonguing sixteenths at 132 for 4 bars"), done);
    Saying said = Saying.parse("sixteenths at 132 for 4 bars");
    robot.interact(
        () ->
            view.show(
                List.of(
                    entry("Flute 1", false, Map.of("tonguing", said)), entry("Flute 2", false))));
    assertEquals(
        "sixteenths at 132 for 4 bars",
        robot.lookup("#player-1-says-1").queryAs(TextField.class).getText());
    assertEquals(
        "So 10.5 a second for a moment and 8 for long. What else the same tongue, bow or hand does"
            + " moves with it.",
        robot.lookup("#player-1-says-1-answer").queryAs(Label.class).getText());
    PanelWindow.picture(robot, stage, "players-said");
    say(robot, "sixteenths for 4 bars");
    say(robot, "sixteenths at 132 for 4 bars");
    assertEquals(1, done.size(), "nothing new was said");
    say(robot, " ");
    assertEquals("Flute 1 says tonguing nothing", done.get(1));
  }

  @Test
  void what_is_missing_from_a_saying_is_told_beside_it(FxRobot robot) {
    robot.interact(() -> show(Locale.GERMAN, Style.LIGHT));
    open(robot, 1);
    say(robot, "Sechzehntel, 4 Takte lang");
    assertEquals(List.of(), done);
    assertEquals(
        "das Tempo sagen, etwa „Sechzehntel bei 132, 4 Takte lang“",
        robot.lookup("#player-1-says-1-answer").queryAs(Label.class).getText());
    PanelWindow.picture(robot, stage, "players-unsaid");
  }

  @Test
  void players_are_locked_freed_allowed_a_technique_moved_and_removed(FxRobot robot) {
    open(robot, 1);
    robot.interact(() -> robot.lookup("#player-1-lock").queryAs(CheckBox.class).fire());
    robot.interact(() -> robot.lookup("#player-1-other").queryAs(CheckBox.class).fire());
    robot.interact(() -> robot.lookup("#player-1-extra-1").queryAs(CheckBox.class).fire());
    robot.interact(() -> robot.lookup("#player-1-down").queryButton().fire());
    robot.interact(() -> robot.lookup("#player-1-remove").queryButton().fire());
    assertEquals(
        List.of(
            "lock Flute 1 false",
            "other Flute 1 false",
            "allow Flute 1 double tonguing true",
            "move Flute 1 1",
            "remove Flute 1"),
        done);
    assertTrue(robot.lookup("#player-1-up").queryButton().isDisabled());
  }

  @Test
  void an_unfamiliar_name_is_asked_about_once(FxRobot robot) {
    List<PlayerEntry> three =
        List.of(entry("Flute 1", true), entry("Flute 2", false), unknown("Bright voice"));
    robot.interact(() -> view.show(three));
    TitledPane asked = robot.lookup("#player-3").queryAs(TitledPane.class);
    assertTrue(asked.isExpanded());
    PanelWindow.picture(robot, stage, "players-asked");
    robot.interact(
        () ->
            robot
                .lookup("#player-3-instrument")
                .queryAs(ComboBox.class)
                .getSelectionModel()
                .select(1));
    assertEquals(List.of("Bright voice plays oboe"), done);
    robot.interact(() -> asked.setExpanded(false));
    robot.interact(() -> view.show(List.of(entry("Flute 1", false), three.get(1), three.get(2))));
    assertTrue(!robot.lookup("#player-3").queryAs(TitledPane.class).isExpanded());
  }

  @Test
  void whoever_is_open_stays_open_in_another_place(FxRobot robot) {
    open(robot, 1);
    robot.interact(() -> robot.lookup("#player-1-down").query().requestFocus());
    robot.interact(
        () ->
            view.show(
                List.of(entry("Flute 2", false), entry("Flute 1", true), entry("Flute 3", false))));
    assertTrue(robot.lookup("#player-2").queryAs(TitledPane.class).isExpanded());
    assertTrue(robot.lookup("#player-2-down").query().isFocused(), "it keeps the keyboard");
  }

  @Test
  void whoever_has_a_name_of_their_own_is_asked_about_once(FxRobot robot) {
    robot.clickOn("#player-name").write("Anna").type(KeyCode.ENTER);
    assertEquals(List.of(), done);
    ComboBox<String> asked = robot.lookup("#player-asked").queryComboBox();
    assertTrue(asked.isVisible());
    assertEquals("Which instrument does Anna play?", asked.getAccessibleText());
    robot.interact(() -> asked.setValue("oboe"));
    assertEquals(List.of("Anna plays oboe"), done);
    robot.clickOn("#player-name").write("Ben=flute").type(KeyCode.ENTER);
    assertEquals(List.of("Anna plays oboe", "Ben plays flute"), done);
  }

  @Test
  void without_a_line_nobody_can_be_added(FxRobot robot) {
    robot.interact(() -> view.show(List.of()));
    assertTrue(robot.lookup("#player-add").query().isDisabled());
  }

  @Test
  void it_is_seen_in_both_styles(FxRobot robot) {
    open(robot, 1);
    assertTrue(PanelWindow.picture(robot, stage, "players-light").ink(0, 0, 290, 620) > 0.01);
    robot.interact(() -> show(Locale.GERMAN, Style.DARK));
    open(robot, 1);
    assertTrue(PanelWindow.picture(robot, stage, "players-dark").ink(0, 0, 290, 620) > 0.01);
  }
}
