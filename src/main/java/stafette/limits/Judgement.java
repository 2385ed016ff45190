package stafette.limits;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import stafette.words.Sentence;

/** One technique's row against one statement. */
final class Judgement {
  /** What rounding of marks and of limits to thousandths may take off a figure. */
  private static final double TOLERANCE = 0.005;

  private static final double ROUNDING = 1e-9;

  private static final Assurance HALF = new Assurance(50);
  private static final Assurance ALL_BUT_ONE_OF_A_THOUSAND = new Assurance(0.1);

  private final Statement statement;
  private final Technique technique;
  private final Limit limit;

  Judgement(Statement statement, Technique technique) {
    this.statement = statement;
    this.technique = technique;
    limit = technique.limit();
  }

  Stance stance() {
    if (!statement.figure().limits(limit)) {
      return stance("no limit to changing notes", Optional.empty());
    }
    return switch (statement.kind()) {
      case MEAN -> mean();
      case BEYOND_MOST -> beyondMost();
      case RELIED_ON, BORDER, ASKED, ONE_PLAYER -> stance(reached(), raise());
    };
  }

  /** How this stroke and the one that it turns into stand to the border between them. */
  Stance stanceAtBorder(Technique faster) {
    double lowest = faster.lowestPerSecond();
    Optional<String> raise = raise().map(remedy -> remedy + " for " + technique.name());
    Optional<String> lower =
        lowest > statement.lowPerSecond() * (1 + TOLERANCE)
            ? Optional.of(
                "lower lowest to "
                    + figure(statement.lowPerSecond(), RoundingMode.FLOOR)
                    + " for "
                    + faster.name())
            : Optional.empty();
    String begins = lowest > 0 ? " begins at " + figure(lowest) : " has no lowest rate";
    return stance(
        reached() + " with " + technique.name() + "; " + faster.name() + begins,
        raise.or(() -> lower));
  }

  /** The least mean with which the row, spread as it is, agrees; minus infinity if any does. */
  double leastMean() {
    return switch (statement.kind()) {
      case MEAN -> meanFor(statement.lowPerSecond(), 1);
      case BEYOND_MOST -> Double.NEGATIVE_INFINITY;
      case RELIED_ON, BORDER, ASKED, ONE_PLAYER -> meanFor(enough(), share().z());
    };
  }

  /** The greatest such mean; infinity if any is small enough. */
  double greatestMean() {
    return switch (statement.kind()) {
      case MEAN -> meanFor(statement.highPerSecond(), -1);
      case BEYOND_MOST -> statement.lowPerSecond();
      case RELIED_ON, BORDER, ASKED, ONE_PLAYER -> Double.POSITIVE_INFINITY;
    };
  }

  private Stance mean() {
    double mean = statement.figure().mean(limit);
    Optional<String> remedy = Optional.empty();
    if (mean < leastMean() - ROUNDING) {
      remedy =
          Optional.of("raise " + column() + " to " + figure(leastMean(), RoundingMode.CEILING));
    } else if (mean > greatestMean() + ROUNDING) {
      remedy =
          Optional.of("lower " + column() + " to " + figure(greatestMean(), RoundingMode.FLOOR));
    }
    return stance("the mean is " + figure(mean) + " ± " + figure(deviation()), remedy);
  }

  private Stance beyondMost() {
    Capability half = limit.at(HALF);
    boolean manage =
        statement.figure().of(half) >= statement.lowPerSecond()
            && lasts(half, statement.lowPerSecond());
    return stance(
        reached(),
        manage
            ? Optional.of("lower " + column() + " below " + figure(statement.lowPerSecond()))
            : Optional.empty());
  }

  /** "84 of 100 reach 8.8 and keep 8.5 up for 12 s". */
  private String reached() {
    Capability capability = limit.at(share());
    double rate = statement.figure().of(capability);
    String reached = who() + figure(rate);
    if (!isTiring() || rate < enough()) {
      return reached;
    }
    String asked = figure(statement.lowPerSecond());
    double seconds = endurance(capability, statement.lowPerSecond());
    return Double.isInfinite(seconds)
        ? reached + " and can go on at " + asked
        : reached + " and keep " + asked + " up for " + Math.round(seconds) + " s";
  }

