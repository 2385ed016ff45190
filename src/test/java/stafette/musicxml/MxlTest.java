package stafette.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;

/** A compressed score stays one, and all else that is in it stays there. */
class MxlTest {
  private static final LocalDateTime PACKED = LocalDateTime.of(2011, 2, 3, 4, 5, 6);
  private static final String ROOT = "scores/line & co.musicxml";
  private static final byte[] PICTURE = {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, 3};

  private record Entry(String hex, int method, LocalDateTime time) {}

  @Test
  void the_score_is_changed_and_every_other_entry_kept() throws Exception {
    Document before = MusicXmlReader.read(packed());
    Written written = TwoParts.write(before, TwoParts.plan(before, 2, 9));
    Map<String, Entry> old = entries(packed());
    Map<String, Entry> now = entries(written.bytes());
    assertEquals(List.copyOf(old.keySet()), List.copyOf(now.keySet()));
    old.forEach(
        (name, entry) -> {
          Entry same = Objects.requireNonNull(now.get(name), name);
          assertEquals(entry.method(), same.method(), name);
          assertEquals(entry.time(), same.time(), name);
          if (!name.equals(ROOT)) {
            assertEquals(entry.hex(), same.hex(), name);
          }
        });
    Document after = MusicXmlReader.read(written.bytes());
    assertEquals(ROOT, after.container().rootEntry().orElseThrow());
    assertEquals(8, TwoParts.strokes(after, "P2").size());
    assertNotEquals(before.origin().text(), after.origin().text());
  }

  @Test
  void writing_again_changes_no_byte_of_the_archive() throws Exception {
    Document before = MusicXmlReader.read(packed());
    Written written = TwoParts.write(before, TwoParts.plan(before, 2, 9));
    Document after = MusicXmlReader.read(written.bytes());
    Written again = TwoParts.write(after, TwoParts.plan(after, 2, 9));
    assertSame(written.bytes(), again.bytes());
  }

  private static byte[] packed() throws IOException {
    String container =
        "<?xml version=\"1.0\"?><container><rootfiles><rootfile full-path=\"scores/line &amp; co.musicxml\"/></rootfiles></container>";
    String text = TwoParts.score(Xml.ATTRIBUTES + Xml.rest(48));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      add(zip, "mimetype", utf8("application/vnd.recordare.musicxml"), ZipEntry.STORED);
      add(zip, "META-INF/container.xml", utf8(container), ZipEntry.DEFLATED);
      add(zip, "pictures/", new byte[0], ZipEntry.STORED);
      add(zip, "pictures/t\u00eate.png", PICTURE, ZipEntry.STORED);
      add(zip, ROOT, utf8(text), ZipEntry.DEFLATED);
      add(zip, "z.txt", utf8("last"), ZipEntry.DEFLATED);
    }
    return bytes.toByteArray();
  }

  private static void add(ZipOutputStream zip, String name, byte[] content, int method)
      throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(PACKED);
    entry.setMethod(method);
    if (method == ZipEntry.STORED) {
      CRC32 crc = new CRC32();
      crc.update(content);
      entry.setCrc(crc.getValue());
      entry.setSize(content.length);
    }
    zip.putNextEntry(entry);
    zip.write(content);
    zip.closeEntry();
  }

  private static Map<String, Entry> entries(byte[] archive) throws IOException {
    Map<String, Entry> entries = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
      for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
        String hex = HexFormat.of().formatHex(zip.readAllBytes());
        entries.put(e.getName(), new Entry(hex, e.getMethod(), e.getTimeLocal()));
      }
    }
    return entries;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
