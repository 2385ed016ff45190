package stafette.musicxml.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One element with all that stands in it.
 *
 * @param name with its prefix, if it has one
 * @param attributes by name
 * @param text what stands directly in it, trimmed
 * @param children in order
 * @param span the whole element
 */
public record Element(
    String name,
    Map<String, String> attributes,
    String text,
    List<Element> children,
    TextSpan span) {

  public Optional<String> attribute(String wanted) {
    return Optional.ofNullable(attributes.get(wanted));
  }

  public boolean says(String attribute, String value) {
    return value.equals(attributes.get(attribute));
  }

  public boolean has(String child) {
    return children.stream().anyMatch(element -> element.name.equals(child));
  }

  /** The first child of that name. */
  public Optional<Element> child(String wanted) {
    for (Element element : children) {
      if (element.name.equals(wanted)) {
        return Optional.of(element);
      }
    }
    return Optional.empty();
  }

  public List<Element> all(String wanted) {
    return children.stream().filter(element -> element.name.equals(wanted)).toList();
  }

  /** The text of the first child of that name, if there is any. */
  public Optional<String> textOf(String child) {
    return child(child).map(Element::text).filter(found -> !found.isEmpty());
  }
}
