package stafette.desktop.relay;

import javafx.scene.input.MouseEvent;
import stafette.desktop.texts.Texts;

/** Where the things that can be taken hold of stand. */
interface Handholds {
  View view();

  RelayGestures gestures();

  Texts texts();

  /** Where on the canvas the mouse is. */
  double x(MouseEvent event);

  double y(MouseEvent event);

  /** Shows where a segment would go. */
  void ghost(int segment, int lane);

  void noGhost();
}
