package stafette.desktop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntBinaryOperator;
import java.util.stream.IntStream;

/**
 * A picture seen from afar: how much ink stands in each cell of a raster, a character each, from a
 * blank for none to a hash for much. It differs little where another font is used, and much where a
 * panel is missing.
 */
public record Coarse(List<String> rows) {
  private static final String LEVELS = " .:+#";
  private static final double[] FROM = {0.004, 0.03, 0.08, 0.2};
  private static final int COLUMNS = 40;
  private static final int ROWS = 24;
  private static final int STRIPES = 4;
  private static final Path KNOWN = Path.of("src", "test", "resources", "stafette", "desktop");

  public Coarse {
    rows = List.copyOf(rows);
  }

  public static Coarse of(Snapshot picture) {
    int width = picture.image().getWidth() / COLUMNS;
    int height = picture.image().getHeight() / ROWS;
    List<String> rows = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      StringBuilder cells = new StringBuilder();
      for (int column = 0; column < COLUMNS; column++) {
        cells.append(level(picture.ink(column * width, row * height, width, height)));
      }
      rows.add(cells.toString());
    }
    return new Coarse(rows);
  }

  private static char level(double ink) {
    int level = 0;
    while (level < FROM.length && ink >= FROM[level]) {
      level++;
    }
    return LEVELS.charAt(level);
  }

  /** How a picture should look from afar. */
  public static Coarse known(String name) {
    try {
      return new Coarse(Files.readAllLines(KNOWN.resolve(name + ".txt")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * From 0, nothing in common, to 1, the same: the ink that both have of the ink that any has, in
   * that one of four upright stripes in which it is least.
   */
  public double likeness(Coarse other) {
    return IntStream.range(0, STRIPES)
        .mapToDouble(
            stripe ->
                sum(other, stripe, Math::min) / (double) Math.max(1, sum(other, stripe, Math::max)))
        .min()
        .orElseThrow();
  }

  private int sum(Coarse other, int stripe, IntBinaryOperator of) {
    int sum = 0;
    for (int row = 0; row < ROWS; row++) {
      for (int column = 0; column < COLUMNS / STRIPES; column++) {
        int at = stripe * COLUMNS / STRIPES + column;
        sum += of.applyAsInt(at(row, at), other.at(row, at));
      }
    }
    return sum;
  }

  private int at(int row, int column) {
    return row < rows.size() && column < rows.get(row).length()
        ? Math.max(0, LEVELS.indexOf(rows.get(row).charAt(column)))
        : 0;
  }

  @Override
  public String toString() {
    return String.join("\n", rows);
  }
}
