package stafette.desktop.relay;

import javafx.scene.paint.Color;
import stafette.picture.ink.Ink;

/** The inks of pictures on a screen, as the style in force has them. */
public record Inks(Color full, Color soft, Color faint, Color join, Color paper) {
  Color of(Ink ink) {
    return switch (ink) {
      case FULL -> full;
      case SOFT -> soft;
      case FAINT -> faint;
      case JOIN -> join;
      case PAPER -> paper;
    };
  }

  /** Inks that draw softly all that is full. */
  public Inks softened() {
    return new Inks(soft, soft, faint, join, paper);
  }
}
