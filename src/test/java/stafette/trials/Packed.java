package stafette.trials;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Packs a score as an archive, soundly or oddly. */
final class Packed {
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final ZipOutputStream zip = new ZipOutputStream(bytes);

  private Packed() {}

  static byte[] of(byte[] score, Dice dice) {
    return switch (dice.between(0, 10)) {
      case 0, 1, 2, 3 -> new Packed().container("score.xml").entry("score.xml", score).bytes();
      case 4 -> new Packed().entry(dice.of("a.musicxml", "A.XML", "x.txt"), score).bytes();
      case 5 -> new Packed().container("../up.xml").entry("../up.xml", score).bytes();
      case 6 ->
          new Packed()
              .container("in.mxl")
              .entry("in.mxl", new Packed().container("s.xml").entry("s.xml", score).bytes())
              .bytes();
      case 7 -> new Packed().container("gone.xml").entry("score.xml", score).bytes();
      case 8 -> cut(new Packed().container("score.xml").entry("score.xml", score).bytes(), dice);
      case 9 -> flipped(new Packed().container("s.xml").entry("s.xml", score).bytes(), dice);
      default ->
          new Packed()
              .entry("META-INF/container.xml", BytesSpoiler.utf8("<container><rootfiles/>"))
              .entry("folder/", new byte[0])
              .entry("score.xml", score)
              .bytes();
    };
  }

  private Packed container(String path) {
    return entry(
        "META-INF/container.xml",
        BytesSpoiler.utf8(
            "<container><rootfiles><rootfile full-path=\""
                + path
                + "\"/></rootfiles></container>"));
  }

  private Packed entry(String name, byte[] content) {
    try {
      zip.putNextEntry(new ZipEntry(name));
      zip.write(content);
      zip.closeEntry();
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private byte[] bytes() {
    try {
      zip.close();
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] cut(byte[] whole, Dice dice) {
    return java.util.Arrays.copyOf(whole, dice.between(4, whole.length));
  }

  private static byte[] flipped(byte[] whole, Dice dice) {
    whole[dice.between(4, whole.length - 1)] ^= (byte) (1 << dice.between(0, 7));
    return whole;
  }
}
