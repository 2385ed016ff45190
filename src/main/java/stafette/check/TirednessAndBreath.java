package stafette.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stafette.limits.Breath;
import stafette.score.Line;
import stafette.score.Place;
import stafette.words.Sentence;

/**
 * Whether a player's strength and air last through the whole part, carried over from stint to
 * stint. A given passage is not held against the plan unless the plan is what spoils it.
 */
public final class TirednessAndBreath {
  private final List<Line> lines;
  private final WholePart part;
  private final WholePart given;

  /**
   * @param lines by relay
   */
  public TirednessAndBreath(List<Line> lines, WholePart part) {
    this.lines = List.copyOf(lines);
    this.part = part;
    this.given = part.givenOnly();
  }

  List<Finding> findings(double stretch) {
    return Stream.of(tired(stretch).map(this::tired), breathless(stretch).map(this::breathless))
        .flatMap(Optional::stream)
        .toList();
  }

  /** The first stroke at which the player is spent, if there is one. */
  public Optional<Excess> tired(double stretch) {
    return excess(
            PlayingSimulation.tiredness(part, stretch), PlayingSimulation.tiredness(given, stretch))
        .map(
            place ->
                new Excess(
                    place.stint,
                    part.stints().get(place.stint).loads().get(place.index).onsetMicros(),
                    place.value));
  }

  /** The first sound for which the player's air is too short, if there is one. */
  public Optional<Excess> breathless(double stretch) {
    Optional<Breath> breath = part.player().instrument().breath();
    if (breath.isEmpty()) {
      return Optional.empty();
    }
    return excess(
            PlayingSimulation.breath(part, breath.get(), stretch),
            PlayingSimulation.breath(given, breath.get(), stretch))
        .map(
            place ->
                new Excess(
                    place.stint,
                    part.stints().get(place.stint).sounds().get(place.index).onsetMicros(),
                    place.value));
  }

  /**
   * Where something is spent.
   *
   * @param stint which of the part's stints
   * @param micros when, on the line's clock
   * @param value above 1
   */
  public record Excess(int stint, long micros, double value) {}

  private record RuleReading(int stint, int index, double value) {}

  private Optional<RuleReading> excess(double[][] readings, double[][] without) {
    int passage = -1;
    for (int i = 0; i < readings.length; i++) {
      boolean isGiven = part.stints().get(i).isGiven();
      passage += isGiven ? 1 : 0;
      for (int k = 0; k < readings[i].length; k++) {
        if (!Tolerance.within(readings[i][k], 1)
            && (!isGiven || Tolerance.within(without[passage][k], 1))) {
          return Optional.of(new RuleReading(i, k, readings[i][k]));
        }
      }
    }
    return Optional.empty();
  }

  private Finding tired(Excess excess) {
    return Finding.at(
        Finding.FindingKind.TIREDNESS,
        place(excess),
        spoilt(
            excess,
            Sentence.of(
                "is spent here and can't keep the speed up; hand over earlier, rest longer before,"
                    + " or lower the tempo")));
  }

  private Finding breathless(Excess excess) {
    return Finding.at(
        Finding.FindingKind.BREATH,
        place(excess),
        spoilt(
            excess,
            Sentence.of(
                "runs out of air here; hand over earlier, rest longer before, or leave a place to"
                    + " breathe")));
  }

  private Sentence spoilt(Excess excess, Sentence what) {
    return part.stints().get(excess.stint).isGiven()
        ? Sentence.of("in a passage of its own part {0}", what)
        : what;
  }

  private Place place(Excess excess) {
    return Whereabouts.of(
        part.player(), part.stints().get(excess.stint).lineOf(lines), excess.micros);
  }
}
