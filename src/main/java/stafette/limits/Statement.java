package stafette.limits;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one source says of how fast a technique goes. Statements are found, limits are judged from
 * them: {@link Stance} tells how a judgement stands to a statement.
 *
 * @param instruments names of the instruments that it is about
 * @param techniques names of techniques, any of which may serve; for a border the two strokes, the
 *     slower one first
 * @param kind what the source speaks of
 * @param figure which figure of a technique it is held against
 * @param lowPerSecond strokes a second; of a range the low end
 * @param highPerSecond the high end of a range; the same as the low one where there is none
 * @param seconds how long it goes on; empty for a moment
 * @param conditions who, what and where; may be empty
 * @param source who says it
 * @param setAside why the judgement does not follow it; empty if it must
 */
public record Statement(
    List<String> instruments,
    List<String> techniques,
    StatementKind kind,
    Figure figure,
    double lowPerSecond,
    double highPerSecond,
    OptionalDouble seconds,
    String conditions,
    Source source,
    Optional<String> setAside) {
  /** A rate of one stroke a second, as a metronome mark for quarters of four strokes. */
  private static final int SIXTEENTHS = 15;

  public Statement {
    instruments = List.copyOf(instruments);
    techniques = List.copyOf(techniques);
  }

  /** Those of an instrument's techniques that it is about, in its own order. */
  public List<Technique> techniquesOf(Instrument instrument) {
    return instruments.contains(instrument.name())
        ? techniques.stream()
            .flatMap(name -> Catalogue.technique(instrument, name).stream())
            .toList()
        : List.of();
  }

  /** "relied on 8.8 a second (132) for 3 s", "asked sustained 5 a second (75)". */
  public String words() {
    String of = figure == Figure.PEAK ? "" : " " + figure.word();
    String during =
        seconds.isPresent() ? " for " + Judgement.figure(seconds.getAsDouble()) + " s" : "";
    return kind.word() + of + " " + rate() + during;
  }

  /** "8.8 a second (132)" or "9 to 10 a second (135 to 150)": the marks are for sixteenths. */
  public String rate() {
    String rates = Judgement.figure(lowPerSecond);
    String marks = String.valueOf(Math.round(lowPerSecond * SIXTEENTHS));
    if (highPerSecond > lowPerSecond) {
      rates += " to " + Judgement.figure(highPerSecond);
      marks += " to " + Math.round(highPerSecond * SIXTEENTHS);
    }
    return rates + " a second (" + marks + ")";
  }

  /** A figure of a technique's limit. */
  public enum Figure {
    PEAK,
    SUSTAINED,
    MOVING;

    /** As the tables write it: "peak". */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** Whether a technique has such a limit; all but some of moving notes do. */
    boolean limits(Limit limit) {
      return this != MOVING || limit.movingPerSecond().isPresent();
    }

    double mean(Limit limit) {
      return switch (this) {
        case PEAK -> limit.peakPerSecond();
        case SUSTAINED -> limit.sustainedPerSecond();
        case MOVING -> limit.movingPerSecond().orElse(Double.POSITIVE_INFINITY);
      };
    }

    /** Between players; all figures of a technique have the same relative spread. */
    double deviation(Limit limit) {
      return limit.deviationPerSecond() * mean(limit) / limit.peakPerSecond();
    }

    double of(Capability capability) {
      return switch (this) {
        case PEAK -> capability.peakPerSecond();
        case SUSTAINED -> capability.sustainedPerSecond();
        case MOVING -> capability.movingMilli() / 1000.0;
      };
    }
  }
}
