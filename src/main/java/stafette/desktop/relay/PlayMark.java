package stafette.desktop.relay;

import java.util.List;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import stafette.desktop.texts.Texts;
import stafette.score.Line;
import stafette.time.Bar;
import stafette.time.Position;
import stafette.time.Span;

/** Where it plays from, a small mark over the rhythm of the line. It stays at its beat. */
final class PlayMark extends Region {
  private static final double WIDE = 10;
  private static final double HIGH = 7;

  /** From the top of the ruler. */
  private static final double DOWN = 29;

  private final Handholds stage;
  private Optional<Position> at = Optional.empty();

  PlayMark(Handholds stage) {
    this.stage = stage;
    setId("play-from");
    getStyleClass().add("play-from");
    setManaged(false);
    setVisible(false);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.SLIDER);
    setOnKeyPressed(this::key);
  }

  void clear() {
    at = Optional.empty();
    setVisible(false);
  }

  /**
   * Goes to the stroke nearest to a place on the canvas, or to one on a beat that is near enough.
   *
   * @param toBeats whether only strokes on a beat will do
   */
  void goTo(double x, boolean toBeats) {
    View view = stage.view();
    Line line = view.line(0);
    Snap snap = Snap.toOnsets(line);
    double quarters = view.time().quartersAt(x);
    int stroke =
        toBeats ? snap.beat(quarters) : snap.magnetic(quarters, view.time().magnetQuarters());
    goTo(line.stroke(stroke).onset());
  }

  /** To the next beat, or the one before; first of all to the beginning of the line. */
  void step(int direction) {
    View view = stage.view();
    List<Position> beats =
        view.shown().bars().stream()
            .map(Bar::beats)
            .flatMap(List::stream)
            .map(Span::start)
            .toList();
    Position start = view.line(0).stroke(0).onset();
    goTo(at.flatMap(now -> beyond(beats, now, direction)).or(() -> at).orElse(start));
  }

  private static Optional<Position> beyond(List<Position> beats, Position now, int direction) {
    return direction > 0
        ? beats.stream().filter(beat -> beat.isAfter(now)).findFirst()
        : beats.stream().filter(beat -> beat.isBefore(now)).reduce((before, last) -> last);
  }

  private void goTo(Position position) {
    at = Optional.of(position);
    stage.gestures().playFrom(stage.view().line(0).micros(position));
    place(stage.texts());
  }

  /** Stands at a place from the next layout on. */
  void show(Position position) {
    at = Optional.of(position);
  }

  /** Moves to where its beat is now. */
  void place(Texts texts) {
    View view = stage.view();
    at = at.filter(now -> view.shown().holds(now));
    setVisible(at.map(view.time()::x).filter(x -> x >= 0 && x <= view.time().width()).isPresent());
    at.ifPresent(
        now -> {
          Viewport port = view.time().port();
          double wide = port.px(WIDE);
          resizeRelocate(view.time().x(now) - wide / 2, port.px(DOWN), wide, port.px(HIGH));
          setAccessibleText(texts.get("relay.from", texts.say(view.line(0).bars().nameOf(now))));
        });
  }

  private void key(KeyEvent event) {
    if (event.getCode() == KeyCode.LEFT || event.getCode() == KeyCode.RIGHT) {
      step(event.getCode() == KeyCode.LEFT ? -1 : 1);
      event.consume();
    }
  }
}
