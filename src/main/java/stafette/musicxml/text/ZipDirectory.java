package stafette.musicxml.text;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.words.Sentence;

/**
 * The table of contents of a zip archive, by the .ZIP File Format Specification of PKWARE, 6.3.10.
 * Numbers have two, four or eight bytes, the low one first.
 */
public final class ZipDirectory {
  private static final int DIRECTORY_HEADER = 0x02014b50;
  public static final int DIRECTORY_END = 0x06054b50;
  private static final int LARGE_DIRECTORY_END = 0x06064b50;
  private static final int LARGE_DIRECTORY_LOCATOR = 0x07064b50;
  public static final int END_LENGTH = 22;
  private static final int LOCATOR_LENGTH = 20;
  private static final int LONGEST_COMMENT = 0xFFFF;
  private static final int MOST_ENTRIES = 1_000;
  private static final long ELSEWHERE = 0xFFFFFFFFL;

  /** The extra field that holds what is too large for four bytes. */
  public static final int LARGE = 1;

  private final ByteBuffer bytes;
  private final List<Entry> entries = new ArrayList<>();
  private final int end;
  private long start;
  private long count;

  private ZipDirectory(ByteBuffer bytes, int end) {
    this.bytes = bytes;
    this.end = end;
  }

  /** A number in the directory: four bytes, or eight in an extra field. */
  public record Field(int at, boolean wide) {
    long in(ByteBuffer bytes) {
      return wide ? bytes.getLong(at) : Integer.toUnsignedLong(bytes.getInt(at));
    }

    /** Puts a number there in a copy of the header that begins at {@code from}. */
    public void put(ByteBuffer header, int from, long value) {
      if (wide) {
        header.putLong(at - from, value);
      } else {
        header.putInt(at - from, (int) value);
      }
    }
  }

  /**
   * One file in the archive.
   *
   * @param name its path
   * @param header where its header begins in the directory
   * @param headerEnd where it ends
   * @param size how long it is unpacked
   * @param packed how long it is packed
   * @param local where its own header begins, with its content after it
   */
  public record Entry(
      String name, int header, int headerEnd, Field size, Field packed, Field local) {}

  /**
   * Reads the directory.
   *
   * @throws UnreadableScore if there is none, or it is damaged, or names too many files
   */
  public static ZipDirectory of(byte[] archive) throws UnreadableScore {
    ByteBuffer bytes = ByteBuffer.wrap(archive).order(ByteOrder.LITTLE_ENDIAN);
    try {
      ZipDirectory result = new ZipDirectory(bytes, endOf(bytes));
      result.readEnd();
      result.readEntries();
      return result;
    } catch (IndexOutOfBoundsException e) {
      throw damaged(Sentence.of("its table of contents is cut off"));
    }
  }

  private static int endOf(ByteBuffer bytes) throws UnreadableScore {
    int last = bytes.limit() - END_LENGTH;
    for (int at = last; at >= Math.max(0, last - LONGEST_COMMENT); at--) {
      if (bytes.getInt(at) == DIRECTORY_END && commentLength(bytes, at) <= last - at) {
        return at;
      }
    }
    throw damaged(Sentence.of("its table of contents is missing"));
  }

  private static int commentLength(ByteBuffer bytes, int end) {
    return Short.toUnsignedInt(bytes.getShort(end + 20));
  }

  private void readEnd() throws UnreadableScore {
    count = two(end + 10);
    start = four(end + 16);
    int locator = end - LOCATOR_LENGTH;
    if (start == ELSEWHERE && locator > 0 && bytes.getInt(locator) == LARGE_DIRECTORY_LOCATOR) {
      int large = offset(bytes.getLong(locator + 8));
      if (bytes.getInt(large) == LARGE_DIRECTORY_END) {
        count = bytes.getLong(large + 32);
        start = bytes.getLong(large + 48);
      }
    }
    if (count > MOST_ENTRIES) {
      throw new UnreadableScore(
          Sentence.of(
              "This compressed score holds more than {0} files. If it is sound, unpack it and open"
                  + " the .musicxml file inside.",
              MOST_ENTRIES));
    }
  }

  private void readEntries() throws UnreadableScore {
    int at = offset(start);
    for (int i = 0; i < count; i++) {
      if (bytes.getInt(at) != DIRECTORY_HEADER) {
        throw damaged(Sentence.of("its table of contents is cut off"));
      }
      int nameEnd = at + 46 + two(at + 28);
      int extraEnd = nameEnd + two(at + 30);
      int headerEnd = extraEnd + two(at + 32);
      String name = new String(slice(at + 46, nameEnd), StandardCharsets.UTF_8);
      Field size = new Field(at + 24, false);
      Field packed = new Field(at + 20, false);
      Field local = new Field(at + 42, false);
      int large = largeFields(nameEnd, extraEnd);
      Field[] fields = {size, packed, local};
      for (int k = 0; k < fields.length; k++) {
        if (fields[k].in(bytes) == ELSEWHERE && large > 0) {
          fields[k] = new Field(large, true);
          large += Long.BYTES;
        }
      }
      slice(extraEnd, headerEnd);
      if (offset(fields[2].in(bytes)) >= start) {
        throw damaged(Sentence.of("its table of contents is cut off"));
      }
      entries.add(new Entry(name, at, headerEnd, fields[0], fields[1], fields[2]));
      at = headerEnd;
    }
  }

  /** Where the wide fields of an entry begin; 0 if it has none. */
  private int largeFields(int extra, int extraEnd) {
    for (int at = extra; at + 4 <= extraEnd; at += 4 + two(at + 2)) {
      if (two(at) == LARGE) {
        return at + 4;
      }
    }
    return 0;
  }

  public ByteBuffer bytes() {
    return bytes;
  }

  public List<Entry> entries() {
    return entries;
  }

  /** The first entry of that name. */
  public Optional<Entry> entry(String name) {
    return entries.stream().filter(entry -> entry.name().equals(name)).findFirst();
  }

  /** Where the directory begins, behind all entries. */
  public int start() {
    return (int) start;
  }

  /** The remark that belongs to the whole archive. */
  public byte[] comment() {
    return slice(end + END_LENGTH, end + END_LENGTH + commentLength(bytes, end));
  }

  /**
   * A copy of some bytes.
   *
   * @throws IndexOutOfBoundsException if there are not so many
   */
  public byte[] slice(int from, int to) {
    if (from > to || to > bytes.limit()) {
      throw new IndexOutOfBoundsException(from + " to " + to + " of " + bytes.limit());
    }
    byte[] copy = new byte[to - from];
    bytes.get(from, copy);
    return copy;
  }

  public int two(int at) {
    return Short.toUnsignedInt(bytes.getShort(at));
  }

  long four(int at) {
    return Integer.toUnsignedLong(bytes.getInt(at));
  }

  /**
   * A place in the archive.
   *
   * @throws IndexOutOfBoundsException if it lies outside
   */
  int offset(long value) {
    if (value < 0 || value > bytes.limit()) {
      throw new IndexOutOfBoundsException("" + value);
    }
    return (int) value;
  }

  static UnreadableScore damaged(Sentence why) {
    return new UnreadableScore(
        Sentence.of("This compressed score (.mxl) is damaged: {0}. Copy or export it again.", why));
  }
}
