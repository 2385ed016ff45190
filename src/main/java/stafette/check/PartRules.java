package stafette.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.plan.Plan;
import stafette.plan.Player;
import stafette.score.Line;
import stafette.score.Place;
import stafette.words.Sentence;

/**
 * What holds along a player's whole part: tiredness and breath ({@link TirednessAndBreath}); rest
 * before entries; and nothing on top of what the score gives.
 */
final class PartRules {
  private final List<Line> lines;
  private final Player player;
  private final WholePart part;
  private final WholePart given;
  private final long readyMicros;

  /**
   * @param lines by relay
   */
  PartRules(List<Line> lines, WholePart part, long readyMicros) {
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
    findings.addAll(new TirednessAndBreath(lines, part).findings(stretch));
    findings.addAll(rests(stretch));
    findings.addAll(collisions());
    return findings;
  }

  private List<Finding> rests(double stretch) {
    List<Finding> findings = new ArrayList<>();
    for (RestBefore rest : restsBeforeEntries()) {
      if (!Tolerance.reaches(rest.micros * stretch, (double) rest.neededMicros)) {
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
                        Wording.seconds(rest.neededMicros / 1e6))));
      }
    }
    return findings;
  }

  /**
   * The silence before an entry that isn't the player's first.
   *
   * @param micros from the end of the last sound before it, negative if that is later
   * @param neededMicros how long it must be
   */
  record RestBefore(Stint entering, long micros, long neededMicros) {}

  List<RestBefore> restsBeforeEntries() {
    List<RestBefore> result = new ArrayList<>();
    Optional<Stint> before = Optional.empty();
    for (Stint stint : part.stints()) {
      if (before.isPresent() && !stint.isGiven() && !collides(stint)) {
        result.add(
            new RestBefore(
                stint,
                stint.startMicros() - before.get().endMicros(),
                Math.max(readyMicros, before.get().changeMicros())));
      }
      boolean longer = before.map(last -> last.endMicros() > stint.endMicros()).orElse(false);
      before = longer ? before : Optional.of(stint);
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
    return Whereabouts.of(player, stint.lineOf(lines), stint.startMicros());
  }
}
