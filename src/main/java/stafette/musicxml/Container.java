package stafette.musicxml;

import java.util.Optional;

/** The bytes of a file, plain or compressed (.mxl). */
public final class Container {
  private final byte[] bytes;
  private final Optional<String> rootEntry;

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
}
