package stafette.desktop.tempo;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.text.TextAlignment;
import stafette.check.TempoWindow;
import stafette.desktop.texts.Texts;
import stafette.time.Rational;
import stafette.time.TempoMark;

/** The tempo rule: a strip with the plan's window on it and the present tempo as a handle. */
public final class TempoRule extends Region {
  private static final double TRACK_Y = 36;
  private static final double TRACK = 8;
  private static final double WORDS_Y = TRACK_Y + 22;
  private static final double GRIP = 14;
  private static final double SIDE = 16;

  private final Texts texts;
  private final Moved moved;
  private final Region track = new Region();
  private final Region window = new Region();
  private final Region now = new Region();
  private final Label mark = new Label();
  private final Label slowest = new Label();
  private final Label fastest = new Label();
  private Optional<ShownTempo> shown = Optional.empty();
  private boolean dragging;

  /** Told while the tempo is moved and when it is let go. */
  public interface Moved {
    /**
     * Another tempo.
     *
     * @param done false while dragging
     */
    void to(TempoMark tempo, boolean done);
  }

  private record ShownTempo(TempoMark present, Optional<TempoWindow> window, TempoScale scale) {
    double perMinute() {
      return present.perMinute().toDouble();
    }
  }

  public TempoRule(Texts texts, Moved moved) {
    this.texts = texts;
    this.moved = moved;
    setId("tempo-rule");
    getStyleClass().add("tempo-rule");
    track.getStyleClass().add("tempo-track");
    window.getStyleClass().add("tempo-window");
    window.setId("tempo-window");
    now.getStyleClass().add("tempo-now");
    now.setId("tempo-now");
    now.setCursor(Cursor.H_RESIZE);
    now.setFocusTraversable(true);
    now.setAccessibleRole(AccessibleRole.SLIDER);
    mark.getStyleClass().add("panel-title");
    mark.setId("tempo-mark");
    slowest.getStyleClass().add("quiet");
    fastest.getStyleClass().add("quiet");
    slowest.setWrapText(true);
    fastest.setWrapText(true);
    fastest.setTextAlignment(TextAlignment.RIGHT);
    fastest.setAlignment(Pos.TOP_RIGHT);
    slowest.setAlignment(Pos.TOP_LEFT);
    slowest.setId("tempo-slowest");
    fastest.setId("tempo-fastest");
    getChildren().addAll(track, window, now, mark, slowest, fastest);
    now.setOnMousePressed(event -> now.requestFocus());
    now.setOnMouseDragged(this::drag);
    now.setOnMouseReleased(this::release);
    now.setOnKeyPressed(this::key);
    track.setOnMouseClicked(event -> move(event, true));
    window.setOnMouseClicked(event -> move(event, true));
  }

  /**
   * Shows a plan's tempo.
   *
   * @param present the mark at the line's start
   * @param holds between which tempi the plan holds; empty if it doesn't now
   */
  public void show(TempoMark present, Optional<TempoWindow> holds) {
    show(present, holds, texts.get("tempo.fails"));
  }

  /** Shows the tempo where there is no plan yet. */
  public void show(TempoMark present) {
    show(present, Optional.empty(), "");
  }

  private void show(TempoMark present, Optional<TempoWindow> holds, String otherwise) {
    double perMinute = present.perMinute().toDouble();
    double from = holds.map(w -> w.slowestFactor() * perMinute).orElse(0.0);
    double to = holds.map(w -> w.fastestFactor() * perMinute).orElse(0.0);
    double width = Math.max(1, getWidth() - 2 * SIDE);
    TempoScale scale =
        shown
            .map(ShownTempo::scale)
            .filter(before -> dragging || before.hasRoomFor(perMinute, from, to))
            .orElseGet(() -> TempoScale.around(perMinute, from, to, width));
    shown = Optional.of(new ShownTempo(present, holds, scale));
    mark.setText(texts.say(present));
    slowest.setText(holds.map(this::slowEnd).orElse(otherwise));
    fastest.setText(holds.map(this::fastEnd).orElse(""));
    now.setAccessibleText(
        Stream.of(texts.get("tempo.now", mark.getText()), slowest.getText(), fastest.getText())
            .filter(words -> !words.isEmpty())
            .collect(Collectors.joining(", ")));
    requestLayout();
  }

