package stafette.musicxml.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The bytes of a file. */
class ContainerTest {
  /** The hash of "abc" is the first example of FIPS 180-2, appendix B.1. */
  @Test
  void its_hash_is_worked_out_once() {
    Container container =
        new Container("abc".getBytes(StandardCharsets.US_ASCII), Optional.empty());
    String hash = container.sha256();
    assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", hash);
    assertSame(hash, container.sha256());
  }
}
