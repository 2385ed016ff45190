package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.musicxml.text.DecimalText;
import stafette.musicxml.text.Element;
import stafette.musicxml.text.Malformed;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.words.Sentence;

/**
 * A time signature.
 *
 * @param text such as "6/8", "3+2/8" or "2/4+3/8"
 * @param meter how it is counted
 */
record TimeElement(String text, Meter meter) {
  /** More beats in a bar nobody counts. */
  private static final int MOST_BEATS = 999;

  /** Music is beaten in hundred-twenty-eighths at the most (common practice, no source). */
  private static final int SHORTEST_BEAT = 128;

  /** Empty if the music is unmeasured. */
  static Optional<TimeElement> of(Element time) throws Malformed {
    List<String> texts = new ArrayList<>();
    List<Length> beats = new ArrayList<>();
    String upper = "";
    for (Element child : time.children()) {
      if (!child.children().isEmpty()) {
        throw unreadable(child.text() + "<" + child.children().get(0).name() + ">");
      }
      if (child.name().equals("beats")) {
        upper = child.text();
      } else if (child.name().equals("beat-type")) {
        texts.add(upper + "/" + child.text());
        beats.addAll(meter(upper, child).beats());
        if (beats.size() > MOST_BEATS) {
          throw unreadable(String.join("+", texts));
        }
      }
    }
    return beats.isEmpty()
        ? Optional.empty()
        : Optional.of(new TimeElement(String.join("+", texts), new Meter(beats)));
  }

  private static Meter meter(String upper, Element lower) throws Malformed {
    List<Integer> figures = new ArrayList<>();
    for (String figure : upper.split("\\+", -1)) {
      String trimmed = figure.trim();
      int value = trimmed.matches("\\d{1,3}") ? Integer.parseInt(trimmed) : 0;
      if (value == 0 || figures.size() >= MOST_BEATS) {
        throw unreadable(upper);
      }
      figures.add(value);
    }
    return Meter.of(figures, DecimalText.whole(lower, 1, SHORTEST_BEAT));
  }

  private static Malformed unreadable(String text) {
    return new Malformed(
        Sentence.of(
            "the time signature \"{0}\" can't be read as a number of beats from 1 to {1}",
            shortened(text), MOST_BEATS));
  }

  private static String shortened(String text) {
    return text.length() > 20 ? text.substring(0, 20) + "…" : text;
  }
}
