package stafette.desktop.relay;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.UnaryOperator;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import stafette.check.JudgedPlan;
import stafette.check.Verdict;
import stafette.desktop.playing.Balance;
import stafette.desktop.texts.Texts;
import stafette.plan.Plan;
import stafette.split.Reason;
import stafette.time.Position;
import stafette.time.Span;

/**
 * The relay: lanes with their names, a canvas as large as the view with what is seen of the plan,
 * and over it the handles. Zooms with the control key and the wheel or with plus, minus and zero;
 * with shift as well, the lanes. A click where nothing is, or comma and point, say where it plays
 * from.
 */
public final class RelayView extends Region implements RelayStyle.Inked {
  private static final double ZOOM = 1.25;
  private static final double NUDGE = 60;
  private static final Set<KeyCode> PLUS = Set.of(KeyCode.PLUS, KeyCode.EQUALS, KeyCode.ADD);
  private static final Set<KeyCode> MINUS = Set.of(KeyCode.MINUS, KeyCode.SUBTRACT);

  private final Texts texts;
  private final RelayGestures gestures;
  private final Canvas canvas = new Canvas();
  private final LaneNames names = new LaneNames();
  private final Handles handles = new Handles(new OnCanvas());
  private final FaultSigns faults = new FaultSigns(new OnCanvas());
  private final PlayMark mark = new PlayMark(new OnCanvas());
  private final Scrolls scrolls =
      new Scrolls(
          quarters -> change(now -> now.with(now.time().scrolledTo(quarters))),
          pixels -> change(now -> now.scrolledDownTo(pixels)));
  private final Label empty = new Label();
  private final Label caption = new Label();
  private final Region cursor = new Region();
  private final RelayStyle style = new RelayStyle(this, this::requestLayout);
  private Optional<View> view = Optional.empty();
  private Viewport port;

  public RelayView(Texts texts, RelayGestures gestures) {
    this(texts, gestures, Font.getDefault().getSize());
  }

  /**
   * A relay for another size of type than the system's.
   *
   * @param typePixels how large type is
   */
  RelayView(Texts texts, RelayGestures gestures, double typePixels) {
    this.texts = texts;
    this.gestures = gestures;
    port = new Viewport(1, 1, typePixels / Viewport.USUAL_TYPE);
    setId("relay");
    getStyleClass().add("relay");
    setAccessibleRole(AccessibleRole.PARENT);
    empty.setText(texts.get("relay.choose"));
    empty.getStyleClass().add("relay-empty");
    empty.setWrapText(true);
    caption.setId("relay-caption");
    caption.getStyleClass().addAll("relay-empty", "relay-caption");
    caption.setWrapText(true);
    caption.setMouseTransparent(true);
    cursor.getStyleClass().add("play-cursor");
    cursor.setId("play-cursor");
    cursor.setManaged(false);
    cursor.setMouseTransparent(true);
    cursor.setVisible(false);
    getChildren()
        .addAll(
            canvas,
            mark,
            handles,
            faults,
            cursor,
            names,
            scrolls.across(),
            scrolls.down(),
            empty,
            caption);
    canvas.setOnMouseClicked(this::click);
    addEventHandler(ScrollEvent.SCROLL, this::wheel);
    addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    setMinSize(320, 180);
  }

  /** Shows a plan; where the view stands is kept while the bars are the same. */
  public void show(Plan plan, Verdict verdict) {
    caption.setText("");
    show(ShownPlan.of(plan, verdict, texts));
    setAccessibleText(texts.get("relay.name", plan.segments().size(), plan.handoffs().size()));
  }

  /**
   * Shows a line before it is shared; nothing of it can be moved.
   *
   * @param written all of it with whoever has it in the score
   * @param preventing what prevents a plan
   * @param why in words why it is not shared
   */
  public void showAsWritten(JudgedPlan written, List<Reason> preventing, String why) {
    caption.setText(why);
    show(
        ShownPlan.asWritten(
            written.plan(),
            written.verdict(),
            RelayFault.preventing(written.plan(), preventing),
            texts));
    setAccessibleText(why);
  }

  private void show(ShownPlan shown) {
    names.show(shown);
    view = view.map(before -> before.showing(shown)).or(() -> Optional.of(View.first(shown, port)));
    requestLayout();
  }

  /** From now on these gestures to lanes are told. */
  public void lanesTold(MuteSoloGestures lanes) {
    names.told(lanes);
  }

  /** Shows who is heard. */
  public void hear(Balance balance) {
    names.hear(balance);
  }

  /** Shows from where it is to play, without telling. */
  public void markFrom(Position position) {
    mark.show(position);
    requestLayout();
  }

  /**
   * Shows that there is no plan.
   *
   * @param why in words, with what to do
   */
  public void clear(String why) {
    empty.setText(why);
    caption.setText("");
    view = Optional.empty();
    handles.clear();
    faults.clear();
    mark.clear();
    names.clear();
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
    change(now -> now.with(now.time().zoomed(factor, aroundX)));
  }

