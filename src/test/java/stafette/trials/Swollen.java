package stafette.trials;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * A zip archive with an entry of a gigabyte of zeros. It takes a moment to make: a megabyte is
 * deflated once, and its block repeated.
 */
final class Swollen {
  private static final int BLOCK = 1 << 20;
  private static final int BLOCKS = 1 << 10;
  private static final byte[] LAST_BLOCK = {3, 0};

  private final ByteArrayOutputStream file = new ByteArrayOutputStream();
  private final ByteArrayOutputStream directory = new ByteArrayOutputStream();
  private int entries;

  /** Adds the entry of zeros. */
  Swollen zeros(String name) {
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION, true);
    deflater.setInput(new byte[BLOCK]);
    byte[] deflated = new byte[BLOCK];
    int length = deflater.deflate(deflated, 0, BLOCK, Deflater.SYNC_FLUSH);
    deflater.end();
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    CRC32 check = new CRC32();
    for (int i = 0; i < BLOCKS; i++) {
      packed.write(deflated, 0, length);
      check.update(new byte[BLOCK]);
    }
    packed.writeBytes(LAST_BLOCK);
    entry(name, 8, packed.toByteArray(), (int) check.getValue(), BLOCK * BLOCKS);
    return this;
  }

  /** Adds an entry as it is. */
  Swollen stored(String name, byte[] content) {
    CRC32 check = new CRC32();
    check.update(content);
    entry(name, 0, content, (int) check.getValue(), content.length);
    return this;
  }

  byte[] bytes() {
    int start = file.size();
    file.writeBytes(directory.toByteArray());
    file.writeBytes(words(0x06054b50, 0, entries << 16 | entries, directory.size(), start));
    file.writeBytes(new byte[2]);
    return file.toByteArray();
  }

  private void entry(String name, int method, byte[] packed, int check, int size) {
    byte[] title = name.getBytes(StandardCharsets.UTF_8);
    ByteBuffer common =
        ByteBuffer.allocate(24)
            .order(ByteOrder.LITTLE_ENDIAN)
            .putShort((short) 20)
            .putShort((short) 0)
            .putShort((short) method)
            .putInt(0)
            .putInt(check)
            .putInt(packed.length)
            .putInt(size)
            .putShort((short) title.length);
    byte[] fields = Arrays.copyOf(common.array(), common.position());
    int at = file.size();
    file.writeBytes(words(0x04034b50));
    file.writeBytes(fields);
    file.writeBytes(new byte[2]);
    file.writeBytes(title);
    file.writeBytes(packed);
    directory.writeBytes(words(0x02014b50));
    directory.writeBytes(new byte[] {20, 0});
    directory.writeBytes(fields);
    directory.writeBytes(new byte[12]);
    directory.writeBytes(words(at));
    directory.writeBytes(title);
    entries++;
  }

  private static byte[] words(int... values) {
    ByteBuffer buffer =
        ByteBuffer.allocate(Integer.BYTES * values.length).order(ByteOrder.LITTLE_ENDIAN);
    buffer.asIntBuffer().put(values);
    return buffer.array();
  }
}
