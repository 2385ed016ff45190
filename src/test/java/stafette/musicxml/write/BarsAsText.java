package stafette.musicxml.write;

import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Bars of a part as a copyist would read them out, each a line: signs in angle brackets, notes with
 * their value and what stands on them. "A4.16th[" begins a beam, "]" ends it, "(" and ")" a slur.
 */
final class BarsAsText {
  private BarsAsText() {}

  /** All bars of the part of that name. */
  static List<String> of(byte[] score, String part) throws Exception {
    Element root =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(score))
            .getDocumentElement();
    List<String> bars = new ArrayList<>();
    for (Element listed : all(root, "score-part")) {
      if (text(listed, "part-name").equals(Optional.of(part))) {
        for (Element each : children(root, "part")) {
          if (each.getAttribute("id").equals(listed.getAttribute("id"))) {
            children(each, "measure").forEach(measure -> bars.add(bar(measure)));
          }
        }
      }
    }
    return bars;
  }

  private static String bar(Element measure) {
    List<String> said = new ArrayList<>();
    for (Element each : children(measure, "*")) {
      switch (each.getTagName()) {
        case "note" -> said.add(note(each));
        case "direction" -> said.add("<" + direction(each) + ">");
        case "backup" -> said.add("|| ");
        case "attributes" -> said.add(attributes(each));
        default -> {}
      }
    }
    said.removeIf(String::isEmpty);
    return measure.getAttribute("number") + ": " + String.join(" ", said).replace("||  ", "|| ");
  }

  private static String attributes(Element attributes) {
    List<String> said = new ArrayList<>();
    for (Element time : children(attributes, "time")) {
      said.add(text(time, "beats").orElse("") + "/" + text(time, "beat-type").orElse(""));
    }
    for (Element key : children(attributes, "key")) {
      said.add("key " + text(key, "fifths").orElse(""));
    }
    return said.isEmpty() ? "" : "{" + String.join(", ", said) + "}";
  }

  private static String direction(Element direction) {
    List<String> said = new ArrayList<>();
    for (Element type : children(direction, "direction-type")) {
      for (Element sign : children(type, "*")) {
        switch (sign.getTagName()) {
          case "words", "rehearsal" -> said.add(sign.getTextContent());
          case "dynamics" -> children(sign, "*").forEach(mark -> said.add(mark.getTagName()));
          case "harp-pedals" -> said.add("pedals" + pedals(sign));
          default -> said.add(sign.getTagName() + " " + sign.getAttribute("type"));
        }
      }
    }
    return String.join(" ", said);
  }

  private static String pedals(Element diagram) {
    StringBuilder said = new StringBuilder();
    for (Element tuning : children(diagram, "pedal-tuning")) {
      int alter = text(tuning, "pedal-alter").map(BigDecimal::new).orElseThrow().signum();
      said.append(' ')
          .append(text(tuning, "pedal-step").orElse(""))
          .append(List.of("b", "", "#").get(alter + 1));
    }
    return said.toString();
  }

  private static String note(Element note) {
    StringBuilder said = new StringBuilder();
    said.append(children(note, "grace").isEmpty() ? "" : "grace ");
    said.append(children(note, "cue").isEmpty() ? "" : "cue ");
    said.append(children(note, "chord").isEmpty() ? "" : "+");
    said.append(tone(note)).append('.').append(text(note, "type").orElse("bar"));
    said.append("d".repeat(children(note, "dot").size()));
    text(note, "actual-notes").ifPresent(actual -> said.append("/").append(actual));
    for (Element beam : children(note, "beam")) {
      if (beam.getAttribute("number").equals("1")) {
        said.append(beam.getTextContent().equals("begin") ? "[" : "");
        said.append(beam.getTextContent().equals("end") ? "]" : "");
      }
    }
    children(note, "tie").forEach(tie -> said.append(isStart(tie) ? "~" : "^"));
    for (Element slur : all(note, "slur")) {
      said.append(isStart(slur) ? "(" : ")");
    }
    for (Element tuplet : all(note, "tuplet")) {
      boolean bracket = tuplet.getAttribute("bracket").equals("yes");
      said.append(isStart(tuplet) ? (bracket ? "<" : "") : "");
    }
    for (Element tremolo : all(note, "tremolo")) {
      String slashes = "/".repeat(Integer.parseInt(tremolo.getTextContent()));
      String type = tremolo.getAttribute("type");
      said.append(type.equals("start") ? " " + slashes + ">" : "");
      said.append(type.equals("stop") ? "<" + slashes : "");
      said.append(type.equals("single") ? " " + slashes : "");
    }
    for (Element articulations : all(note, "articulations")) {
      children(articulations, "*").forEach(mark -> said.append(sign(mark.getTagName())));
    }
    return said.toString();
  }

  private static String sign(String articulation) {
    return switch (articulation) {
      case "staccato" -> "'";
      case "accent" -> ">";
      case "tenuto" -> "-";
      default -> "!" + articulation;
    };
  }

  private static boolean isStart(Element element) {
    return element.getAttribute("type").equals("start");
  }

  private static String tone(Element note) {
    if (!children(note, "rest").isEmpty()) {
      return "R";
    }
    return text(note, "step").orElse("x")
        + text(note, "alter").map(alter -> alter.startsWith("-") ? "b" : "#").orElse("")
        + text(note, "octave").orElse("")
        + text(note, "accidental").map(sign -> "(" + sign + ")").orElse("");
  }

  private static Optional<String> text(Element element, String name) {
    return all(element, name).stream().map(Node::getTextContent).findFirst();
  }

  private static List<Element> all(Element element, String name) {
    return elements(element.getElementsByTagName(name));
  }

  private static List<Element> children(Element element, String name) {
    return elements(element.getChildNodes()).stream()
        .filter(child -> name.equals("*") || child.getTagName().equals(name))
        .toList();
  }

  private static List<Element> elements(NodeList nodes) {
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      if (nodes.item(i) instanceof Element element) {
        elements.add(element);
      }
    }
    return elements;
  }
}
