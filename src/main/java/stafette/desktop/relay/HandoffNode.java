package stafette.desktop.relay;

import java.util.OptionalInt;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import stafette.desktop.relay.RelayGestures.HandoffEnd;
import stafette.desktop.texts.Texts;
import stafette.plan.Handoff;
import stafette.time.Span;

/** What a handoff, or one end of it, is taken hold of by. */
final class HandoffNode extends Region {
  private static final double GRIP = 9;

  private final int index;
  private final HandoffEnd end;
  private final Handholds stage;
  private double grabbed;
  private OptionalInt dragged = OptionalInt.empty();

  HandoffNode(int index, HandoffEnd end, Handholds stage) {
    this.index = index;
    this.end = end;
    this.stage = stage;
    String id = "handoff-" + (index + 1);
    setId(
        switch (end) {
          case BOTH -> id;
          case ENTERS -> id + "-enters";
          case LEAVES -> id + "-leaves";
        });
    getStyleClass().addAll("handoff", end == HandoffEnd.BOTH ? "handoff-both" : "handoff-end");
    setCursor(end == HandoffEnd.BOTH ? Cursor.OPEN_HAND : Cursor.H_RESIZE);
    setViewOrder(end == HandoffEnd.BOTH ? -1 : -2);
    setManaged(false);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.SLIDER);
    focusedProperty().addListener(observed -> chosen());
    setOnMousePressed(this::press);
    setOnMouseDragged(this::drag);
    setOnMouseReleased(this::release);
    setOnKeyPressed(this::key);
    setOnContextMenuRequested(
        event -> {
          RelayMenus.ofHandoff(index, stage).show(this, event.getScreenX(), event.getScreenY());
          event.consume();
        });
  }

  private void chosen() {
    if (isFocused()) {
      stage.gestures().chosenHandoff(index);
    }
  }

  private Handoff handoff() {
    return stage.view().shown().plan().handoffs().get(index);
  }

  /** Moves to where the handoff is now. */
  void place(Texts texts) {
    View view = stage.view();
    Span span = view.shown().pieces().handoffSpan(index);
    double left = view.time().x(span.start());
    double right = view.time().x(span.end());
    double from = view.lanes().middle(handoff().leaves().segments().get(0).player());
    double to = view.lanes().middle(handoff().enters().segments().get(0).player());
    double top = Math.min(from, to) - view.lanes().half();
    double bottom = Math.max(from, to) + view.lanes().half();
    setVisible(view.sees(span) && bottom > view.time().port().ruler());
    double grip = view.time().port().px(GRIP);
    double middle = (left + right) / 2;
    switch (end) {
      case BOTH -> {
        double wide = Math.max(grip, right - left);
        resizeRelocate(middle - wide / 2, top, wide, bottom - top);
      }
      case ENTERS ->
          resizeRelocate(Math.min(left, middle - grip / 2) - grip, to - grip, grip, 2 * grip);
      case LEAVES ->
          resizeRelocate(Math.max(right, middle + grip / 2), from - grip, grip, 2 * grip);
    }
    setAccessibleText(words(texts));
  }

  private String words(Texts texts) {
    View view = stage.view();
    Handoff handoff = handoff();
    int relay = handoff.leaves().relay();
    String enters = view.place(texts, relay, handoff.enters().first());
    String leaves = view.place(texts, relay, handoff.leaves().last());
    String leaving = texts.say(view.shown().plan().who(handoff.leaves()));
    String entering = texts.say(view.shown().plan().who(handoff.enters()));
    String words =
        switch (end) {
          case BOTH -> texts.get("relay.handoff", index + 1, leaving, entering, enters, leaves);
          case ENTERS -> texts.get("relay.handoff.enters", index + 1, entering, enters);
          case LEAVES -> texts.get("relay.handoff.leaves", index + 1, leaving, leaves);
        };
    return view.shown().isLocked(handoff) ? texts.get("relay.locked", words) : words;
  }

  private void press(MouseEvent event) {
    requestFocus();
    grabbed = edgeX() - stage.x(event);
    event.consume();
  }

  private double edgeX() {
    Span span = stage.view().shown().pieces().handoffSpan(index);
    return stage.view().time().x(end == HandoffEnd.ENTERS ? span.start() : span.end());
  }

  /** Told only when another stroke is reached. */
  private void drag(MouseEvent event) {
    int stroke = strokeAt(event);
    if (event.isPrimaryButtonDown() && dragged.stream().noneMatch(before -> before == stroke)) {
      dragged = OptionalInt.of(stroke);
      move(stroke, false);
    }
    event.consume();
  }

  private void release(MouseEvent event) {
    if (dragged.isPresent()) {
      dragged = OptionalInt.empty();
      move(strokeAt(event), true);
    }
    event.consume();
  }

  private void move(int stroke, boolean done) {
    int nearest = new HandoffReach(handoff()).nearest(end, stroke);
    stage.gestures().moveHandoff(index, end, nearest, done);
  }

  private int strokeAt(MouseEvent event) {
    TimeScale time = stage.view().time();
    double quarters = time.quartersAt(stage.x(event) + grabbed);
    return event.isShiftDown()
        ? snap().beat(quarters)
        : snap().magnetic(quarters, time.magnetQuarters());
  }

  private Snap snap() {
    var line = stage.view().line(handoff().leaves().relay());
    return end == HandoffEnd.ENTERS ? Snap.toOnsets(line) : Snap.toEnds(line);
  }

  private void key(KeyEvent event) {
    switch (event.getCode()) {
      case LEFT -> step(-1, event);
      case RIGHT -> step(1, event);
      case J -> stage.gestures().join(index);
      case L -> stage.gestures().lockHandoff(index);
      case ESCAPE -> {
        dragged = OptionalInt.empty();
        stage.gestures().cancelMove();
      }
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void step(int direction, KeyEvent event) {
    int now = new HandoffReach(handoff()).stroke(end);
    move(
        event.isShiftDown() ? snap().beatFrom(now, direction) : snap().strokeFrom(now, direction),
        true);
  }
}
