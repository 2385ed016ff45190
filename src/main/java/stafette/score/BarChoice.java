package stafette.score;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stafette.time.Bar;
import stafette.time.Bars;
import stafette.time.Span;
import stafette.words.Sentence;

/**
 * Some bars of a score, as people ask for them.
 *
 * @param text "12-20" or "12" by printed numbers, "#12-#20" or "#12" counted from 1
 */
public record BarChoice(String text) {
  private static final Pattern FORM = Pattern.compile("\\s*([^-]+?)\\s*(?:[-–]\\s*([^-]+?)\\s*)?");

  /**
   * From the start of the first bar to the end of the last.
   *
   * @throws NoSuchLine if a bar is not there, its number is printed twice, or the last comes before
   *     the first
   */
  public Span in(Bars bars) throws NoSuchLine {
    Matcher form = FORM.matcher(text);
    if (!form.matches()) {
      throw new NoSuchLine(
          Sentence.of("\"{0}\" names no bars; write 12-20, or #12-#20 to count bars from 1", text));
    }
    Bar first = one(form.group(1), bars);
    Bar last = form.group(2) == null ? first : one(form.group(2), bars);
    if (last.index() < first.index()) {
      throw new NoSuchLine(
          Sentence.of("bars {0} end before they begin; write the earlier bar first", text));
    }
    return new Span(first.span().start(), last.span().end());
  }

  private static Bar one(String name, Bars bars) throws NoSuchLine {
    if (name.startsWith("#")) {
      return counted(name, bars);
    }
    List<Bar> found = new ArrayList<>();
    for (Bar bar : bars) {
      if (bar.number().equals(name)) {
        found.add(bar);
      }
    }
    if (found.isEmpty()) {
      throw new NoSuchLine(
          Sentence.of(
              "there is no bar {0}; the score has bars {1} to {2}",
              name, bars.get(0).number(), bars.get(bars.count() - 1).number()));
    }
    if (found.size() > 1) {
      throw new NoSuchLine(
          Sentence.of(
              "bar {0} is printed {1} times; count bars from 1 instead: #{2} is the first of them",
              name, found.size(), found.get(0).index() + 1));
    }
    return found.get(0);
  }

  private static Bar counted(String name, Bars bars) throws NoSuchLine {
    String digits = name.substring(1);
    int index = digits.matches("[0-9]{1,6}") ? Integer.parseInt(digits) - 1 : -1;
    if (index < 0 || index >= bars.count()) {
      throw new NoSuchLine(
          Sentence.of("there is no bar {0}; the score has #1 to #{1}", name, bars.count()));
    }
    return bars.get(index);
  }
}
