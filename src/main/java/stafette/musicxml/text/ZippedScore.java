package stafette.musicxml.text;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stafette.musicxml.text.ZipDirectory.Entry;
import stafette.words.Sentence;

/**
 * The score inside a compressed file (.mxl): the first root file of META-INF/container.xml that is
 * MusicXML. Nothing else in it is unpacked.
 */
public final class ZippedScore {
  private static final String CONTAINER = "META-INF/container.xml";
  private static final String MEDIA_TYPE = "application/vnd.recordare.musicxml";
  private static final long MOST_BYTES = 128 << 20;
  private static final long MOST_CONTAINER_BYTES = 1 << 20;

  /** Above this an archive swells further than any score does. */
  private static final int MOST_SWELLING = 250;

  private static final long SMALL_BYTES = 16 << 20;

  private final String entry;
  private final byte[] bytes;

  private ZippedScore(String entry, byte[] bytes) {
    this.entry = entry;
    this.bytes = bytes;
  }

  /** Its name in the archive. */
  public String entry() {
    return entry;
  }

  /** Its content; not to be changed. */
  public byte[] bytes() {
    return bytes;
  }

  /** Whether the bytes begin like a zip archive. */
  public static boolean isZip(byte[] bytes) {
    return bytes.length > 3
        && bytes[0] == 'P'
        && bytes[1] == 'K'
        && (bytes[2] == 3 || bytes[2] == 5);
  }

  public static ZippedScore in(byte[] bytes) throws UnreadableScore {
    Archive archive = Archive.of(bytes);
    long most = most(bytes.length);
    for (String name : rootFiles(archive, most)) {
      Optional<Entry> entry = archive.directory().entry(name);
      if (entry.isPresent()) {
        return new ZippedScore(name, archive.content(entry.get(), most));
      }
    }
    throw new UnreadableScore(
        Sentence.of(
            "This zip archive holds no MusicXML score. Export the score as MusicXML (.musicxml or"
                + " .mxl)."));
  }

  private static long most(int archiveBytes) {
    return Math.min(MOST_BYTES, Math.max(SMALL_BYTES, (long) archiveBytes * MOST_SWELLING));
  }

  /** Where nothing in the archive says which: any that can be unpacked, before what can't. */
  private static List<String> rootFiles(Archive archive, long most) throws UnreadableScore {
    Optional<Entry> container = archive.directory().entry(CONTAINER);
    if (container.isEmpty()) {
      return archive.directory().entries().stream()
          .sorted(Comparator.comparing(entry -> archive.size(entry) > most))
          .map(Entry::name)
          .filter(name -> name.endsWith(".musicxml") || name.endsWith(".xml"))
          .toList();
    }
    byte[] content = archive.content(container.get(), MOST_CONTAINER_BYTES);
    Element root = XmlWalk.open(DecodedText.of(content).text()).element();
    return root.all("rootfiles").stream()
        .flatMap(list -> list.all("rootfile").stream())
        .filter(file -> file.attribute("media-type").orElse(MEDIA_TYPE).startsWith(MEDIA_TYPE))
        .map(file -> file.attribute("full-path"))
        .flatMap(Optional::stream)
        .toList();
  }
}
