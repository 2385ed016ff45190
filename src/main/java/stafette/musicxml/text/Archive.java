package stafette.musicxml.text;

import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import stafette.musicxml.text.ZipDirectory.Entry;
import stafette.words.Sentence;

/** A zip archive. Nothing in it is unpacked before it is asked for. */
public final class Archive {
  private static final int LOCAL_HEADER = 0x04034b50;
  private static final int ENCRYPTED = 1;

  public static final int STORED = 0;
  static final int DEFLATED = 8;

  private final ZipDirectory directory;

  private Archive(ZipDirectory directory) {
    this.directory = directory;
  }

  /**
   * An archive in memory.
   *
   * @throws UnreadableScore if its table of contents is damaged or names too many files
   */
  public static Archive of(byte[] bytes) throws UnreadableScore {
    return new Archive(ZipDirectory.of(bytes));
  }

  public ZipDirectory directory() {
    return directory;
  }

  public int method(Entry entry) {
    return directory.two(entry.header() + 10);
  }

  public int local(Entry entry) {
    return directory.offset(entry.local().in(directory.bytes()));
  }

  public int packed(Entry entry) {
    return directory.offset(entry.packed().in(directory.bytes()));
  }

  /** How long an entry says that it is; more than any file can be, if it makes no sense. */
  public long size(Entry entry) {
    return entry.size().in(directory.bytes()) & Long.MAX_VALUE;
  }

  /** Where an entry's content begins, behind its own header. */
  public int contentStart(Entry entry) {
    int local = local(entry);
    return local + 30 + directory.two(local + 26) + directory.two(local + 28);
  }

  /**
   * Unpacks one entry.
   *
   * @param most so many bytes it may have
   * @throws UnreadableScore if it has more, or is damaged
   */
  byte[] content(Entry entry, long most) throws UnreadableScore {
    if (size(entry) > most) {
      throw new UnreadableScore(
          Sentence.of(
              "{0} in this compressed score would unpack to {1} MB, and no more than {2} MB are"
                  + " unpacked. If it is sound, unpack it and open it.",
              entry.name(), size(entry) >> 20, most >> 20));
    }
    if ((directory.two(entry.header() + 8) & ENCRYPTED) != 0
        || (method(entry) != STORED && method(entry) != DEFLATED)) {
      throw new UnreadableScore(
          Sentence.of(
              "{0} in this compressed score is encrypted, or packed in a way that is not known"
                  + " here. Export the score again.",
              entry.name()));
    }
    try {
      return checked(entry, method(entry) == STORED ? stored(entry) : inflated(entry));
    } catch (DataFormatException | IndexOutOfBoundsException e) {
      throw ZipDirectory.damaged(Sentence.of("{0} can't be unpacked", entry.name()));
    }
  }

  private byte[] checked(Entry entry, byte[] content) throws DataFormatException {
    CRC32 sum = new CRC32();
    sum.update(content);
    if (sum.getValue() != directory.four(entry.header() + 16)) {
      throw new DataFormatException("another checksum");
    }
    return content;
  }

  private byte[] stored(Entry entry) {
    int from = contentStart(entry);
    return directory.slice(from, directory.offset(from + size(entry)));
  }

  private byte[] inflated(Entry entry) throws DataFormatException {
    if (directory.bytes().getInt(local(entry)) != LOCAL_HEADER) {
      throw new DataFormatException("no header");
    }
    byte[] content = new byte[(int) size(entry)];
    Inflater inflater = new Inflater(true);
    try {
      int from = contentStart(entry);
      inflater.setInput(
          directory.bytes().array(),
          from,
          Math.min(packed(entry), directory.bytes().limit() - from));
      int done = 0;
      while (done < content.length) {
        int more = inflater.inflate(content, done, content.length - done);
        if (more == 0) {
          throw new DataFormatException("cut off");
        }
        done += more;
      }
      return content;
    } finally {
      inflater.end();
    }
  }
}
