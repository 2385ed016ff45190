package stafette.picture.ink;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One thing on a drawing. Lengths are in points, y downward. */
public sealed interface Mark {
  /** Hands itself to whoever draws. */
  void show(Hand hand);

  /** The box that it takes on the paper. */
  Box bounds();

  /** Whoever draws marks: on SVG, in PDF, on a screen. */
  interface Hand {
    void fill(Fill fill);

    void stroke(Outline stroke);

    void words(Lettering words);

    /** A group; its marks still have to be shown. */
    void group(MarkGroup group);
  }

  /** A filled outline, inside by the non-zero rule. */
  record Fill(Path path, Ink ink) implements Mark {
    @Override
    public void show(Hand hand) {
      hand.fill(this);
    }

    @Override
    public Box bounds() {
      return path.bounds();
    }
  }

  /**
   * A line along a path, its ends cut.
   *
   * @param width how thick
   */
  record Outline(Path path, double width, Ink ink) implements Mark {
    @Override
    public void show(Hand hand) {
      hand.stroke(this);
    }

    @Override
    public Box bounds() {
      return path.bounds().grownBy(width / 2);
    }
  }

  /**
   * Words, or signs of a music face.
   *
   * @param x where the first letter begins
   * @param y the base line
   * @param size of the type
   */
  record Lettering(String text, double x, double y, double size, Face face, Ink ink)
      implements Mark {
    @Override
    public void show(Hand hand) {
      hand.words(this);
    }

    @Override
    public Box bounds() {
      return face.bounds(text, size, x, y);
    }

    public double width() {
      return face.width(text, size);
    }

    /** Follows the outline of the letters, for devices that have no such font. */
    public void trace(Path.Tracer tracer) {
      Outlines.trace(face.outline(text, size, x, y), tracer);
    }
  }

  /**
   * Marks that are one thing to whoever points at them.
   *
   * @param id unlike any other in the drawing; empty if nobody needs to find it
   * @param title what it is, in words
   * @param data figures by name, in lower case with hyphens
   */
  record MarkGroup(Optional<String> id, String title, Map<String, String> data, List<Mark> marks)
      implements Mark {
    public MarkGroup {
      data = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(data));
      marks = List.copyOf(marks);
    }

    @Override
    public void show(Hand hand) {
      hand.group(this);
    }

    @Override
    public Box bounds() {
      return marks.stream().map(Mark::bounds).reduce(Box::with).orElse(new Box(0, 0, 0, 0));
    }
  }
}
