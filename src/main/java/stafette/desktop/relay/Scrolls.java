package stafette.desktop.relay;

import java.util.function.DoubleConsumer;
import javafx.geometry.Orientation;
import javafx.scene.control.ScrollBar;

/** The bars at two edges of the canvas, which show where the view stands and move it. */
final class Scrolls {
  private static final double THICK = 14;

  private final ScrollBar across = new ScrollBar();
  private final ScrollBar down = new ScrollBar();
  private boolean showing;

  /**
   * Bars that tell when somebody moves them.
   *
   * @param toQuarters told how far to scroll across
   * @param toPixels told how far to scroll down
   */
  Scrolls(DoubleConsumer toQuarters, DoubleConsumer toPixels) {
    across.setId("relay-across");
    down.setId("relay-down");
    down.setOrientation(Orientation.VERTICAL);
    tell(across, toQuarters);
    tell(down, toPixels);
  }

  private void tell(ScrollBar bar, DoubleConsumer told) {
    bar.valueProperty()
        .addListener(
            (observed, before, now) -> {
              if (!showing) {
                told.accept(now.doubleValue());
              }
            });
  }

  ScrollBar across() {
    return across;
  }

  ScrollBar down() {
    return down;
  }

  static double thickness(Viewport port) {
    return port.px(THICK);
  }

  /** Beside a canvas that begins at a place from the left. */
  void place(double left, Viewport port) {
    double thick = thickness(port);
    across.resizeRelocate(left, port.height(), port.width(), thick);
    down.resizeRelocate(left + port.width(), 0, thick, port.height());
  }

  void show(View view) {
    showing = true;
    TimeScale time = view.time();
    set(across, time.end() - time.start(), time.share(), time.scrolled());
    LaneScale lanes = view.lanes();
    set(down, lanes.count() * lanes.laneHeight(), lanes.share(), lanes.scrolled());
    showing = false;
  }

  void hide() {
    across.setVisible(false);
    down.setVisible(false);
  }

  private static void set(ScrollBar bar, double whole, double share, double value) {
    double visible = whole * share;
    bar.setMax(Math.max(0, whole - visible));
    bar.setVisibleAmount(bar.getMax() * share);
    bar.setBlockIncrement(visible);
    bar.setUnitIncrement(visible / 10);
    bar.setValue(value);
    bar.setVisible(share < 1);
  }
}
