package stafette.trials;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Spoils a file's text and bytes: cut off, wrongly encoded, with what XML forbids. */
final class BytesSpoiler {
  private static final List<String> ENCODINGS =
      List.of(
          "UTF-16",
          "UTF-16LE",
          "UTF-16BE",
          "UTF-32",
          "ISO-8859-1",
          "US-ASCII",
          "windows-1252",
          "ISO-2022-CN",
          "ISO-2022-JP",
          "IBM037",
          "Shift_JIS",
          "UTF-7",
          "x-no-such",
          "GB18030",
          "x-COMPOUND_TEXT",
          "CESU-8",
          "JIS_X0212-1990");

  private BytesSpoiler() {}

  static byte[] spoilt(String text, Dice dice) {
    return switch (dice.between(0, 8)) {
      case 0 -> utf8(text.substring(0, dice.between(0, text.length())));
      case 1, 2 -> flipped(utf8(text), dice);
      case 3 -> declared(text, dice);
      case 4 -> encoded(text, dice.of(ENCODINGS));
      case 5 -> utf8(inserted(text, dice));
      case 6 -> utf8(text.replace("\n", dice.of("\r\n", "\r", "", "\n\n")));
      case 7 -> utf8("\ufeff" + (dice.in100(50) ? "\ufeff" : "") + text);
      default -> utf8(cutOut(text, dice));
    };
  }

  static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] flipped(byte[] bytes, Dice dice) {
    for (int i = dice.between(1, 4); i > 0 && bytes.length > 0; i--) {
      bytes[dice.between(0, bytes.length - 1)] =
          dice.of(0, 27, 255, 60, 62, 38, 34, dice.between(0, 255)).byteValue();
    }
    return bytes;
  }

  /** Says one encoding and has another, or the same. */
  private static byte[] declared(String text, Dice dice) {
    String says = dice.of(ENCODINGS);
    return encoded(
        text.replace("UTF-8", says), dice.in100(50) ? says : dice.of("UTF-8", dice.of(ENCODINGS)));
  }

  private static byte[] encoded(String text, String name) {
    try {
      ByteBuffer buffer = Charset.forName(name).encode(text);
      byte[] encoded = new byte[buffer.remaining()];
      buffer.get(encoded);
      return encoded;
    } catch (IllegalArgumentException | UnsupportedOperationException e) {
      return utf8(text);
    }
  }

  private static String inserted(String text, Dice dice) {
    int at = dice.between(0, text.length());
    String odd =
        dice.of(
            "\u0000",
            "\u001b[2J",
            "&#0;",
            "&#x1b;",
            "&#xD800;",
            "&nbsp;",
            "&x;",
            "<!-- <measure> -->",
            "<![CDATA[<note>]]>",
            "<?xml version=\"1.0\"?>",
            "<?other x?>",
            "<!DOCTYPE score-partwise [<!ENTITY x \"y\">]>",
            "\ud83c",
            "\uffff",
            "]]>",
            "<x>".repeat(1200),
            "</part>",
            "xmlns:a=\"b\" ",
            " ".repeat(5000));
    return text.substring(0, at) + odd + text.substring(at);
  }

  private static String cutOut(String text, Dice dice) {
    int from = dice.between(0, text.length());
    int to = Math.min(text.length(), from + dice.of(1, 2, 10, 100, 1000));
    return text.substring(0, from) + text.substring(to);
  }
}