  /** Makes lanes higher by a factor, or lower. */
  public void zoomLanes(double factor) {
    change(now -> now.lanesZoomed(factor));
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
            cursor.resizeRelocate(names.getWidth() + x - 1, 0, 2, canvas.getHeight());
          });
    }
  }

  /** Zooms out until all bars are seen, in lanes as they usually are. */
  public void showWhole() {
    change(now -> now.lanesZoomedTo(1).with(now.time().whole()));
  }

  private void change(UnaryOperator<View> step) {
    view = view.map(step);
    requestLayout();
  }

  private void click(MouseEvent event) {
    if (view.isPresent() && event.getButton() == MouseButton.PRIMARY && event.isStillSincePress()) {
      requestFocus();
      mark.goTo(event.getX(), event.isShiftDown());
      event.consume();
    }
  }

  private void wheel(ScrollEvent event) {
    double turned = event.getDeltaY() != 0 ? event.getDeltaY() : event.getDeltaX();
    double factor = turned > 0 ? ZOOM : 1 / ZOOM;
    if (event.isShortcutDown() && event.isShiftDown()) {
      zoomLanes(factor);
    } else if (event.isShortcutDown()) {
      zoom(factor, canvas.sceneToLocal(event.getSceneX(), event.getSceneY()).getX());
    } else if (event.isShiftDown() || event.getDeltaY() == 0) {
      change(now -> now.with(now.time().scrolledBy(-turned)));
    } else {
      change(now -> now.scrolledDownTo(now.lanes().scrolled() - turned));
    }
    event.consume();
  }

  private void key(KeyEvent event) {
    if (isPlus(event)) {
      zoom(event, ZOOM);
    } else if (isMinus(event)) {
      zoom(event, 1 / ZOOM);
    } else {
      go(event);
      return;
    }
    event.consume();
  }

  private void go(KeyEvent event) {
    switch (event.getText()) {
      case "0" -> showWhole();
      case "," -> step(-1);
      case "." -> step(1);
      default -> {
        page(event);
        return;
      }
    }
    event.consume();
  }

  private void step(int direction) {
    if (view.isPresent()) {
      mark.step(direction);
    }
  }

  /** On some keyboards plus is typed with the shift key, on others not. */
  private static boolean isPlus(KeyEvent event) {
    return "+".equals(event.getText())
        || (event.isShortcutDown() && PLUS.contains(event.getCode()));
  }

  private static boolean isMinus(KeyEvent event) {
    return "-".equals(event.getText())
        || (event.isShortcutDown() && MINUS.contains(event.getCode()));
  }

  /** With the control key and shift, as with the wheel, the lanes. */
  private void zoom(KeyEvent event, double factor) {
    if (event.isShortcutDown() && event.isShiftDown()) {
      zoomLanes(factor);
    } else {
      zoom(factor);
    }
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

  @Override
  protected void layoutChildren() {
    double left = LaneNames.width(port);
    double thick = Scrolls.thickness(port);
    double width = Math.max(1, getWidth() - left - thick);
    double height = Math.max(1, getHeight() - thick);
    port = port.sized(width, height);
    canvas.setWidth(width);
    canvas.setHeight(height);
    canvas.relocate(left, 0);
    mark.setTranslateX(left);
    handles.resizeRelocate(left, 0, width, height);
    faults.resizeRelocate(left, 0, width, height);
    names.resizeRelocate(0, 0, left, height);
    scrolls.place(left, port);
    empty.setVisible(view.isEmpty());
    double room = Math.max(1, width - 2 * port.px(24));
    empty.resize(room, empty.prefHeight(room));
    empty.relocate(left + port.px(24), port.px(40));
    view = view.map(now -> now.within(port));
    view.ifPresentOrElse(this::draw, () -> blank(width, height));
  }

  private void draw(View now) {
    new RelayPainter(now, canvas.getGraphicsContext2D(), style.inks()).paint();
    names.place(now.lanes());
    caption(now.lanes());
    handles.place();
    faults.place();
    mark.place(texts);
    scrolls.show(now);
  }

  /** Under the lanes, or at the foot where they go on. */
  private void caption(LaneScale lanes) {
    double room = Math.max(1, canvas.getWidth() - 2 * port.px(TimeScale.MARGIN));
    double high = caption.prefHeight(room);
    double top = Math.min(lanes.bottom() + port.px(8), canvas.getHeight() - high);
    caption.setVisible(!caption.getText().isEmpty());
    caption.resizeRelocate(names.getWidth() + port.px(TimeScale.MARGIN), top, room, high);
  }

  private void blank(double width, double height) {
    scrolls.hide();
    caption.setVisible(false);
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
  private final class OnCanvas implements Handholds {
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
