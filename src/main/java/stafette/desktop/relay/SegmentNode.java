package stafette.desktop.relay;

import java.util.OptionalInt;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import stafette.check.ShownTechnique;
import stafette.desktop.texts.Texts;
import stafette.plan.Segment;
import stafette.time.Span;

/** What a segment is taken hold of by. */
final class SegmentNode extends Region {
  private static final double DRAG_FROM = 6;

  private final int index;
  private final Handholds stage;
  private double pressedY;
  private boolean dragging;

  SegmentNode(int index, Handholds stage) {
    this.index = index;
    this.stage = stage;
    setId("segment-" + (index + 1));
    getStyleClass().add("segment");
    setCursor(Cursor.HAND);
    setManaged(false);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    setOnMousePressed(this::press);
    setOnMouseDragged(this::drag);
    setOnMouseReleased(this::release);
    setOnKeyPressed(this::key);
    setOnContextMenuRequested(this::menu);
    focusedProperty()
        .addListener(
            (observed, before, now) -> {
              if (now) {
                stage.gestures().chosen(index);
              }
            });
  }

  private Segment segment() {
    return stage.view().shown().segments().get(index);
  }

  /** Moves to where the segment is now. */
  void place(Texts texts) {
    View view = stage.view();
    Span span = view.shown().pieces().segmentSpan(index);
    double left = view.time().x(span.start());
    double half = view.lanes().half() + 2;
    double middle = view.lanes().middle(segment().player());
    setVisible(view.sees(span) && middle + half > view.time().port().ruler());
    resizeRelocate(left, middle - half, view.time().x(span.end()) - left, 2 * half);
    setAccessibleText(words(texts));
  }

  private String words(Texts texts) {
    View view = stage.view();
    Segment segment = segment();
    String words =
        texts.get(
            "relay.segment",
            index + 1,
            view.shown().plan().player(segment).name(),
            texts.say(ShownTechnique.inWords(view.shown().plan(), segment)),
            view.place(texts, segment.relay(), segment.first()),
            view.place(texts, segment.relay(), segment.last()),
            texts.percent(view.shown().strain(index)));
    if (view.shown().isLocked(segment)) {
      return texts.get("relay.locked", words);
    }
    return view.shown().isPartlyLocked(segment) ? texts.get("relay.locked.part", words) : words;
  }

  private void press(MouseEvent event) {
    requestFocus();
    pressedY = stage.y(event);
    event.consume();
  }

  private void drag(MouseEvent event) {
    if (event.isPrimaryButtonDown()
        && (dragging || Math.abs(stage.y(event) - pressedY) > DRAG_FROM)) {
      dragging = true;
      target(event).ifPresentOrElse(lane -> stage.ghost(index, lane), stage::noGhost);
    }
    event.consume();
  }

  private OptionalInt target(MouseEvent event) {
    return stage.view().lanes().laneAt(stage.y(event));
  }

  private void release(MouseEvent event) {
    if (dragging) {
      dragging = false;
      stage.noGhost();
      target(event).ifPresent(this::give);
    }
    event.consume();
  }

  private void give(int player) {
    boolean exists = player >= 0 && player < stage.view().shown().lanes();
    if (exists && player != segment().player()) {
      stage.gestures().give(index, player);
    }
  }

  private void menu(ContextMenuEvent event) {
    double quarters = stage.view().time().quartersAt(getLayoutX() + event.getX());
    RelayMenus.ofSegment(index, splitNear(quarters), stage)
        .show(this, event.getScreenX(), event.getScreenY());
    event.consume();
  }

  /** The stroke before which to split; neither the first nor the last if there are others. */
  private int splitNear(double quarters) {
    Segment segment = segment();
    int stroke = Snap.toOnsets(stage.view().line(segment.relay())).stroke(quarters);
    return Math.max(segment.first() + 1, Math.min(segment.last() - 1, stroke));
  }

  private void key(KeyEvent event) {
    switch (event.getCode()) {
      case UP -> give(segment().player() - 1);
      case DOWN -> give(segment().player() + 1);
      case S -> stage.gestures().split(index, middle());
      case L -> stage.gestures().lockSegment(index);
      case H -> stage.gestures().hocket(index);
      case ESCAPE -> {
        dragging = false;
        stage.noGhost();
      }
      default -> {
        return;
      }
    }
    event.consume();
  }

  private int middle() {
    Span span = stage.view().shown().pieces().segmentSpan(index);
    double quarters = (span.start().quarters().toDouble() + span.end().quarters().toDouble()) / 2;
    int beat = Snap.toOnsets(stage.view().line(segment().relay())).beat(quarters);
    return beat > segment().first() && beat < segment().last() ? beat : splitNear(quarters);
  }
}
