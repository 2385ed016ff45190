package stafette.musicxml.write;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** An element of a text, read by the JDK's own parser. */
record Tag(Element element) {
  static Tag parse(String xml) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      return new Tag(
          factory
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(xml)))
              .getDocumentElement());
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new IllegalArgumentException("no sound XML", e);
    }
  }

  String name() {
    return element.getTagName();
  }

  String text() {
    return element.getTextContent().strip();
  }

  List<Tag> children() {
    List<Tag> children = new ArrayList<>();
    for (int i = 0; i < element.getChildNodes().getLength(); i++) {
      if (element.getChildNodes().item(i) instanceof Element child) {
        children.add(new Tag(child));
      }
    }
    return children;
  }

  /** All that can be reached by going down from child to child by these names. */
  List<Tag> all(String... path) {
    List<Tag> found = List.of(this);
    for (String step : path) {
      found =
          found.stream()
              .flatMap(tag -> tag.children().stream())
              .filter(child -> child.name().equals(step))
              .toList();
    }
    return found;
  }

  Optional<Tag> first(String... path) {
    return all(path).stream().findFirst();
  }

  boolean has(String... path) {
    return !all(path).isEmpty();
  }

  String text(String child, String otherwise) {
    return first(child).map(Tag::text).orElse(otherwise);
  }

  String attribute(String called, String otherwise) {
    return element.hasAttribute(called) ? element.getAttribute(called) : otherwise;
  }
}
