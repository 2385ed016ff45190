package stafette.musicxml.write;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import stafette.musicxml.read.Document;
import stafette.musicxml.text.Archive;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.text.ZipDirectory;
import stafette.musicxml.text.ZipDirectory.Entry;

/** Puts the changed text back into bytes like those that it came from. */
final class Repack {
  private static final int SIZES_FOLLOW = 8;

  private final Archive archive;
  private final ZipDirectory directory;
  private final Entry changed;
  private final byte[] packed;
  private final int size;
  private final long sum;
  private final ByteArrayOutputStream out;
  private final Map<Integer, Integer> moved = new HashMap<>();

  private Repack(Archive archive, Entry changed, byte[] content) {
    this.archive = archive;
    this.directory = archive.directory();
    this.changed = changed;
    this.size = content.length;
    this.packed = archive.method(changed) == Archive.STORED ? content : deflated(content);
    CRC32 crc = new CRC32();
    crc.update(content);
    this.sum = crc.getValue();
    this.out = new ByteArrayOutputStream(directory.bytes().limit());
  }

  /**
   * The whole file with another text: same charset, byte-order mark and, if compressed, all other
   * entries as they were, without unpacking them.
   */
  static byte[] bytes(Document document, String text) {
    Origin origin = document.origin();
    byte[] encoded = ((origin.byteOrderMark() ? "\ufeff" : "") + text).getBytes(origin.charset());
    Optional<String> entry = document.container().rootEntry();
    return entry.isPresent() ? zipped(document.container().bytes(), entry.get(), encoded) : encoded;
  }

  private static byte[] zipped(byte[] original, String changed, byte[] content) {
    try {
      Archive archive = Archive.of(original);
      return new Repack(archive, archive.directory().entry(changed).orElseThrow(), content).zip();
    } catch (UnreadableScore e) {
      throw new IllegalStateException(
          "a compressed score that was read before can't be read again", e);
    }
  }

  private static byte[] deflated(byte[] content) {
    Deflater deflater = new Deflater(Deflater.DEFAULT_COMPRESSION, true);
    try {
      deflater.setInput(content);
      deflater.finish();
      ByteArrayOutputStream packed = new ByteArrayOutputStream(content.length / 8 + 64);
      byte[] piece = new byte[1 << 16];
      while (!deflater.finished()) {
        packed.write(piece, 0, deflater.deflate(piece));
      }
      return packed.toByteArray();
    } finally {
      deflater.end();
    }
  }

  private byte[] zip() {
    NavigableSet<Integer> places = new TreeSet<>();
    directory.entries().forEach(entry -> places.add(archive.local(entry)));
    out.writeBytes(directory.slice(0, places.first()));
    for (int place : places) {
      moved.put(place, out.size());
      Integer next = places.higher(place);
      int end = next == null ? directory.start() : next;
      out.writeBytes(
          place == archive.local(changed) ? changedEntry() : directory.slice(place, end));
    }
    int start = out.size();
    directory.entries().forEach(entry -> out.writeBytes(header(entry)));
    out.writeBytes(end(start));
    return out.toByteArray();
  }

  /** The local header with the new sizes in it, and the content. */
  private byte[] changedEntry() {
    int local = archive.local(changed);
    int nameEnd = local + 30 + directory.two(local + 26);
    byte[] extra = withoutLarge(directory.slice(nameEnd, archive.contentStart(changed)));
    ByteBuffer entry = buffer(nameEnd - local + extra.length + packed.length);
    entry.put(directory.slice(local, nameEnd)).put(extra).put(packed);
    entry.putShort(6, (short) (entry.getShort(6) & ~SIZES_FOLLOW));
    entry.putInt(14, (int) sum).putInt(18, packed.length).putInt(22, size);
    entry.putShort(28, (short) extra.length);
    return content(entry);
  }

  /** What is told of sizes that need eight bytes goes: ours never do. */
  private static byte[] withoutLarge(byte[] extra) {
    ByteBuffer in = ByteBuffer.wrap(extra).order(ByteOrder.LITTLE_ENDIAN);
    ByteArrayOutputStream kept = new ByteArrayOutputStream();
    int at = 0;
    while (at + 4 <= extra.length) {
      int end = Math.min(extra.length, at + 4 + Short.toUnsignedInt(in.getShort(at + 2)));
      if (in.getShort(at) != ZipDirectory.LARGE) {
        kept.write(extra, at, end - at);
      }
      at = end;
    }
    return kept.toByteArray();
  }

  /** An entry's header in the directory, with its new place. */
  private byte[] header(Entry entry) {
    int from = entry.header();
    ByteBuffer header =
        buffer(entry.headerEnd() - from).put(directory.slice(from, entry.headerEnd()));
    int local = archive.local(entry);
    entry.local().put(header, from, moved.getOrDefault(local, local));
    if (local == archive.local(changed)) {
      header.putShort(8, (short) (header.getShort(8) & ~SIZES_FOLLOW));
      header.putInt(16, (int) sum);
      entry.packed().put(header, from, packed.length);
      entry.size().put(header, from, size);
    }
    return content(header);
  }

  private byte[] end(int start) {
    byte[] comment = directory.comment();
    ByteBuffer end = buffer(ZipDirectory.END_LENGTH + comment.length);
    short count = (short) directory.entries().size();
    end.putInt(ZipDirectory.DIRECTORY_END).putShort((short) 0).putShort((short) 0);
    end.putShort(count).putShort(count).putInt(out.size() - start).putInt(start);
    end.putShort((short) comment.length).put(comment);
    return content(end);
  }

  private static byte[] content(ByteBuffer buffer) {
    byte[] all = new byte[buffer.capacity()];
    buffer.get(0, all);
    return all;
  }

  private static ByteBuffer buffer(int length) {
    return ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
  }
}
