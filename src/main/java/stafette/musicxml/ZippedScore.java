package stafette.musicxml;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import stafette.words.Sentence;

/**
 * The score inside a compressed file (.mxl): the first root file of META-INF/container.xml that is
 * MusicXML.
 */
final class ZippedScore {
  private static final String CONTAINER = "META-INF/container.xml";
  private static final String MEDIA_TYPE = "application/vnd.recordare.musicxml";
  private static final int MOST_ENTRIES = 1_000;
  private static final int MOST_BYTES = 256 << 20;

  /** Above this an archive swells further than any score does. */
  private static final int MOST_SWELLING = 250;

  private static final int SMALL_BYTES = 16 << 20;

  private final String entry;
  private final byte[] bytes;

  private ZippedScore(String entry, byte[] bytes) {
    this.entry = entry;
    this.bytes = bytes;
  }

  /** Its name in the archive. */
  String entry() {
    return entry;
  }

  byte[] bytes() {
    return bytes;
  }

  /** Whether the bytes begin like a zip archive. */
  static boolean isZip(byte[] bytes) {
    return bytes.length > 3
        && bytes[0] == 'P'
        && bytes[1] == 'K'
        && (bytes[2] == 3 || bytes[2] == 5);
  }

  static ZippedScore in(byte[] archive) throws UnreadableScore {
    Map<String, byte[]> entries = inflate(archive);
    for (String name : rootFiles(entries)) {
      byte[] content = entries.get(name);
      if (content != null) {
        return new ZippedScore(name, content);
      }
    }
    throw new UnreadableScore(
        Sentence.of(
            "This zip archive holds no MusicXML score. Export the score as MusicXML (.musicxml or"
                + " .mxl)."));
  }

  private static List<String> rootFiles(Map<String, byte[]> entries) throws UnreadableScore {
    byte[] container = entries.get(CONTAINER);
    if (container == null) {
      return entries.keySet().stream()
          .filter(name -> name.endsWith(".musicxml") || name.endsWith(".xml"))
          .toList();
    }
    Element root = XmlWalk.open(DecodedText.of(container).text()).element();
    return root.all("rootfiles").stream()
        .flatMap(list -> list.all("rootfile").stream())
        .filter(file -> file.attribute("media-type").orElse(MEDIA_TYPE).startsWith(MEDIA_TYPE))
        .map(file -> file.attribute("full-path"))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Map<String, byte[]> inflate(byte[] archive) throws UnreadableScore {
    Map<String, byte[]> entries = new LinkedHashMap<>();
    long most = Math.min(MOST_BYTES, Math.max(SMALL_BYTES, (long) archive.length * MOST_SWELLING));
    long left = most;
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        byte[] content = zip.readNBytes((int) left + 1);
        left -= content.length;
        if (left < 0 || entries.size() >= MOST_ENTRIES) {
          throw new UnreadableScore(
              Sentence.of(
                  "This compressed score would unpack to more than {0} MB or {1} files. If it is"
                      + " sound, unpack it and open the .musicxml file inside.",
                  most >> 20, MOST_ENTRIES));
        }
        entries.putIfAbsent(entry.getName(), content);
      }
    } catch (IOException | IllegalArgumentException e) {
      throw new UnreadableScore(
          Sentence.of(
              "This compressed score (.mxl) is damaged: {0}. Copy or export it again.",
              String.valueOf(e.getMessage())));
    }
    return entries;
  }
}
