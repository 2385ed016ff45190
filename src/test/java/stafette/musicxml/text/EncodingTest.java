package stafette.musicxml.text;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stafette.musicxml.read.Document;
import stafette.musicxml.read.MusicXmlReader;
import stafette.musicxml.read.Xml;
import stafette.musicxml.write.TwoParts;

/** Whatever is read can be written again in its own encoding. */
class EncodingTest {
  private static final String SCORE = TwoParts.score(Xml.rest(48));

  /** Every encoding of the platform in which a score can be declared, but for those below. */
  static Stream<String> encodings() {
    return Charset.availableCharsets().values().stream()
        .map(Charset::name)
        .filter(name -> !name.startsWith("UTF-") && !name.startsWith("X-UTF"));
  }

  @ParameterizedTest
  @MethodSource("encodings")
  void a_score_in_any_encoding_is_written_again_or_refused_in_words(String name) throws Exception {
    byte[] ascii = ascii(declared(name));
    try {
      Document read = MusicXmlReader.read(ascii);
      assertArrayEquals(ascii, read.origin().text().getBytes(read.origin().charset()), name);
      byte[] written = TwoParts.write(read, TwoParts.plan(read, 2, 9)).bytes();
      assertEquals(8, TwoParts.strokes(MusicXmlReader.read(written), "P2").size());
    } catch (UnreadableScore expected) {
      assertTrue(String.valueOf(expected.getMessage()).contains("xport"), name);
    }
  }

  /** JDK 17 reads it and has no encoder for it. */
  @Test
  void an_encoding_that_can_only_be_read_is_refused_in_words() {
    assertTrue(refusal("ISO-2022-CN", new byte[0]).contains("can't be written again as it was"));
  }

  /** Shifts to a double-byte set and back, which an encoder would leave out. */
  @Test
  void a_text_that_would_be_shifted_otherwise_is_refused_in_words() {
    byte[] shifts = {0x1B, '$', 'B', 0x1B, '(', 'B'};
    assertTrue(refusal("ISO-2022-JP", shifts).contains("ISO-2022-JP"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ISO-2022-JP", "Shift_JIS", "GB18030", "windows-1252", "UTF-8"})
  void usual_encodings_are_read_and_written(String name) throws Exception {
    byte[] bytes = declared(name).getBytes(Charset.forName(name));
    Document read = MusicXmlReader.read(bytes);
    assertEquals(Charset.forName(name), read.origin().charset());
    byte[] written = TwoParts.write(read, TwoParts.plan(read, 2, 9)).bytes();
    assertEquals(8, TwoParts.strokes(MusicXmlReader.read(written), "P2").size());
  }

  /** Longer than one piece in which texts are decoded, with a letter of two bytes at its seam. */
  @Test
  void letters_at_the_seam_of_two_pieces_stay_whole() throws Exception {
    for (int before = 65_400; before < 65_540; before++) {
      String text = "<a>" + "x".repeat(before) + "\u00e4\ud834\udd1e</a>";
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      assertEquals(text, DecodedText.of(bytes).text());
    }
  }

  private static String refusal(String encoding, byte[] inside) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes(ascii("<?xml version=\"1.0\" encoding=\"" + encoding + "\"?><a>"));
    bytes.writeBytes(inside);
    bytes.writeBytes(ascii("</a>"));
    return String.valueOf(
        assertThrows(UnreadableScore.class, () -> DecodedText.of(bytes.toByteArray()))
            .getMessage());
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static String declared(String encoding) {
    return SCORE.replace("UTF-8", encoding);
  }
}
