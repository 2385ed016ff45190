package stafette.keep;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import stafette.words.Refusal;

/** Shows that what was written can be read again, before it replaces anything. */
@FunctionalInterface
public interface RereadProof {
  /** For what nobody reads by a form: its bytes are enough. */
  RereadProof BYTES = bytes -> {};

  RereadProof PDF = frame("%PDF-", "%%EOF\n");

  /**
   * Reads it.
   *
   * @throws Refusal if it can't be read; then nothing is replaced
   */
  void of(byte[] written) throws Refusal;

  /** That it begins as files of its kind do, and ends so. */
  static RereadProof frame(String beginning, String end) {
    byte[] first = beginning.getBytes(StandardCharsets.ISO_8859_1);
    byte[] last = end.getBytes(StandardCharsets.ISO_8859_1);
    return bytes -> {
      int size = bytes.length;
      if (size < first.length + last.length
          || !Arrays.equals(first, Arrays.copyOf(bytes, first.length))
          || !Arrays.equals(last, Arrays.copyOfRange(bytes, size - last.length, size))) {
        throw new IllegalStateException("what was made begins or ends otherwise than its kind");
      }
    };
  }
}
