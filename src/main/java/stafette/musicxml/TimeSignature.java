package stafette.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.time.Length;
import stafette.time.Meter;
import stafette.words.Sentence;

/**
 * A time signature.
 *
 * @param text such as "6/8", "3+2/8" or "2/4+3/8"
 * @param meter how it is counted
 */
record TimeSignature(String text, Meter meter) {
  private static final int MOST_BEATS = 999;
  private static final int SHORTEST_BEAT = 1024;

  /** Empty if the music is unmeasured. */
  static Optional<TimeSignature> of(Element time) throws Malformed {
    List<String> texts = new ArrayList<>();
    List<Length> beats = new ArrayList<>();
    String upper = "";
    for (Element child : time.children()) {
      if (child.name().equals("beats")) {
        upper = child.text();
      } else if (child.name().equals("beat-type")) {
        texts.add(upper + "/" + child.text());
        beats.addAll(meter(upper, child).beats());
      }
    }
    return beats.isEmpty()
        ? Optional.empty()
        : Optional.of(new TimeSignature(String.join("+", texts), new Meter(beats)));
  }

  private static Meter meter(String upper, Element lower) throws Malformed {
    List<Integer> figures = new ArrayList<>();
    for (String figure : upper.split("\\+", -1)) {
      String trimmed = figure.trim();
      int value = trimmed.matches("\\d{1,3}") ? Integer.parseInt(trimmed) : 0;
      if (value == 0 || figures.size() * value > MOST_BEATS) {
        throw new Malformed(
            Sentence.of(
                "the time signature \"{0}\" can't be read as a number of beats", shortened(upper)));
      }
      figures.add(value);
    }
    return Meter.of(figures, Figure.whole(lower, 1, SHORTEST_BEAT));
  }

  private static String shortened(String text) {
    return text.length() > 20 ? text.substring(0, 20) + "…" : text;
  }
}
