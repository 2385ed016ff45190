package stafette.desktop.relay;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import javafx.beans.value.ObservableValue;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollBar;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import stafette.check.Verdict;
import stafette.desktop.playing.Balance;
import stafette.desktop.texts.Texts;
import stafette.plan.Plan;
import stafette.time.Span;

/**
 * The relay: lanes with their names, a canvas as large as the view with what is seen of the plan,
 * and over it the handles. Zooms with the control key and the wheel or with plus, minus and zero.
 */
public final class RelayView extends Region implements RelayStyle.Inked {
  private static final double BAR = 14;
  private static final double ZOOM = 1.25;
  private static final double NUDGE = 60;

  private final Texts texts;
  private final RelayGestures gestures;
  private final Canvas canvas = new Canvas();
  private final LaneNames names;
  private final Handles handles = new Handles(new OnCanvas());
  private final ScrollBar across = new ScrollBar();
  private final ScrollBar down = new ScrollBar();
  private final Label empty = new Label();
  private final Region cursor = new Region();
  private final RelayStyle style = new RelayStyle(this, this::requestLayout);
  private Optional<View> view = Optional.empty();
  private boolean scrolling;

  public RelayView(Texts texts, RelayGestures gestures) {
    this.texts = texts;
    this.gestures = gestures;
    this.names = new LaneNames(texts);
    setId("relay");
    getStyleClass().add("relay");
    setAccessibleRole(AccessibleRole.PARENT);
    empty.setText(texts.get("relay.empty"));
    empty.getStyleClass().add("relay-empty");
    down.setOrientation(Orientation.VERTICAL);
    across.setId("relay-across");
    down.setId("relay-down");
    across.valueProperty().addListener(this::scrolledAcross);
    down.valueProperty().addListener(this::scrolledDown);
    cursor.getStyleClass().add("play-cursor");
    cursor.setId("play-cursor");
    cursor.setManaged(false);
    cursor.setMouseTransparent(true);
    cursor.setVisible(false);
    getChildren().addAll(canvas, handles, cursor, names, across, down, empty);
    addEventHandler(ScrollEvent.SCROLL, this::wheel);
    addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    setMinSize(320, 180);
  }

  /** Shows a plan; where the view stands is kept while the bars are the same. */
  public void show(Plan plan, Verdict verdict) {
    ShownPlan shown = ShownPlan.of(plan, verdict, texts);
    names.show(plan.brief().players());
    view = Optional.of(placed(shown));
    setAccessibleText(texts.get("relay.name", plan.segments().size(), plan.handoffs().size()));
    requestLayout();
  }

  private View placed(ShownPlan shown) {
    Optional<View> kept =
        view.filter(before -> before.shown().bars().equals(shown.bars()))
            .filter(before -> before.lanes().count() == shown.lanes());
    return kept.map(before -> new View(shown, before.time(), before.lanes()))
        .orElseGet(
            () ->
                new View(
                    shown,
                    TimeScale.whole(shown.bars(), canvas.getWidth()),
                    LaneScale.plain(shown.lanes(), 0, canvas.getHeight())));
  }

  /** From now on these gestures to lanes are told. */
  public void lanesTold(LaneGestures lanes) {
    names.told(lanes);
  }

  /** Shows who is heard. */
  public void hear(Balance balance) {
    names.hear(balance);
  }

  /** Shows that there is no plan. */
  public void clear() {
    view = Optional.empty();
    handles.clear();
    names.show(List.of());
    requestLayout();
  }

  /** Scrolls to a stretch of time, as little as it takes. */
  public void reveal(Span span) {
    change(now -> now.with(now.time().showing(span)));
  }

  /** Scrolls to a segment and gives it the keyboard. */
  public void focusSegment(int segment) {
    view.ifPresent(now -> reveal(now.shown().pieces().segmentSpan(segment)));
    layout();
    handles.focusSegment(segment);
  }

  public void zoom(double factor) {
    zoom(factor, canvas.getWidth() / 2);
  }

  private void zoom(double factor, double aroundX) {
    change(now -> zoomed(now, now.time().zoomed(factor, aroundX)));
  }

  /** Lanes grow when there is room in time for notes. */
  private static View zoomed(View now, TimeScale time) {
    boolean room = now.shown().hasRoomForMusic(time);
    return now.with(time).with(room ? now.lanes().noted() : now.lanes().plain());
  }

  /** Shows where on the line's clock is what is heard now; follows it. */
  public void hear(OptionalLong lineMicros) {
    cursor.setVisible(lineMicros.isPresent() && view.isPresent());
    if (lineMicros.isPresent()) {
      view.ifPresent(
          now -> {
            double quarters = now.shown().clock().quarters(lineMicros.getAsLong());
            double x = now.time().x(quarters);
            if (x < 0 || x > canvas.getWidth()) {
              change(seen -> seen.with(seen.time().scrolledTo(quarters - seen.time().start())));
            }
            cursor.resizeRelocate(LaneNames.WIDTH + x - 1, 0, 2, canvas.getHeight());
          });
    }
  }

