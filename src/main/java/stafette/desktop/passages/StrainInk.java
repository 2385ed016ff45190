package stafette.desktop.passages;

import javafx.scene.layout.Region;

/** Strain as ink: a short bar that is full at the limit and changes its colour beyond. */
final class StrainInk extends Region {
  private static final double WIDTH = 56;
  private static final double HEIGHT = 6;

  private final Region ink = new Region();
  private double share;

  StrainInk() {
    getStyleClass().add("strain-track");
    ink.getStyleClass().add("strain-ink");
    getChildren().add(ink);
    setMinSize(WIDTH, HEIGHT);
    setPrefSize(WIDTH, HEIGHT);
    setMaxSize(WIDTH, HEIGHT);
  }

  void show(double strain) {
    share = Math.min(1, strain);
    ink.getStyleClass().remove("over");
    if (strain > 1) {
      ink.getStyleClass().add("over");
    }
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    ink.resizeRelocate(0, 0, getWidth() * share, getHeight());
  }
}
