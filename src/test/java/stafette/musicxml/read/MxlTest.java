package stafette.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import stafette.musicxml.text.Archive;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.text.ZipDirectory;
import stafette.musicxml.write.TwoParts;
import stafette.musicxml.write.WrittenScore;

/** A compressed score stays one, and all else that is in it stays there. */
class MxlTest {
  private static final LocalDateTime PACKED = LocalDateTime.of(2011, 2, 3, 4, 5, 6);
  private static final String ROOT = "scores/line & co.musicxml";
  private static final byte[] PICTURE = {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, 3};

  private record Entry(String hex, int method, LocalDateTime time) {}

  @Test
  void the_score_is_changed_and_every_other_entry_kept() throws Exception {
    Document before = MusicXmlReader.read(packed());
    WrittenScore written = TwoParts.write(before, TwoParts.plan(before, 2, 9));
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
    WrittenScore written = TwoParts.write(before, TwoParts.plan(before, 2, 9));
    Document after = MusicXmlReader.read(written.bytes());
    WrittenScore again = TwoParts.write(after, TwoParts.plan(after, 2, 9));
    assertSame(written.bytes(), again.bytes());
  }

  /**
   * Nobody could unpack what is spoilt here: it says a thousand million bytes and holds rubbish.
   */
  @Test
  void what_is_not_needed_is_never_unpacked_and_is_copied_as_it_is_packed() throws Exception {
    byte[] archive = packed();
    spoil(archive, "z.txt");
    Document before = MusicXmlReader.read(archive);
    WrittenScore written = TwoParts.write(before, TwoParts.plan(before, 2, 9));
    assertEquals(8, TwoParts.strokes(MusicXmlReader.read(written.bytes()), "P2").size());
    Archive old = Archive.of(archive);
    Archive now = Archive.of(written.bytes());
    for (String name : List.of("z.txt", "mimetype", "pictures/t\u00eate.png")) {
      assertArrayEquals(raw(old, name), raw(now, name), name);
    }
  }

  @Test
  void a_score_that_would_fill_the_memory_is_refused_before_it_is_unpacked() throws Exception {
    byte[] archive = packed();
    spoil(archive, ROOT);
    String message =
        String.valueOf(
            assertThrows(UnreadableScore.class, () -> MusicXmlReader.read(archive)).getMessage());
    assertTrue(message.contains("would unpack to 953 MB"), message);
  }

  @Test
  void an_archive_whose_score_is_encrypted_or_packed_otherwise_says_so() throws Exception {
    for (int at : new int[] {8, 10}) {
      byte[] archive = packed();
      ZipDirectory directory = ZipDirectory.of(archive);
      archive[directory.entry(ROOT).orElseThrow().header() + at] |= 1;
      String message =
          String.valueOf(
              assertThrows(UnreadableScore.class, () -> MusicXmlReader.read(archive)).getMessage());
      assertTrue(message.startsWith(ROOT) && message.contains("is encrypted, or"), message);
    }
  }

  @Test
  void a_score_that_is_not_what_was_packed_is_refused() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      add(zip, "score.xml", utf8(TwoParts.score(Xml.rest(48))), ZipEntry.STORED);
    }
    byte[] archive = bytes.toByteArray();
    MusicXmlReader.read(archive);
    archive[200] ^= 1;
    String message =
        String.valueOf(
            assertThrows(UnreadableScore.class, () -> MusicXmlReader.read(archive)).getMessage());
    assertTrue(message.contains("score.xml can't be unpacked"), message);
  }

  /** As archives say it whose packer did not know beforehand how long they get. */
  @Test
  void sizes_that_stand_in_wide_fields_are_read_and_written() throws Exception {
    byte[] archive = wide(packed());
    Document before = MusicXmlReader.read(archive);
    WrittenScore written = TwoParts.write(before, TwoParts.plan(before, 2, 9));
    Document after = MusicXmlReader.read(written.bytes());
    assertEquals(8, TwoParts.strokes(after, "P2").size());
    assertEquals(
        List.copyOf(entries(packed()).keySet()), List.copyOf(entries(written.bytes()).keySet()));
  }

  @Property(tries = 300)
  void a_damaged_archive_is_read_or_refused_but_never_crashes(
      @ForAll @IntRange(max = 5_000) int at, @ForAll byte with, @ForAll boolean cut)
      throws Exception {
    byte[] archive = packed();
    byte[] damaged = Arrays.copyOf(archive, cut ? at % archive.length : archive.length);
    if (!cut) {
      damaged[at % archive.length] = with;
    }
    try {
      Document read = MusicXmlReader.read(damaged);
      TwoParts.write(read, TwoParts.plan(read, 2, 9));
    } catch (UnreadableScore expected) {
      assertTrue(String.valueOf(expected.getMessage()).length() > 10);
    }
  }

  private static void spoil(byte[] archive, String name) throws UnreadableScore {
    Archive read = Archive.of(archive);
    ZipDirectory.Entry entry = read.directory().entry(name).orElseThrow();
    Arrays.fill(archive, read.contentStart(entry), read.contentStart(entry) + 4, (byte) 0xFF);
    entry.size().put(read.directory().bytes(), 0, 1_000_000_000);
  }

  /** All that stands of an entry in the archive, its header included. */
  private static byte[] raw(Archive archive, String name) {
    ZipDirectory.Entry entry = archive.directory().entry(name).orElseThrow();
    int end = archive.contentStart(entry) + archive.packed(entry);
    return archive.directory().slice(archive.local(entry), end);
  }

  /** The same archive with the sizes of its last entries moved into extra fields. */
  private static byte[] wide(byte[] archive) throws UnreadableScore {
    Archive read = Archive.of(archive);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes(Arrays.copyOf(archive, read.directory().start()));
    for (ZipDirectory.Entry entry : read.directory().entries()) {
      bytes.writeBytes(wide(read, entry));
    }
    int length = bytes.size() - read.directory().start();
    ByteBuffer end = ByteBuffer.allocate(22).order(ByteOrder.LITTLE_ENDIAN);
    short count = (short) read.directory().entries().size();
    end.putInt(0x06054b50).putInt(0).putShort(count).putShort(count).putInt(length);
    bytes.writeBytes(end.putInt(read.directory().start()).array());
    return bytes.toByteArray();
  }

  private static byte[] wide(Archive archive, ZipDirectory.Entry entry) {
    byte[] old = archive.directory().slice(entry.header(), entry.headerEnd());
    ByteBuffer header = ByteBuffer.allocate(old.length + 28).order(ByteOrder.LITTLE_ENDIAN);
    header.put(old).putInt(20, -1).putInt(24, -1).putInt(42, -1);
    int extra = Short.toUnsignedInt(header.getShort(30));
    header.putShort(30, (short) (extra + 28));
    header.putShort((short) 1).putShort((short) 24).putLong(archive.size(entry));
    return header.putLong(archive.packed(entry)).putLong(archive.local(entry)).array();
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
