package stafette.musicxml;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Puts the changed text back into bytes like those that it came from. */
final class Repack {
  private Repack() {}

  /**
   * The whole file with another text: same charset, byte-order mark and, if compressed, all other
   * entries as they were.
   */
  static byte[] bytes(Document document, String text) {
    Origin origin = document.origin();
    byte[] encoded = ((origin.byteOrderMark() ? "\ufeff" : "") + text).getBytes(origin.charset());
    Optional<String> entry = document.container().rootEntry();
    try {
      return entry.isPresent()
          ? zipped(document.container().bytes(), entry.get(), encoded)
          : encoded;
    } catch (IOException e) {
      throw new UncheckedIOException(
          "a compressed score that was read before can't be read again", e);
    }
  }

  private static byte[] zipped(byte[] original, String changed, byte[] content) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(original.length);
    try (ZipInputStream in =
            new ZipInputStream(new ByteArrayInputStream(original), StandardCharsets.UTF_8);
        ZipOutputStream out = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] own = entry.getName().equals(changed) ? content : in.readAllBytes();
        out.putNextEntry(like(entry, own));
        out.write(own);
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  private static ZipEntry like(ZipEntry entry, byte[] content) {
    ZipEntry copy = new ZipEntry(entry.getName());
    copy.setTimeLocal(entry.getTimeLocal());
    copy.setMethod(entry.getMethod());
    if (entry.getMethod() == ZipEntry.STORED) {
      CRC32 crc = new CRC32();
      crc.update(content);
      copy.setCrc(crc.getValue());
      copy.setSize(content.length);
      copy.setCompressedSize(content.length);
    }
    return copy;
  }
}
