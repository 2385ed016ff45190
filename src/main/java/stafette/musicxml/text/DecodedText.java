package stafette.musicxml.text;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.words.Sentence;

/**
 * The text of an XML file, decoded strictly: by its byte-order mark, else as UTF-16 if the first
 * bytes show it, else by its XML declaration, else as UTF-8 (XML 1.0, appendix F).
 *
 * @param text without byte-order mark
 * @param charset how it was encoded
 * @param byteOrderMark whether the file begins with one
 */
public record DecodedText(String text, Charset charset, boolean byteOrderMark) {
  private static final Charset UTF_32BE = Charset.forName("UTF-32BE");
  private static final Charset UTF_32LE = Charset.forName("UTF-32LE");

  /** Those of four bytes first: one of them begins like one of two. */
  private static final List<Charset> MARKED =
      List.of(
          UTF_32BE,
          UTF_32LE,
          StandardCharsets.UTF_8,
          StandardCharsets.UTF_16BE,
          StandardCharsets.UTF_16LE);

  private static final Pattern DECLARED =
      Pattern.compile("^<\\?xml[^>]{0,200}?encoding\\s*=\\s*[\"']([^\"'>]{1,60})[\"']");

  private static final int PIECE = 1 << 16;

  /**
   * Decodes a file.
   *
   * @throws UnreadableScore if the bytes are no text in their encoding, or could not be written in
   *     it again
   */
  public static DecodedText of(byte[] bytes) throws UnreadableScore {
    for (Charset charset : MARKED) {
      byte[] mark = "\uFEFF".getBytes(charset);
      if (startsWith(bytes, mark)) {
        return new DecodedText(decode(bytes, mark.length, charset), charset, true);
      }
    }
    Charset charset = unmarked(bytes);
    String text = decode(bytes, 0, charset);
    if (!canBeWritten(text, charset, bytes)) {
      throw new UnreadableScore(
          Sentence.of(
              "The text is encoded as {0}, in which it can't be written again as it was. Export the"
                  + " score again as UTF-8.",
              charset.name()));
    }
    return new DecodedText(text, charset, false);
  }

  /**
   * Whether the text would become the same bytes again. Those of one Unicode encoding or of one
   * byte a character always do; some encodings can only be read, and some shift in several ways.
   */
  private static boolean canBeWritten(String text, Charset charset, byte[] bytes) {
    return charset.name().startsWith("UTF-")
        || (charset.canEncode()
            && (charset.newEncoder().maxBytesPerChar() == 1
                || Arrays.equals(text.getBytes(charset), bytes)));
  }

  private static Charset unmarked(byte[] bytes) throws UnreadableScore {
    for (Charset wide : List.of(StandardCharsets.UTF_16BE, StandardCharsets.UTF_16LE)) {
      if (startsWith(bytes, "<".getBytes(wide))) {
        return wide;
      }
    }
    String head = new String(bytes, 0, Math.min(bytes.length, 400), StandardCharsets.ISO_8859_1);
    Matcher declared = DECLARED.matcher(head);
    return declared.find() ? declared(declared.group(1)) : StandardCharsets.UTF_8;
  }

  /**
   * A declaration that could be read byte by byte can't be in a wide encoding, whatever it says.
   */
  private static Charset declared(String name) throws UnreadableScore {
    if (name.toUpperCase(Locale.ROOT).matches("UTF-?(16|32).*")) {
      return StandardCharsets.UTF_8;
    }
    try {
      return Charset.forName(name);
    } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
      throw new UnreadableScore(
          Sentence.of(
              "The file says that its text is encoded as \"{0}\", which is not known here. Export"
                  + " the score again as UTF-8.",
              name));
    }
  }

  private static String decode(byte[] bytes, int from, Charset charset) throws UnreadableScore {
    CharsetDecoder decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes, from, bytes.length - from);
    StringBuilder text = new StringBuilder(in.remaining());
    CharBuffer piece = CharBuffer.allocate(PIECE);
    CoderResult result = CoderResult.OVERFLOW;
    while (result.isOverflow()) {
      result = decoder.decode(in, piece, true);
      text.append(piece.flip());
      piece.clear();
    }
    if (!result.isError()) {
      result = decoder.flush(piece);
    }
    if (result.isError()) {
      throw new UnreadableScore(
          Sentence.of(
              "The byte at offset {0} is no {1} text. Export the score again, as UTF-8, or correct"
                  + " the encoding that its first line declares.",
              in.position(), charset.name()));
    }
    return text.append(piece.flip()).toString();
  }

  private static boolean startsWith(byte[] bytes, byte[] head) {
    return bytes.length >= head.length
        && Arrays.equals(bytes, 0, head.length, head, 0, head.length);
  }
}
