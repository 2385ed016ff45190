package stafette.musicxml.text;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/** The bytes of a file, plain or compressed (.mxl). */
public final class Container {
  private final byte[] bytes;
  private final Optional<String> rootEntry;
  private Optional<String> sha256 = Optional.empty();

  /**
   * A file as it was read.
   *
   * @param bytes the whole file; not to be changed afterwards
   * @param rootEntry the entry that holds the score if the file is a compressed one; empty for
   *     plain MusicXML
   */
  public Container(byte[] bytes, Optional<String> rootEntry) {
    this.bytes = bytes;
    this.rootEntry = rootEntry;
  }

  /** The whole file, not to be changed. */
  public byte[] bytes() {
    return bytes;
  }

  public Optional<String> rootEntry() {
    return rootEntry;
  }

  /** The SHA-256 of the whole file, in hexadecimal; worked out once, when it is first asked for. */
  public synchronized String sha256() {
    String hash = sha256.orElseGet(() -> hashOf(bytes));
    sha256 = Optional.of(hash);
    return hash;
  }

  private static String hashOf(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
