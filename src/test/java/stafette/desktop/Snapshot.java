package stafette.desktop;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/** A picture of a window, kept under target/desktop to be looked at. */
public record Snapshot(BufferedImage image) {
  /** Must be called by the toolkit's thread. */
  public static Snapshot of(Scene scene, String name) {
    WritableImage seen = scene.snapshot(null);
    int width = (int) seen.getWidth();
    int height = (int) seen.getHeight();
    int[] pixels = new int[width * height];
    seen.getPixelReader()
        .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    image.setRGB(0, 0, width, height, pixels, 0, width);
    keep(image, name);
    return new Snapshot(image);
  }

  private static void keep(BufferedImage image, String name) {
    try {
      Path folder = Files.createDirectories(Path.of("target", "desktop"));
      ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The share of dots in a box that are much darker, or much lighter, than most. */
  public double ink(int left, int top, int width, int height) {
    int ground = most(left, top, width, height);
    int marked = 0;
    for (int y = top; y < top + height; y++) {
      for (int x = left; x < left + width; x++) {
        marked += Math.abs(light(image.getRGB(x, y)) - ground) > 60 ? 1 : 0;
      }
    }
    return marked / (double) (width * height);
  }

  private int most(int left, int top, int width, int height) {
    int[] counts = new int[256];
    for (int y = top; y < top + height; y++) {
      for (int x = left; x < left + width; x++) {
        counts[light(image.getRGB(x, y))]++;
      }
    }
    return IntStream.range(0, 256).reduce(0, (a, b) -> counts[b] > counts[a] ? b : a);
  }

  private static int light(int rgb) {
    return ((rgb >> 16 & 0xff) + (rgb >> 8 & 0xff) + (rgb & 0xff)) / 3;
  }
}
