package stafette.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.limits.Breath;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.plan.Segment;
import stafette.score.Line;
import stafette.score.Place;
import stafette.words.Sentence;

/**
 * What holds along a player's whole part: tiredness and breath, carried over from stint to stint;
 * rest before entries; and nothing on top of what the score gives. A given passage is not held
 * against the plan unless the plan is what spoils it.
 */
public final class PartRules {
  private final List<Line> lines;
  private final Player player;
  private final WholePart part;
  private final WholePart given;
  private final long readyMicros;

  /**
   * @param lines by relay
   */
  public PartRules(List<Line> lines, WholePart part, long readyMicros) {
    this.lines = List.copyOf(lines);
    this.player = part.player();
    this.part = part;
    this.given = part.givenOnly();
    this.readyMicros = readyMicros;
  }

  static PartRules of(Plan plan, WholePart part) {
    return new PartRules(
        plan.brief().lines(), part, plan.brief().rules().readyMicros(part.player()));
  }

  List<Finding> findings(double stretch) {
    List<Finding> findings = new ArrayList<>();
    tired(stretch).map(this::tired).ifPresent(findings::add);
    breathless(stretch).map(this::breathless).ifPresent(findings::add);
    findings.addAll(rests(stretch));
    findings.addAll(collisions());
    return findings;
  }

  /** The first stroke at which the player is spent, if there is one. */
  public Optional<Excess> tired(double stretch) {
    return excess(Course.tiredness(part, stretch), Course.tiredness(given, stretch))
        .map(
            place ->
                new Excess(
                    place.stint,
                    part.stints().get(place.stint).loads().get(place.index).onsetMicros(),
                    place.value));
  }

  /** The first sound for which the player's air is too short, if there is one. */
  public Optional<Excess> breathless(double stretch) {
    Optional<Breath> breath = player.instrument().breath();
    if (breath.isEmpty()) {
      return Optional.empty();
    }
    return excess(
            Course.breath(part, breath.get(), stretch), Course.breath(given, breath.get(), stretch))
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

  private List<Finding> rests(double stretch) {
    List<Finding> findings = new ArrayList<>();
    for (RestBefore rest : restsBeforeEntries()) {
      if (!Tolerance.reaches(rest.micros * stretch, (double) readyMicros)) {
        findings.add(
            Finding.at(
                Finding.FindingKind.REST,
                entry(rest.entering),
                rest.micros < 0
                    ? Sentence.of(
                        "is still playing when it should enter; enter later or leave earlier")
                    : Sentence.of(
                        "has {0} to get ready and needs {1}; enter later or leave earlier",
                        Wording.seconds(rest.micros * stretch / 1e6),
                        Wording.seconds(readyMicros / 1e6))));
      }
    }
    return findings;
  }

  /**
   * The silence before an entry that isn't the player's first.
   *
   * @param micros from the end of the last sound before it, negative if that is later
   */
  record RestBefore(Stint entering, long micros) {}

  List<RestBefore> restsBeforeEntries() {
    List<RestBefore> result = new ArrayList<>();
    Optional<Long> soundedUntil = Optional.empty();
    for (Stint stint : part.stints()) {
      if (soundedUntil.isPresent() && !stint.isGiven() && !collides(stint)) {
        result.add(new RestBefore(stint, stint.startMicros() - soundedUntil.get()));
      }
      soundedUntil =
          Optional.of(Math.max(soundedUntil.orElse(stint.endMicros()), stint.endMicros()));
    }
    return result;
  }

  private List<Finding> collisions() {
    return part.ofPlan()
        .filter(this::collides)
        .map(
            stint ->
                Finding.at(
                    Finding.FindingKind.BUSY,
                    entry(stint),
                    Sentence.of(
                        "the score already gives this player something to play here; give the"
                            + " stretch to somebody else, or end it before")))
        .toList();
  }

  private boolean collides(Stint stint) {
    return given.stints().stream()
        .anyMatch(
            other ->
                stint.startMicros() < other.endMicros() && other.startMicros() < stint.endMicros());
  }

  private Place entry(Stint stint) {
    return Whereabouts.of(player, line(stint), stint.startMicros());
  }

  private Place place(Excess excess) {
    return Whereabouts.of(player, line(part.stints().get(excess.stint)), excess.micros);
  }

  private Line line(Stint stint) {
    return lines.get(stint.segment().map(Segment::relay).orElse(0));
  }
}
