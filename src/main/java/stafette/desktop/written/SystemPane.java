package stafette.desktop.written;

import java.util.List;
import java.util.Optional;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import stafette.desktop.relay.CanvasInk;
import stafette.desktop.relay.Inks;
import stafette.desktop.relay.RelayStyle;

/** A row of music on a canvas, in the inks of the style in force. */
final class SystemPane extends Region implements RelayStyle.Inked {
  private final Canvas canvas = new Canvas();
  private final RelayStyle style = new RelayStyle(this, this::draw);
  private Optional<SystemPicture> shown = Optional.empty();

  SystemPane() {
    getStyleClass().add("written-system");
    getChildren().add(canvas);
  }

  void show(SystemPicture picture) {
    shown = Optional.of(picture);
    canvas.setWidth(picture.row().right() + SystemPicture.SPACE);
    canvas.setHeight(picture.height());
    setMinHeight(picture.height());
    setPrefHeight(picture.height());
    draw();
  }

  private void draw() {
    shown.ifPresent(this::draw);
  }

  private void draw(SystemPicture picture) {
    GraphicsContext context = canvas.getGraphicsContext2D();
    context.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
    Inks inks = style.inks();
    CanvasInk soft = new CanvasInk(context, inks.softened());
    picture.before().forEach(mark -> mark.show(soft));
    CanvasInk full = new CanvasInk(context, inks);
    picture.after().forEach(mark -> mark.show(full));
  }

  @Override
  public RelayStyle style() {
    return style;
  }

  @Override
  public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
    return RelayStyle.METADATA;
  }
}
