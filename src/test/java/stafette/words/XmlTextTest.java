package stafette.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.StringReader;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Which characters XML can hold. */
class XmlTextTest {
  @Test
  void the_first_character_that_it_cannot_hold_is_named() {
    assertEquals(Optional.of("U+0007"), XmlText.refused("Fl\u0007ute\u001b 1"));
    assertEquals(Optional.of("U+D800"), XmlText.refused("Flute \ud800"));
    assertEquals(Optional.of("U+FFFF"), XmlText.refused("\uffff"));
    assertEquals(Optional.empty(), XmlText.refused("Flöte 1 ♭ \ud834\udd1e <&\">'"));
  }

  /** Held against the JDK's own parser. */
  @Property(tries = 300)
  void a_parser_takes_just_what_is_said(@ForAll @IntRange(max = 0xFFFF) int codePoint)
      throws Exception {
    agrees(codePoint);
  }

  @Test
  void a_parser_takes_just_what_is_said_of_the_edges() throws Exception {
    for (int codePoint = 0; codePoint <= 0x21; codePoint++) {
      agrees(codePoint);
    }
    for (int edge : new int[] {0x7F, 0xD7FF, 0xD800, 0xDFFF, 0xE000, 0xFFFD, 0xFFFE, 0x10000}) {
      agrees(edge);
    }
  }

  private static void agrees(int codePoint) throws Exception {
    String name = String.format("&#x%X;", codePoint);
    if (XmlText.canHold(codePoint)) {
      parse("<name>" + name + "</name>");
    } else {
      assertThrows(SAXException.class, () -> parse("<name>" + name + "</name>"));
    }
  }

  private static void parse(String text) throws Exception {
    var builder = DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder();
    builder.setErrorHandler(new DefaultHandler());
    builder.parse(new InputSource(new StringReader(text)));
  }
}
