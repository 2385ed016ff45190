package stafette.trials;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.Text;
import org.xml.sax.InputSource;

/**
 * An element that can be spoilt: anything may stand in anything, attributes twice. It has text or
 * children, as all of MusicXML's elements do.
 */
final class Node {
  /** One attribute. */
  record Attribute(String name, String value) {}

  private final List<Attribute> attributes = new ArrayList<>();
  private final List<Node> children = new ArrayList<>();
  private String name;
  private String text = "";

  private Node(String name) {
    this.name = name;
  }

  static Node of(String name, Node... children) {
    Node node = new Node(name);
    node.children.addAll(List.of(children));
    return node;
  }

  static Node of(String name, String text) {
    Node node = new Node(name);
    node.text = text;
    return node;
  }

  static Node of(String name, int number) {
    return of(name, Integer.toString(number));
  }

  /** Reads a sound text without opening what its document type names. */
  static Node parse(String xml) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(null);
      return of(builder.parse(new InputSource(new StringReader(xml))).getDocumentElement());
    } catch (Exception e) {
      throw new IllegalArgumentException("no sound XML", e);
    }
  }

  private static Node of(Element element) {
    Node node = new Node(element.getTagName());
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      if (element.getAttributes().item(i) instanceof Attr attribute) {
        node.with(attribute.getName(), attribute.getValue());
      }
    }
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < element.getChildNodes().getLength(); i++) {
      if (element.getChildNodes().item(i) instanceof Element child) {
        node.add(of(child));
      } else if (element.getChildNodes().item(i) instanceof Text words) {
        text.append(words.getData());
      }
    }
    node.text = node.children.isEmpty() ? text.toString() : "";
    return node;
  }

  Node copy() {
    Node copy = new Node(name);
    copy.text = text;
    copy.attributes.addAll(attributes);
    children.forEach(child -> copy.children.add(child.copy()));
    return copy;
  }

  Node with(String attribute, String value) {
    attributes.add(new Attribute(attribute, value));
    return this;
  }

  Node add(Node... more) {
    children.addAll(List.of(more));
    return this;
  }

  String name() {
    return name;
  }

  void rename(String other) {
    name = other;
  }

  String text() {
    return text;
  }

  void say(String other) {
    text = other;
  }

  List<Attribute> attributes() {
    return attributes;
  }

  List<Node> children() {
    return children;
  }

  Optional<Node> child(String called) {
    return children.stream().filter(child -> child.name.equals(called)).findFirst();
  }

  Optional<String> attribute(String called) {
    return attributes.stream()
        .filter(attribute -> attribute.name.equals(called))
        .map(Attribute::value)
        .findFirst();
  }

  /** This element and all within it. */
  List<Node> all() {
    List<Node> all = new ArrayList<>();
    collect(all);
    return all;
  }

  List<Node> all(Predicate<Node> wanted) {
    return all().stream().filter(wanted).toList();
  }

  List<Node> all(String called) {
    return all(node -> node.name.equals(called));
  }

  private void collect(List<Node> all) {
    all.add(this);
    children.forEach(child -> child.collect(all));
  }

  /** The text of a file. */
  String document() {
    StringBuilder out = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    print(out, "");
    return out.toString();
  }

  private void print(StringBuilder out, String indent) {
    out.append(indent).append('<').append(name);
    attributes.forEach(
        attribute ->
            out.append(' ')
                .append(attribute.name)
                .append("=\"")
                .append(escaped(attribute.value).replace("\"", "&quot;"))
                .append('"'));
    if (children.isEmpty() && text.isEmpty()) {
      out.append("/>\n");
    } else if (children.isEmpty()) {
      out.append('>').append(escaped(text)).append("</").append(name).append(">\n");
    } else {
      out.append(">").append(escaped(text)).append('\n');
      children.forEach(child -> child.print(out, indent + " "));
      out.append(indent).append("</").append(name).append(">\n");
    }
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;");
  }
}
