package stafette.desktop.relay;

import java.util.List;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.CustomMenuItem;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import stafette.desktop.texts.Texts;
import stafette.plan.Pattern;
import stafette.plan.Player;

/** What can be done to a segment or a handoff, in words. */
final class RelayMenus {
  /** Of what is said in sentences. */
  static final double WIDEST = 360;

  private RelayMenus() {}

  /**
   * For a segment.
   *
   * @param stroke before which it would be split
   */
  static ContextMenu ofSegment(int segment, int stroke, Handholds stage) {
    Texts texts = stage.texts();
    ShownPlan shown = stage.view().shown();
    boolean locked = shown.isLocked(shown.segments().get(segment));
    boolean alone = shown.segments().get(segment).pattern() == Pattern.ALL;
    ContextMenu menu =
        new ContextMenu(
            item(
                "split",
                texts.get("relay.menu.split"),
                () -> stage.gestures().split(segment, stroke)),
            item(
                "lock",
                texts.get(locked ? "relay.menu.unlock" : "relay.menu.lock"),
                () -> stage.gestures().lockSegment(segment)),
            item(
                "hocket",
                texts.get(alone ? "relay.menu.hocket" : "relay.menu.alone"),
                () -> stage.gestures().hocket(segment)));
    List<Player> players = shown.plan().brief().players();
    int own = shown.segments().get(segment).player();
    for (int i = 0; i < players.size(); i++) {
      int player = i;
      if (player != own) {
        menu.getItems()
            .add(
                item(
                    "give-" + (player + 1),
                    texts.get("relay.menu.give", players.get(player).name()),
                    () -> stage.gestures().give(segment, player)));
      }
    }
    return menu;
  }

  static ContextMenu ofHandoff(int handoff, Handholds stage) {
    Texts texts = stage.texts();
    ShownPlan shown = stage.view().shown();
    boolean locked = shown.isLocked(shown.plan().handoffs().get(handoff));
    return new ContextMenu(
        item("join", texts.get("relay.menu.join"), () -> stage.gestures().join(handoff)),
        item(
            "lock",
            texts.get(locked ? "relay.menu.unlock.handoff" : "relay.menu.lock.handoff"),
            () -> stage.gestures().lockHandoff(handoff)));
  }

  /** What does not work, and what can be done about it; of a line that is not shared, why. */
  static ContextMenu ofFaults(List<RelayFault> faults, Handholds stage) {
    Texts texts = stage.texts();
    ContextMenu menu = new ContextMenu();
    for (RelayFault fault : faults) {
      Label words = new Label(texts.say(fault.words()));
      words.setWrapText(true);
      words.setMaxWidth(stage.view().time().port().px(WIDEST));
      CustomMenuItem said = new CustomMenuItem(words, false);
      said.setId("said-" + (fault.number() + 1));
      menu.getItems().add(said);
      if (!stage.view().shown().asWritten()) {
        menu.getItems()
            .add(
                item(
                    "mend-" + (fault.number() + 1),
                    texts.get("relay.menu.mend"),
                    () -> stage.gestures().mend(fault.number())));
      }
    }
    menu.getItems().add(item("why", texts.get("relay.menu.why"), () -> stage.gestures().askWhy()));
    return menu;
  }

  private static MenuItem item(String id, String words, Runnable action) {
    MenuItem item = new MenuItem(words);
    item.setId(id);
    item.setOnAction(event -> action.run());
    return item;
  }
}
