package stafette.desktop.relay;

import java.util.List;
import javafx.css.CssMetaData;
import javafx.css.SimpleStyleableObjectProperty;
import javafx.css.Styleable;
import javafx.css.StyleableObjectProperty;
import javafx.css.StyleablePropertyFactory;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;

/** The inks that a style sheet gives a canvas: {@code -relay-full} and the others. */
public final class RelayStyle {
  private static final StyleablePropertyFactory<Region> FACTORY =
      new StyleablePropertyFactory<>(Region.getClassCssMetaData());

  private static CssMetaData<Region, Color> ink(String name, Color otherwise) {
    return FACTORY.createColorCssMetaData(
        "-relay-" + name, node -> ((Inked) node).style().property(name), otherwise, true);
  }

  private static final CssMetaData<Region, Color> FULL = ink("full", Color.web("#15181f"));
  private static final CssMetaData<Region, Color> SOFT = ink("soft", Color.web("#565b66"));
  private static final CssMetaData<Region, Color> FAINT = ink("faint", Color.web("#b3b6bd"));
  private static final CssMetaData<Region, Color> JOIN = ink("join", Color.web("#a8330f"));
  private static final CssMetaData<Region, Color> PAPER = ink("paper", Color.WHITE);

  public static final List<CssMetaData<? extends Styleable, ?>> METADATA =
      java.util.stream.Stream.concat(
              Region.getClassCssMetaData().stream(),
              List.of(FULL, SOFT, FAINT, JOIN, PAPER).stream())
          .toList();

  private final List<StyleableObjectProperty<Color>> properties;

  /** A node that draws in these inks. */
  public interface Inked {
    RelayStyle style();
  }

  /**
   * The inks of a node.
   *
   * @param changed run when the style sheet gives other ones
   */
  public RelayStyle(Region node, Runnable changed) {
    properties =
        List.of(FULL, SOFT, FAINT, JOIN, PAPER).stream()
            .map(data -> property(node, data, changed))
            .toList();
  }

  private static StyleableObjectProperty<Color> property(
      Region node, CssMetaData<Region, Color> data, Runnable changed) {
    StyleableObjectProperty<Color> property =
        new SimpleStyleableObjectProperty<>(
            data, node, data.getProperty(), data.getInitialValue(node));
    property.addListener((observed, before, now) -> changed.run());
    return property;
  }

  private StyleableObjectProperty<Color> property(String name) {
    return properties.stream()
        .filter(property -> property.getName().equals("-relay-" + name))
        .findFirst()
        .orElseThrow();
  }

  public Inks inks() {
    return new Inks(
        properties.get(0).get(),
        properties.get(1).get(),
        properties.get(2).get(),
        properties.get(3).get(),
        properties.get(4).get());
  }
}
