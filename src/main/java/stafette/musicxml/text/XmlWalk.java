package stafette.musicxml.text;

import com.ctc.wstx.api.WstxInputProperties;
import com.ctc.wstx.exc.WstxEOFException;
import com.ctc.wstx.stax.WstxInputFactory;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import org.codehaus.stax2.XMLInputFactory2;
import org.codehaus.stax2.XMLStreamReader2;
import stafette.words.Sentence;

/**
 * Walks over XML text from start tag to start tag, and knows where each stands. A document type is
 * passed over and never opened; entities of its own are refused. Everything that is wrong with the
 * XML becomes an {@link UnreadableScore} with its line.
 *
 * <p>Prefixes are not resolved: files that lean on the DTD to declare them are common.
 */
public final class XmlWalk {
  private static final int DEEPEST = 200;

  private final String text;
  private final XMLStreamReader2 reader;

  private XmlWalk(String text, XMLStreamReader2 reader) {
    this.text = text;
    this.reader = reader;
  }

  /** A walk that stands on the root's start tag. */
  public static XmlWalk open(String text) throws UnreadableScore {
    try {
      XMLStreamReader2 reader =
          (XMLStreamReader2) factory().createXMLStreamReader(new StringReader(text));
      XmlWalk walk = new XmlWalk(text, reader);
      while (walk.next() != XMLStreamConstants.START_ELEMENT) {
        walk.refuseOwnEntities();
      }
      return walk;
    } catch (XMLStreamException e) {
      throw broken(e);
    }
  }

  private static WstxInputFactory factory() {
    WstxInputFactory factory = new WstxInputFactory();
    factory.setProperty(XMLInputFactory2.P_LAZY_PARSING, false);
    factory.setProperty(WstxInputProperties.P_MAX_ELEMENT_DEPTH, DEEPEST);
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, false);
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    return factory;
  }

  public String name() {
    return reader.getLocalName();
  }

  public Optional<String> attribute(String name) {
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      if (reader.getAttributeLocalName(i).equals(name)) {
        return Optional.of(reader.getAttributeValue(i));
      }
    }
    return Optional.empty();
  }

  /** Where the tag begins on which the walk stands. */
  public int start() throws UnreadableScore {
    return (int) reader.getLocationInfo().getStartingCharOffset();
  }

  /** Where the tag ends on which the walk stands. */
  public int end() throws UnreadableScore {
    try {
      return (int) reader.getLocationInfo().getEndingCharOffset();
    } catch (XMLStreamException e) {
      throw broken(e);
    }
  }

  /** Whether the start tag is a whole empty element, such as {@code <chord/>}. */
  public boolean isEmptyElement() throws UnreadableScore {
    try {
      return reader.isEmptyElement();
    } catch (XMLStreamException e) {
      throw broken(e);
    }
  }

  /**
   * Moves on to the next child of an element, from the element's start tag or from the end of a
   * child; false, on the element's end tag, if there is no further one.
   */
  public boolean nextChild() throws UnreadableScore {
    int event = next();
    while (event != XMLStreamConstants.START_ELEMENT && event != XMLStreamConstants.END_ELEMENT) {
      event = next();
    }
    return event == XMLStreamConstants.START_ELEMENT;
  }

  /** Reads the element on whose start tag the walk stands, up to its end tag. */
  public Element element() throws UnreadableScore {
    String name = name();
    Map<String, String> attributes = attributes();
    int start = start();
    StringBuilder content = new StringBuilder();
    List<Element> children = new ArrayList<>();
    while (true) {
      switch (next()) {
        case XMLStreamConstants.START_ELEMENT -> children.add(element());
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA ->
            content.append(
                reader.getTextCharacters(), reader.getTextStart(), reader.getTextLength());
        case XMLStreamConstants.END_ELEMENT -> {
          return new Element(
              name, attributes, content.toString().trim(), children, new TextSpan(start, end()));
        }
        default -> {}
      }
    }
  }

  /** Passes over the element on whose start tag the walk stands, up to its end tag. */
  public void skip() throws UnreadableScore {
    int open = 1;
    while (open > 0) {
      int event = next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        open++;
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        open--;
      }
    }
  }

  /** Makes sure that nothing but comments follows the root. */
  public void finish() throws UnreadableScore {
    while (next() != XMLStreamConstants.END_DOCUMENT) {}
  }

  /** The line on which a character stands, counted from 1. */
  public int lineOf(int offset) {
    return 1 + (int) text.substring(0, offset).chars().filter(c -> c == '\n').count();
  }

  private int next() throws UnreadableScore {
    try {
      int event = reader.next();
      if (event == XMLStreamConstants.ENTITY_REFERENCE) {
        throw new UnreadableScore(
            Sentence.of(
                "Line {0}: the entity &{1}; is not declared, and entities of a file's own are not"
                    + " read. Write the character itself.",
                lineOf(start()), reader.getLocalName()));
      }
      return event;
    } catch (XMLStreamException e) {
      throw broken(e);
    }
  }

  private Map<String, String> attributes() {
    int count = reader.getAttributeCount();
    if (count == 0) {
      return Map.of();
    }
    Map<String, String> attributes = new HashMap<>();
    for (int i = 0; i < count; i++) {
      attributes.put(reader.getAttributeLocalName(i), reader.getAttributeValue(i));
    }
    return attributes;
  }

  private void refuseOwnEntities() throws UnreadableScore {
    if (reader.getEventType() == XMLStreamConstants.DTD
        && text.substring(start(), end()).contains("<!ENTITY")) {
      throw new UnreadableScore(
          Sentence.of(
              "Line {0}: the document type declares entities of its own, which are not read for"
                  + " safety. Export the score again, without them.",
              lineOf(start())));
    }
  }

  private static UnreadableScore broken(XMLStreamException e) {
    int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNumber());
    if (e instanceof WstxEOFException) {
      return new UnreadableScore(
          Sentence.of(
              "Line {0}: the file ends in the middle of the score. It was cut off: copy or export"
                  + " it again.",
              line));
    }
    String message = e.getMessage() == null ? "" : e.getMessage().lines().findFirst().orElse("");
    return new UnreadableScore(
        Sentence.of(
            "Line {0}: this is not well-formed XML ({1}). Export the score again from the notation"
                + " program.",
            line, message));
  }
}
