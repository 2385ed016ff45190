package stafette.musicxml.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Changes to one text, in order and without overlap. Outside them the text stays as it is, and
 * undoing them must give it back.
 *
 * @param original the text
 * @param replacements by place
 */
public record Splice(String original, List<Replacement> replacements) {
  /**
   * @throws IllegalStateException if two changes overlap
   */
  public static Splice of(String original, List<Replacement> changes) {
    List<Replacement> sorted = new ArrayList<>(changes);
    sorted.sort(Comparator.comparingInt(change -> change.span().start()));
    for (int i = 1; i < sorted.size(); i++) {
      if (sorted.get(i).span().start() < sorted.get(i - 1).span().end()) {
        throw new IllegalStateException(
            "two changes overlap: " + sorted.get(i - 1) + " and " + sorted.get(i));
      }
    }
    return new Splice(original, List.copyOf(sorted));
  }

  /**
   * The text with the changes made.
   *
   * @throws IllegalStateException if undoing them would not give the original back
   */
  public String changed() {
    StringBuilder text = new StringBuilder();
    int from = 0;
    for (Replacement change : replacements) {
      text.append(original, from, change.span().start()).append(change.text());
      from = change.span().end();
    }
    String result = text.append(original, from, original.length()).toString();
    if (!undone(result).equals(original)) {
      throw new IllegalStateException("undoing the changes does not give the file back");
    }
    return result;
  }

  private String undone(String result) {
    StringBuilder text = new StringBuilder();
    int from = 0;
    int shift = 0;
    for (Replacement change : replacements) {
      int start = change.span().start() + shift;
      text.append(result, from, start).append(change.span().in(original));
      from = start + change.text().length();
      shift += change.text().length() - (change.span().end() - change.span().start());
    }
    return text.append(result, from, result.length()).toString();
  }
}
