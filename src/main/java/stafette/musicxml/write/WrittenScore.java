package stafette.musicxml.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.text.ZippedScore;
import stafette.words.Sentence;

/** A score with a plan written into it. */
public final class WrittenScore {
  private static final String ENTRY = "score.musicxml";
  private static final String CONTAINER =
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<container><rootfiles><rootfile full-path=\""
          + ENTRY
          + "\"/></rootfiles></container>\n";

  private final byte[] bytes;
  private final List<Replacement> replacements;
  private final List<Sentence> changes;

  WrittenScore(byte[] bytes, List<Replacement> replacements, List<Sentence> changes) {
    this.bytes = bytes;
    this.replacements = List.copyOf(replacements);
    this.changes = List.copyOf(changes);
  }

  /** The whole file, not to be changed. */
  public byte[] bytes() {
    return bytes;
  }

  /** The score alone: of a compressed file what is packed in it, of others the same bytes. */
  public byte[] unpacked() {
    try {
      return ZippedScore.isZip(bytes) ? ZippedScore.in(bytes).bytes() : bytes;
    } catch (UnreadableScore e) {
      throw new IllegalStateException("what was packed can't be unpacked", e);
    }
  }

  /** The score in a compressed file; the same bytes if it is compressed already. */
  public byte[] packed() {
    if (ZippedScore.isZip(bytes)) {
      return bytes;
    }
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(packed)) {
      add(zip, "META-INF/container.xml", CONTAINER.getBytes(StandardCharsets.UTF_8));
      add(zip, ENTRY, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("memory can't be written to", e);
    }
    return packed.toByteArray();
  }

  private static void add(ZipOutputStream zip, String name, byte[] content) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(0);
    zip.putNextEntry(entry);
    zip.write(content);
  }

  /** Where its text differs from the score's, by place. */
  public List<Replacement> replacements() {
    return replacements;
  }

  /** A sentence for each part that was changed; empty if the score had it all already. */
  public List<Sentence> changes() {
    return changes;
  }
}