  private String slowEnd(TempoWindow holds) {
    return holds.slowestFactor() == 0
        ? texts.get("tempo.any.slower")
        : texts.get(
            "tempo.slowest", texts.say(holds.slowestText()), texts.say(holds.slowestLimit()));
  }

  private String fastEnd(TempoWindow holds) {
    return holds.fastestFactor() == Double.POSITIVE_INFINITY
        ? texts.get("tempo.any.faster")
        : texts.get(
            "tempo.fastest", texts.say(holds.fastestText()), texts.say(holds.fastestLimit()));
  }

  /** Shows that there is no plan. */
  public void clear() {
    shown = Optional.empty();
    mark.setText("");
    slowest.setText("");
    fastest.setText("");
    requestLayout();
  }

  private void drag(MouseEvent event) {
    dragging = true;
    move(event, false);
  }

  private void release(MouseEvent event) {
    if (dragging) {
      dragging = false;
      move(event, true);
    }
  }

  private void move(MouseEvent event, boolean done) {
    double x = sceneToLocal(event.getSceneX(), event.getSceneY()).getX() - SIDE;
    shown.ifPresent(seen -> to(Math.round(seen.scale().perMinuteAt(x)), done));
  }

  private void to(long perMinute, boolean done) {
    shown
        .filter(seen -> perMinute > 0)
        .ifPresent(
            seen -> moved.to(new TempoMark(seen.present().unit(), Rational.of(perMinute)), done));
  }

  private void key(KeyEvent event) {
    int step = event.isShiftDown() ? 5 : 1;
    long present = shown.map(seen -> Math.round(seen.perMinute())).orElse(0L);
    switch (event.getCode()) {
      case LEFT, DOWN -> to(present - step, true);
      case RIGHT, UP -> to(present + step, true);
      default -> {
        return;
      }
    }
    event.consume();
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefHeight(double width) {
    double half = Math.max(1, (width < 0 ? 600 : width) - 2 * SIDE) / 2 - 6;
    return WORDS_Y + Math.max(slowest.prefHeight(half), fastest.prefHeight(half)) + 8;
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = Math.max(1, getWidth() - 2 * SIDE);
    track.resizeRelocate(SIDE, TRACK_Y, width, TRACK);
    shown = shown.map(s -> new ShownTempo(s.present(), s.window(), s.scale().resized(width)));
    now.setVisible(shown.isPresent());
    window.setVisible(shown.flatMap(ShownTempo::window).isPresent());
    shown.ifPresent(this::place);
    double half = width / 2 - 6;
    slowest.resizeRelocate(SIDE, WORDS_Y, half, slowest.prefHeight(half));
    fastest.resizeRelocate(SIDE + width - half, WORDS_Y, half, fastest.prefHeight(half));
  }

  private void place(ShownTempo seen) {
    TempoScale scale = seen.scale();
    double at = SIDE + scale.x(seen.perMinute());
    now.resizeRelocate(at - GRIP / 2, TRACK_Y + TRACK / 2 - GRIP, GRIP, 2 * GRIP);
    mark.autosize();
    double most = getWidth() - SIDE - mark.getWidth();
    mark.relocate(Math.max(SIDE, Math.min(most, at - mark.getWidth() / 2)), 4);
    seen.window()
        .ifPresent(
            holds -> {
              double from = scale.x(Math.max(1e-9, holds.slowestFactor() * seen.perMinute()));
              double to = scale.x(holds.fastestFactor() * seen.perMinute());
              window.resizeRelocate(SIDE + from, TRACK_Y, Math.max(2, to - from), TRACK);
            });
  }
}