  private Optional<String> raise() {
    Capability capability = limit.at(share());
    if (statement.figure().of(capability) < enough()) {
      return Optional.of(raiseRate());
    }
    return lasts(capability, enough())
        ? Optional.empty()
        : Optional.of(
            "raise sustained to "
                + figure(sustainedFor(capability), RoundingMode.CEILING)
                + ", or give more stamina");
  }

  private String raiseRate() {
    double mean = meanFor(statement.lowPerSecond(), share().z());
    if (statement.figure() == Statement.Figure.SUSTAINED && mean > limit.peakPerSecond()) {
      mean = statement.lowPerSecond() - share().z() * limit.deviationPerSecond();
      return "raise peak and sustained to " + figure(mean, RoundingMode.CEILING);
    }
    return "raise " + column() + " to " + figure(mean, RoundingMode.CEILING);
  }

  /**
   * The mean of the figure with which somebody so many deviations above it has a rate. The peak's
   * deviation stays as it is; other figures keep their share of the peak, and so their spread.
   */
  private double meanFor(double perSecond, double z) {
    double spread = limit.deviationPerSecond() / limit.peakPerSecond();
    return statement.figure() == Statement.Figure.PEAK
        ? perSecond - z * limit.deviationPerSecond()
        : perSecond / Math.max(1e-3, 1 + z * spread);
  }

  /** The mean of "sustained" with which it would go on long enough. */
  private double sustainedFor(Capability capability) {
    double rate = statement.lowPerSecond();
    double seconds = statement.seconds().orElse(0);
    double eight = Limit.DEFAULT_STAMINA_SECONDS;
    double wanted = rate;
    if (limit.staminaStrokes().isPresent()) {
      wanted = rate - capability.staminaStrokes() / seconds;
    } else if (seconds > eight) {
      wanted = (rate * seconds - capability.peakPerSecond() * eight) / (seconds - eight);
    }
    return wanted * limit.peakPerSecond() / capability.peakPerSecond();
  }

  private boolean lasts(Capability capability, double perSecond) {
    return !isTiring() || endurance(capability, perSecond) >= statement.seconds().orElse(0);
  }

  /** How long somebody fresh keeps up a rate. */
  private static double endurance(Capability capability, double perSecond) {
    double beyond = perSecond - capability.sustainedPerSecond();
    return beyond > 0 ? capability.staminaStrokes() / beyond : Double.POSITIVE_INFINITY;
  }

  /** Whether a time is told during which strokes tire; slurred notes don't. */
  private boolean isTiring() {
    return statement.seconds().isPresent()
        && statement.figure() != Statement.Figure.SUSTAINED
        && technique.slurs() != Technique.SlurUse.ALL;
  }

  private Assurance share() {
    return switch (statement.kind()) {
      case RELIED_ON, BORDER -> Assurance.DEFAULT;
      case ASKED, BEYOND_MOST, MEAN -> HALF;
      case ONE_PLAYER -> ALL_BUT_ONE_OF_A_THOUSAND;
    };
  }

  private String who() {
    return switch (statement.kind()) {
      case RELIED_ON, BORDER -> "84 of 100 reach ";
      case ASKED, BEYOND_MOST, MEAN -> "50 of 100 reach ";
      case ONE_PLAYER -> "one of a thousand reaches ";
    };
  }

  private double enough() {
    return statement.lowPerSecond() * (1 - TOLERANCE);
  }

  private double deviation() {
    return statement.figure().deviation(limit);
  }

  private String column() {
    return statement.figure().word();
  }

  private Stance stance(String judged, Optional<String> remedy) {
    return new Stance(statement, technique, judged, remedy);
  }

  static String figure(double perSecond) {
    return figure(perSecond, RoundingMode.HALF_UP);
  }

  private static String figure(double perSecond, RoundingMode rounding) {
    BigDecimal exact = Sentence.decimal(perSecond, 6);
    return exact.setScale(2, rounding).stripTrailingZeros().toPlainString();
  }
}