  /** Zooms out until all bars are seen. */
  public void showWhole() {
    change(now -> zoomed(now, TimeScale.whole(now.shown().bars(), canvas.getWidth())));
  }

  private void change(UnaryOperator<View> step) {
    view = view.map(step);
    requestLayout();
  }

  private void wheel(ScrollEvent event) {
    if (event.isShortcutDown()) {
      zoom(event.getDeltaY() > 0 ? ZOOM : 1 / ZOOM, x(event.getSceneX(), event.getSceneY()));
    } else if (event.isShiftDown() || event.getDeltaX() != 0) {
      double pixels = event.getDeltaX() != 0 ? event.getDeltaX() : event.getDeltaY();
      change(now -> now.with(now.time().scrolledBy(-pixels)));
    } else {
      change(now -> now.with(now.lanes().scrolledTo(now.lanes().scrolled() - event.getDeltaY())));
    }
    event.consume();
  }

  private void key(KeyEvent event) {
    switch (event.getText()) {
      case "+" -> zoom(ZOOM);
      case "-" -> zoom(1 / ZOOM);
      case "0" -> showWhole();
      default -> {
        page(event);
        return;
      }
    }
    event.consume();
  }

  private void page(KeyEvent event) {
    double most = canvas.getWidth() - NUDGE;
    switch (event.getCode()) {
      case PAGE_UP -> change(now -> now.with(now.time().scrolledBy(-most)));
      case PAGE_DOWN -> change(now -> now.with(now.time().scrolledBy(most)));
      case HOME -> change(now -> now.with(now.time().scrolledTo(0)));
      case END -> change(now -> now.with(now.time().scrolledTo(Double.MAX_VALUE)));
      default -> {
        return;
      }
    }
    event.consume();
  }

  private double x(double sceneX, double sceneY) {
    return canvas.sceneToLocal(sceneX, sceneY).getX();
  }

  private void scrolledAcross(ObservableValue<?> observed, Number before, Number now) {
    if (!scrolling) {
      change(seen -> seen.with(seen.time().scrolledTo(now.doubleValue())));
    }
  }

  private void scrolledDown(ObservableValue<?> observed, Number before, Number now) {
    if (!scrolling) {
      change(seen -> seen.with(seen.lanes().scrolledTo(now.doubleValue())));
    }
  }

  @Override
  protected void layoutChildren() {
    double width = Math.max(1, getWidth() - LaneNames.WIDTH - BAR);
    double height = Math.max(1, getHeight() - BAR);
    canvas.setWidth(width);
    canvas.setHeight(height);
    canvas.relocate(LaneNames.WIDTH, 0);
    handles.resizeRelocate(LaneNames.WIDTH, 0, width, height);
    names.resizeRelocate(0, 0, LaneNames.WIDTH, height);
    across.resizeRelocate(LaneNames.WIDTH, height, width, BAR);
    down.resizeRelocate(LaneNames.WIDTH + width, 0, BAR, height);
    empty.setVisible(view.isEmpty());
    empty.autosize();
    empty.relocate(LaneNames.WIDTH + 24, 40);
    view = view.map(now -> now.resized(width, height));
    view.ifPresentOrElse(this::draw, () -> blank(width, height));
  }

  private void draw(View now) {
    new RelayPainter(
            now.shown(), now.time(), now.lanes(), canvas.getGraphicsContext2D(), style.inks())
        .paint();
    names.place(now.lanes());
    handles.place();
    scrolling = true;
    TimeScale time = now.time();
    double whole = time.end() - time.start();
    set(across, whole, time.share(), time.scrolled());
    LaneScale lanes = now.lanes();
    set(down, lanes.count() * lanes.laneHeight(), lanes.share(), lanes.scrolled());
    scrolling = false;
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

  private void blank(double width, double height) {
    across.setVisible(false);
    down.setVisible(false);
    canvas.getGraphicsContext2D().setFill(style.inks().paper());
    canvas.getGraphicsContext2D().fillRect(0, 0, width, height);
  }

  @Override
  public RelayStyle style() {
    return style;
  }

  @Override
  public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
    return RelayStyle.METADATA;
  }

  /** The view as the handles see it. */
  private final class OnCanvas implements Stage {
    @Override
    public View view() {
      return view.orElseThrow();
    }

    @Override
    public RelayGestures gestures() {
      return gestures;
    }

    @Override
    public Texts texts() {
      return texts;
    }

    @Override
    public double x(MouseEvent event) {
      return canvas.sceneToLocal(event.getSceneX(), event.getSceneY()).getX();
    }

    @Override
    public double y(MouseEvent event) {
      return canvas.sceneToLocal(event.getSceneX(), event.getSceneY()).getY();
    }

    @Override
    public void ghost(int segment, int lane) {
      handles.ghost(segment, lane);
    }

    @Override
    public void noGhost() {
      handles.noGhost();
    }
  }
}
