package stafette.musicxml.write;

import java.util.List;
import java.util.regex.Pattern;
import stafette.musicxml.share.Sign;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.ElementText;
import stafette.score.Hairpin;
import stafette.time.Span;

/** Hairpins that a part has already, where some are to be written. */
record SwellSigns(Origin origin, List<Hairpin> standing) {
  /** Whether a part's own hairpins leave no room for a sign. */
  boolean exclude(Sign sign) {
    return sign.swell().filter(this::overlapsAnother).isPresent();
  }

  private boolean overlapsAnother(Span swell) {
    return standing.stream()
        .map(Hairpin::span)
        .anyMatch(span -> span.overlaps(swell) && !span.equals(swell));
  }

  /** Whether an element of the part says what a sign would say, in whatever form. */
  boolean says(ElementText element, Sign sign) {
    return element.name().equals("direction")
        && element.onset().equals(sign.at())
        && sign.swell().isPresent()
        && form(sign).matcher(element.span().in(origin.text())).find();
  }

  private static Pattern form(Sign sign) {
    return switch (sign.kind()) {
      case LOUDER -> wedge("crescendo");
      case SOFTER -> wedge("diminuendo");
      case WEDGE_STOP -> wedge("stop");
      case DASHES -> sign("dashes", "start");
      case DASHES_STOP -> sign("dashes", "stop");
      case SWELL_WORDS -> Pattern.compile(Pattern.quote(sign.text()));
      case WORDS, PARTNER, CHARACTER, DYNAMIC, PEDALS, PEDAL_WORDS -> Pattern.compile("(?!)");
    };
  }

  static Pattern wedge(String type) {
    return sign("wedge", type);
  }

  /**
   * The text of a sign that has a begin and an end.
   *
   * @param name as the format calls it
   * @param type as the format calls it, or an expression for several
   */
  static Pattern sign(String name, String type) {
    return Pattern.compile("<" + name + "\\s[^>]*type\\s*=\\s*[\"']" + type);
  }
}
