package stafette.musicxml.write;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.TextSpan;

/** The text of a part while it is changed, element by element. */
final class EditedPart {
  private final String original;

  /** The new texts of elements; empty for those that go. */
  private final Map<TextSpan, String> texts = new LinkedHashMap<>();

  private final Set<TextSpan> silenced = new HashSet<>();
  private final Set<TextSpan> anew = new HashSet<>();

  EditedPart(Origin origin) {
    this.original = origin.text();
  }

  /** An element as it stands by now; empty if it is gone. */
  String textOf(TextSpan element) {
    return texts.getOrDefault(element, element.in(original));
  }

  void edit(TextSpan element, UnaryOperator<String> change) {
    texts.put(element, change.apply(textOf(element)));
  }

  void delete(TextSpan element) {
    texts.put(element, "");
  }

  boolean isGone(TextSpan element) {
    return textOf(element).isEmpty();
  }

  /** Takes note that an element sounds no more. */
  void silence(TextSpan element) {
    silenced.add(element);
  }

  boolean isSilenced(TextSpan element) {
    return silenced.contains(element);
  }

  /** Puts something else in the place of elements that follow one another. */
  void writeAnew(List<TextSpan> elements, String text) {
    elements.forEach(this::delete);
    texts.put(elements.get(0), text);
    anew.addAll(elements);
  }

  boolean isWrittenAnew(TextSpan element) {
    return anew.contains(element);
  }

  /** Whether it sounds as it did and may be joined to what stands beside it. */
  boolean stays(TextSpan element) {
    return !silenced.contains(element) && !anew.contains(element);
  }

  List<Replacement> replacements() {
    return texts.entrySet().stream()
        .filter(entry -> !entry.getValue().equals(entry.getKey().in(original)))
        .map(entry -> replacement(entry.getKey(), entry.getValue()))
        .toList();
  }

  /** An element that goes takes the white space before it along. */
  private Replacement replacement(TextSpan span, String text) {
    int start = span.start();
    while (text.isEmpty() && Character.isWhitespace(original.charAt(start - 1))) {
      start--;
    }
    return new Replacement(new TextSpan(start, span.end()), text);
  }
}
